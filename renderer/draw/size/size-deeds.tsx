/** What is done to the chart's size, by dialogs and at the cursor. Each is one step of the history. */
import type { CommandId } from '../../../shared/commands.ts';
import type { Design } from '../../../shared/design/design.ts';
import type { Edit } from '../../../shared/design/edits.ts';
import {
  cropTo,
  deleteLines,
  insertLines,
  resizeTo,
  type Size,
  scaleTo,
  type Way,
} from '../../../shared/design/size-edits.ts';
import type { Result } from '../../../shared/result.ts';
import { counted } from '../../../shared/units/counted.ts';
import { ask } from '../../shell/dialogs.tsx';
import { tell, tellProblem } from '../../shell/notices.tsx';
import { change, endStroke } from '../../store/changing.ts';
import type { CellPlace } from '../../store/state.ts';
import { studio } from '../../store/studio.ts';
import { chosenPatch } from '../patch/chosen-patch.ts';
import { DeleteSheet, type Deletion } from './delete-sheet.tsx';
import { type Insertion, InsertSheet } from './insert-sheet.tsx';
import { type NewSize, ResizeSheet } from './resize-sheet.tsx';
import './size.css';

async function askToInsert(): Promise<void> {
  const at = begun();
  if (!at) return;
  const insertion = await ask<Insertion>({
    label: 'Insert cords and rows',
    body: (answer) => <InsertSheet {...at} answer={answer} />,
  });
  if (!insertion) return;
  const { way, beside, side, count } = insertion;
  insert(way, side === 'before' ? beside - 1 : beside, count);
}

async function askToDelete(): Promise<void> {
  const at = begun();
  if (!at) return;
  const deletion = await ask<Deletion>({
    label: 'Delete cords and rows',
    body: (answer) => <DeleteSheet {...at} answer={answer} />,
  });
  if (deletion) remove(deletion.way, deletion.first - 1, deletion.last + 1 - deletion.first);
}

/** `wish`: the size that the sheet begins with, where that is not the chart's own. */
export async function askToResize(wish?: Size): Promise<void> {
  const at = begun();
  if (!at) return;
  const size = await ask<NewSize>({
    label: 'Resize',
    body: (answer) => <ResizeSheet design={at.design} wish={wish ?? at.design} answer={answer} />,
  });
  if (!size) return;
  make('Resize the chart', (design) =>
    size.picture === 'kept' ? resizeTo(design, size, size.anchor) : scaleTo(design, size),
  );
}

function crop(): void {
  endStroke();
  const bounds = chosenPatch()?.mask.bounds;
  if (bounds) make('Crop to the patch', (design) => cropTo(design, bounds));
}

function insertAt(way: Way, side: 'before' | 'after'): () => void {
  return () => {
    const at = cursor();
    if (at) insert(way, at[key[way]] + (side === 'before' ? 0 : 1), 1);
  };
}

function deleteAt(way: Way): () => void {
  return () => {
    const at = cursor();
    if (at) remove(way, at[key[way]], 1);
  };
}

export const sizeCommands = {
  resize: () => askToResize(),
  crop,
  'insert-lines': askToInsert,
  'insert-cord-left': insertAt('cords', 'before'),
  'insert-cord-right': insertAt('cords', 'after'),
  'insert-row-above': insertAt('rows', 'before'),
  'insert-row-below': insertAt('rows', 'after'),
  'delete-lines': askToDelete,
  'delete-cord': deleteAt('cords'),
  'delete-row': deleteAt('rows'),
} satisfies Partial<Record<CommandId, () => void>>;

/** What of the cursor's place counts cords and rows. */
const key: Readonly<Record<Way, keyof CellPlace>> = { cords: 'column', rows: 'row' };
const one: Readonly<Record<Way, string>> = { cords: 'cord', rows: 'row' };

function insert(way: Way, at: number, count: number): void {
  const label = count === 1 ? `Insert a ${one[way]}` : `Insert ${way}`;
  make(label, (design) => insertLines(design, way, at, count));
}

function remove(way: Way, at: number, count: number): void {
  const label = count === 1 ? `Delete a ${one[way]}` : `Delete ${way}`;
  make(label, (design) => deleteLines(design, way, at, count));
}

/** Says what came of it, and leaves the cursor where it was. */
function make(label: string, edit: (design: Design) => Result<Edit>): void {
  const { open, under } = studio.getState();
  if (!open) return;
  const made = edit(open.design);
  if (!made.ok) {
    tellProblem(made.problem.sentence);
    return;
  }
  change(label, made.value);
  const { columns, rows } = studio.getState().open?.design ?? open.design;
  if (under) {
    const row = Math.min(rows - 1, under.row);
    studio.setState({ under: { row, column: Math.min(columns - 1, under.column) } });
  }
  tell(`${counted(columns, 'cord')} and ${counted(rows, 'row')} now.`);
}

/** The cell under the pointer or the cell cursor; null, with a sentence, where there is none. */
function cursor(): CellPlace | null {
  const { under } = studio.getState();
  if (!under) tellProblem('No cell is under the cursor. Move to the cord or row on the chart first.');
  return under;
}

/** What a sheet starts from: the design, with all that was drawn, and the cursor's cord and row, from 1. */
function begun(): { design: Design; cord: number; row: number } | null {
  endStroke();
  const { open, under } = studio.getState();
  if (!open) return null;
  const { columns, rows } = open.design;
  return { design: open.design, cord: (under?.column ?? columns - 1) + 1, row: (under?.row ?? rows - 1) + 1 };
}
