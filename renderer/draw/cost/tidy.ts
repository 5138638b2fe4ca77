/**
 * Tidying, to be looked at before it is kept. The tidied cells are a stroke that is only shown: the chart has them at
 * once, and whatever else is done drops them without a trace.
 */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { PictureCost } from '../../../shared/chart/cost/picture-cost.ts';
import { tidyCells } from '../../../shared/chart/cost/tidy-cells.ts';
import { findings } from '../../planning/findings.ts';
import { tell, tellProblem } from '../../shell/notices.tsx';
import { beginStroke, dropStroke, endStroke, keepStroke, stroke } from '../../store/changing.ts';
import type { Stroke } from '../../store/state.ts';
import { studio } from '../../store/studio.ts';
import { useStudio } from '../../store/use-studio.ts';
import { whyNotTidy } from './why-not-tidy.ts';

export interface Tidying {
  /** The stroke that holds it: where another one or none is open, it is over. */
  readonly stroke: Stroke;
  /** Cells of the chart that changed. */
  readonly changed: number;
  /** A byte a cell of the chart, 1 where it changed. */
  readonly cells: Uint8Array;
  /** Lone knots that stay, since their layer is locked. */
  readonly left: number;
  /** What the picture cost before; null where that was not settled. */
  readonly before: PictureCost | null;
}

const tidying = createStore<{ readonly last: Tidying | null }>(() => ({ last: null }));

/** What is being looked at; null where nothing is. */
export function tidyingNow(): Tidying | null {
  const { last } = tidying.getState();
  return last && last.stroke === studio.getState().open?.stroke ? last : null;
}

export function useTidying(): Tidying | null {
  const last = useStore(tidying, (state) => state.last);
  const open = useStudio((state) => state.open?.stroke);
  return last && last.stroke === open ? last : null;
}

export function startTidying(): void {
  endStroke();
  const { open, facts } = studio.getState();
  if (!open) return;
  const { edit, changed, left } = tidyCells(open.design, open.chart);
  if (!edit) {
    const { sentence, isProblem } = whyNotTidy(open.chart, left);
    (isProblem ? tellProblem : tell)(sentence);
    return;
  }
  const before = facts?.settled ? findings.getState().cost : null;
  beginStroke('Tidy', true);
  stroke(edit);
  const now = studio.getState().open;
  if (!now?.stroke) return;
  const cells = now.chart.cells.map((code, cell) => (code === open.chart.cells[cell] ? 0 : 1));
  tidying.setState({ last: { stroke: now.stroke, changed, cells, left, before } });
}

/** Calls back when tidying is looked at anew, until the function that is given back is called. */
export function onTidying(changed: () => void): () => void {
  return tidying.subscribe(changed);
}

export function keepTidied(): void {
  if (!tidyingNow()) return;
  keepStroke();
  tell('Tidied. Undo takes it back.');
}

export function dropTidied(): void {
  if (!tidyingNow()) return;
  dropStroke();
  tell('All as it was.');
}
