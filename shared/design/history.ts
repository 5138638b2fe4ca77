/**
 * Undo and redo: what was done, as edits with their inverses. A pure value; the design lives beside it.
 * Beyond `limits.historyBytes` the oldest steps are let go, never the newest.
 *
 * A step copies the list of steps, which after 100,000 strokes takes half a millisecond; nothing else here
 * grows with the number of steps.
 */
import type { Design } from './design.ts';
import { apply, type Edit, inverse, sizeOfStep } from './edits.ts';
import { limits } from './limits.ts';

export interface Step {
  /** What the person did, for the menu: 'Draw', 'Fill'. */
  readonly label: string;
  readonly edit: Edit;
  readonly inverse: Edit;
  readonly bytes: number;
}

export interface History {
  readonly done: readonly Step[];
  readonly undone: readonly Step[];
  /** Memory of all steps. */
  readonly bytes: number;
}

export const noHistory: History = { done: [], undone: [], bytes: 0 };

/**
 * `before` is the design that `edit` was applied to. What was undone can't be redone afterwards. `maxBytes` is the
 * memory that the steps may take.
 */
export function record(
  history: History,
  before: Design,
  label: string,
  edit: Edit,
  maxBytes: number = limits.historyBytes,
): History {
  const back = inverse(before, edit);
  const step: Step = { label, edit, inverse: back, bytes: sizeOfStep(edit, back) };
  let bytes = history.bytes + step.bytes;
  for (const each of history.undone) bytes -= each.bytes;
  let letGo = 0;
  while (bytes > maxBytes && letGo < history.done.length) bytes -= history.done[letGo++]!.bytes;
  // Joined at once: to copy first and to push then would copy twice.
  const kept = letGo === 0 ? history.done : history.done.slice(letGo);
  return { done: kept.concat([step]), undone: [], bytes };
}

/** The design and history one step back; null where nothing is left to undo. */
export function undo(
  history: History,
  design: Design,
): { history: History; design: Design; step: Step } | null {
  const step = history.done.at(-1);
  if (!step) return null;
  return {
    design: apply(design, step.inverse),
    history: { ...history, done: history.done.slice(0, -1), undone: history.undone.concat([step]) },
    step,
  };
}

/** The design and history one step forward again; null where nothing was undone. */
export function redo(
  history: History,
  design: Design,
): { history: History; design: Design; step: Step } | null {
  const step = history.undone.at(-1);
  if (!step) return null;
  return {
    design: apply(design, step.edit),
    history: { ...history, done: history.done.concat([step]), undone: history.undone.slice(0, -1) },
    step,
  };
}
