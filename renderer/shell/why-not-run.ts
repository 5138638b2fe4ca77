/** Why a command can't be carried out where the person is: in a few words, beside its name. */
import type { Command, CommandId } from '../../shared/commands.ts';
import { studio } from '../store/studio.ts';
import { canRun } from './command-bus.ts';

/** Empty where it can be. */
export function whyNotRun({ id, needs }: Command & { readonly id: CommandId }): string {
  if (canRun(id)) return '';
  if (needs && !studio.getState().open) return 'open a design first';
  return (needs && places[needs]) ?? 'not here';
}

const places: Readonly<Partial<Record<NonNullable<Command['needs']>, string>>> = {
  draw: 'on the Draw screen',
  plan: 'on the Plan screen',
  publish: 'on the Publish screen',
};
