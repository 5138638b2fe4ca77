/**
 * What was found in the picture when it was last looked at: which cells make it costly, what that adds up to, and which
 * touching yarns can't be told apart. It belongs to the open design, and is empty until the first answer.
 */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { PictureCost } from '../../shared/chart/cost/picture-cost.ts';
import type { AlikePair } from '../../shared/yarn/alike-pairs.ts';
import type { Marks } from '../store/views.ts';

export interface Findings {
  /** The size of the chart that the cells belong to. */
  readonly columns: number;
  readonly rows: number;
  /** A byte a cell, 1 where it causes the cost; null where that is not known yet. */
  readonly cells: Readonly<Record<Marks, Uint8Array | null>>;
  /** Null until it was planned, and where it can't be. */
  readonly cost: PictureCost | null;
  /** Null until they were looked for. */
  readonly pairs: readonly AlikePair[] | null;
}

export const noFindings: Findings = {
  columns: 0,
  rows: 0,
  cells: { 'lone-knots': null, 'short-runs': null, 'loose-ends': null },
  cost: null,
  pairs: null,
};

export const findings = createStore<Findings>(() => noFindings);

export function useFindings<T>(select: (found: Findings) => T): T {
  return useStore(findings, select);
}
