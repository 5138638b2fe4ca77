/** Why a command can't be carried out where the person is: in a few words, beside its name. */
import type { Command, CommandId } from '../../shared/commands.ts';
import { studio } from '../store/studio.ts';
import { canRun } from './command-bus.ts';

/** Empty where it can be. */
export function whyNotRun({ id, needs }: Command & { readonly id: CommandId }): string {
  if (canRun(id)) return '';
  if (needs && !studio.getState().open) return 'open a design first';
  if (needs === 'draw') return 'on the Draw screen';
  return needs === 'plan' ? 'on the Plan screen' : 'not here';
}
