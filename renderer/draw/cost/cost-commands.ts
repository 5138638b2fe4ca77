/** The commands that show what the picture costs, and make it cheaper. */
import type { CommandId } from '../../../shared/commands.ts';
import { toggleMarks } from './marking.ts';
import { startTidying } from './tidy.ts';

export const costCommands = {
  'mark-lone-knots': () => toggleMarks('lone-knots'),
  'mark-short-runs': () => toggleMarks('short-runs'),
  'mark-loose-ends': () => toggleMarks('loose-ends'),
  tidy: startTidying,
} satisfies Partial<Record<CommandId, () => void>>;
