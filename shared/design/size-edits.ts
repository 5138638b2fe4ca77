/**
 * Edits of the chart's size: cords and rows put in or taken out, cut to a part, or brought to another size with or
 * without stretching the picture. All layers alike, locked and hidden ones too, since they are one chart. Each gives
 * one edit with all that follows from it (`reshape.ts`). Places are counted from 0. Which way a row is tied follows
 * from its number, so the rows below an inserted row change their direction by themselves.
 *
 * Problems: `too-large`, `nothing-left`, `same-size`.
 */
import { good, type Problem, problem, type Result } from '../result.ts';
import type { Design } from './design.ts';
import type { Edit } from './edits.ts';
import { NEW, reshape } from './reshape.ts';
import { sizeFault } from './size-fault.ts';

/** Cords run across the chart, rows down. */
export type Way = 'cords' | 'rows';

/** First and last cord and row of a part of the chart, all four inside, from 0. */
interface Part {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** Where the old chart stays in the new one: of nine places one across and one down. */
export interface Anchor {
  readonly across: 'left' | 'middle' | 'right';
  readonly down: 'top' | 'middle' | 'bottom';
}

export interface Size {
  readonly columns: number;
  readonly rows: number;
}

/** Why the chart can't have this size; null where it can. Asked before any cell is made. */
export function sizeProblem({ layers }: Pick<Design, 'layers'>, { columns, rows }: Size): Problem | null {
  const fault = sizeFault(columns, rows, layers.length);
  if (!fault) return null;
  const sentence = `${fault.charAt(0).toUpperCase()}${fault.slice(1)}.`;
  return {
    code: 'too-large',
    sentence: columns >= 1 && rows >= 1 ? `${sentence} Choose a smaller size.` : sentence,
  };
}

/** So many new cords or rows before the place `at`; where `at` is their number, after the last. */
export function insertLines(design: Design, way: Way, at: number, count: number): Result<Edit> {
  const old = countOf(design, way);
  const place = Math.min(old, Math.max(0, at));
  const { columns, rows } = design;
  const fault = sizeProblem(
    design,
    way === 'cords' ? { columns: columns + count, rows } : { columns, rows: rows + count },
  );
  if (fault) return { ok: false, problem: fault };
  return reshaped(design, {
    [way]: [...upTo(place), ...Array<number>(count).fill(NEW), ...upTo(old - place, place)],
  });
}

/** The design without `count` cords or rows from the place `at` on; what reaches beyond the last is passed over. */
export function deleteLines(design: Design, way: Way, at: number, count: number): Result<Edit> {
  return reshaped(design, {
    [way]: upTo(countOf(design, way)).filter((place) => place < at || place >= at + count),
  });
}

/** Only this part of the chart; what of it lies outside the chart is passed over. */
export function cropTo(design: Design, { top, left, bottom, right }: Part): Result<Edit> {
  if (top <= 0 && left <= 0 && bottom >= design.rows - 1 && right >= design.columns - 1)
    return problem('same-size', 'That is the whole chart: nothing is left to cut away. Choose a part of it.');
  return reshaped(design, {
    cords: upTo(design.columns).filter((column) => column >= left && column <= right),
    rows: upTo(design.rows).filter((row) => row >= top && row <= bottom),
  });
}

/** Another size without stretching: cords and rows come or go at the sides away from the anchor. */
export function resizeTo(design: Design, { columns, rows }: Size, { across, down }: Anchor): Result<Edit> {
  const fault = sizeProblem(design, { columns, rows });
  if (fault) return { ok: false, problem: fault };
  return reshaped(design, {
    cords: placed(design.columns, columns, startShare[across]),
    rows: placed(design.rows, rows, startShare[down]),
  });
}

/** Another size with the picture stretched to it: each new cell shows the old one that its middle falls in. */
export function scaleTo(design: Design, { columns, rows }: Size): Result<Edit> {
  const fault = sizeProblem(design, { columns, rows });
  if (fault) return { ok: false, problem: fault };
  const shape = { cords: nearest(design.columns, columns), rows: nearest(design.rows, rows) };
  return reshaped(design, shape, true);
}

/** The share of what comes or goes that does so before the first cord or row. */
const startShare: Readonly<Record<Anchor['across'] | Anchor['down'], number>> = {
  left: 0,
  top: 0,
  middle: 0.5,
  right: 1,
  bottom: 1,
};

function reshaped(
  design: Design,
  { cords = upTo(design.columns), rows = upTo(design.rows) }: Partial<Record<Way, readonly number[]>>,
  scales = false,
): Result<Edit> {
  if (cords.length === 0) return problem('nothing-left', 'A hanging needs at least one cord. Leave one.');
  if (rows.length === 0) return problem('nothing-left', 'A hanging needs at least one row. Leave one.');
  if (isAsItWas(cords, design.columns) && isAsItWas(rows, design.rows))
    return problem('same-size', 'The chart has this size already. Choose another size.');
  return good(reshape(design, { columns: cords, rows, scales }));
}

function countOf({ columns, rows }: Size, way: Way): number {
  return way === 'cords' ? columns : rows;
}

/** So many numbers from `first` on. */
function upTo(count: number, first = 0): number[] {
  return Array.from({ length: count }, (_, i) => first + i);
}

/** Of an odd number the half is rounded towards 0, so that growing and shrinking by as many takes each other back. */
function placed(old: number, count: number, startShare: number): number[] {
  const start = Math.trunc((count - old) * startShare);
  return Array.from({ length: count }, (_, i) => (i >= start && i < start + old ? i - start : NEW));
}

function nearest(old: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => Math.floor(((2 * i + 1) * old) / (2 * count)));
}

function isAsItWas(places: readonly number[], old: number): boolean {
  return places.length === old && places.every((from, at) => from === at);
}
