/**
 * The chart without its lone knots: each takes the yarn that most of its neighbours have.
 *
 * One walk over the cells in reading order is enough. A lone knot takes the yarn of a cell that touches it, so that
 * neither of the two is lone afterwards, and no other cell becomes lone by it: only a like neighbour could miss the
 * knot, and it had none. So the number of lone knots falls with every change, only cells that were lone are changed,
 * none twice, and a second walk finds nothing to do. Nor does the number of runs rise: a lone knot was one by itself,
 * and becomes at most one again. The number of strands nearly always falls, but not by law: where a strand was carried
 * by way of a lone knot, it may now have too far to go.
 *
 * Reading order settles which of two lone knots gives way to the other, so a mirrored chart may be tidied otherwise.
 */
import { BARE, codeOf, isYarn } from '../../design/codes.ts';
import type { Yarn } from '../../design/schema.ts';
import { deltaE2000 } from '../../yarn/colour-difference.ts';
import type { Chart } from '../chart.ts';
import type { Strips } from '../tools/strips.ts';
import { isLoneKnot } from './lone-knots.ts';

export interface Tidied {
  readonly chart: Chart;
  /** The cells that changed, with what they are now. */
  readonly strips: Strips;
  /** How many cells changed. */
  readonly changed: number;
  /** Lone knots that stay: those that may not change, and the knot of a chart of a single cell. */
  readonly left: number;
}

export interface TidyOptions {
  /** Whether a cell (`row * columns + column`) may change; without it, any may. Asked of lone knots only. */
  readonly mayChange?: (cell: number) => boolean;
}

/**
 * Of the yarns that touch a lone knot side by side, above or below, it takes the one that most of these have; then the
 * one that most of all eight cells around it have; then the one nearest to it in colour (CIEDE2000); then the one of
 * the lowest code. A knot becomes bare only where all that touches it is bare; a bare cell never changes. `yarns` hold
 * every yarn of the chart.
 */
export function tidied(
  chart: Chart,
  yarns: readonly Pick<Yarn, 'id' | 'color'>[],
  { mayChange = () => true }: TidyOptions = {},
): Tidied {
  const next: Chart = { ...chart, cells: chart.cells.slice() };
  const difference = differences(yarns);
  let changed = 0;
  const passedOver: number[] = [];
  for (let row = 0, cell = 0; row < chart.rows; row++) {
    for (let column = 0; column < chart.columns; column++, cell++) {
      if (!isLoneKnot(next, row, column)) continue;
      const code = mayChange(cell) ? codeAround(next, row, column, difference) : null;
      if (code === null) {
        passedOver.push(row, column);
        continue;
      }
      next.cells[cell] = code;
      changed++;
    }
  }
  // Asked at the end: the next knot may have taken the yarn of one that was passed over.
  let left = 0;
  for (let i = 0; i < passedOver.length; i += 2) {
    if (isLoneKnot(next, passedOver[i]!, passedOver[i + 1]!)) left++;
  }
  return { chart: next, strips: stripsBetween(chart, next), changed, left };
}

type Difference = (codeA: number, codeB: number) => number;

/** What the lone knot becomes; null where nothing touches it. */
function codeAround(chart: Chart, row: number, column: number, difference: Difference): number | null {
  const { cells, columns, rows } = chart;
  const own = cells[row * columns + column]!;
  const beside: number[] = [];
  const around: number[] = [];
  for (let r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
    for (let c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c++) {
      if (r === row && c === column) continue;
      const code = cells[r * columns + c]!;
      around.push(code);
      if (r === row || c === column) beside.push(code);
    }
  }
  if (beside.length === 0) return null;
  let best = BARE;
  for (const code of beside) {
    if (!isYarn(code) || code === best) continue;
    const ahead =
      best === BARE ||
      (howMany(beside, code) - howMany(beside, best) ||
        howMany(around, code) - howMany(around, best) ||
        difference(own, best) - difference(own, code) ||
        best - code) > 0;
    if (ahead) best = code;
  }
  return best;
}

function howMany(codes: readonly number[], code: number): number {
  let count = 0;
  for (const each of codes) if (each === code) count++;
  return count;
}

/** CIEDE2000 of two codes, each pair worked out once: a speckled chart asks for the same few again and again. */
function differences(yarns: readonly Pick<Yarn, 'id' | 'color'>[]): Difference {
  const colours = new Map(yarns.map(({ id, color }) => [codeOf(id), color]));
  const known = new Map<number, number>();
  const colourOf = (code: number) => {
    const colour = colours.get(code);
    if (colour === undefined) throw new Error(`the chart has cells of code ${code}, and no such yarn`);
    return colour;
  };
  return (codeA, codeB) => {
    const pair = codeA * 256 + codeB;
    const found = known.get(pair) ?? deltaE2000(colourOf(codeA), colourOf(codeB));
    known.set(pair, found);
    return found;
  };
}

function stripsBetween(before: Chart, after: Chart): Strips {
  const { columns, rows, cells } = after;
  const strips: number[] = [];
  for (let row = 0; row < rows; row++) {
    const start = row * columns;
    for (let column = 0; column < columns; column++) {
      const code = cells[start + column]!;
      if (code === before.cells[start + column]) continue;
      const from = column;
      const goesOn = (c: number) => cells[start + c] === code && before.cells[start + c] !== code;
      while (column + 1 < columns && goesOn(column + 1)) column++;
      strips.push(row, from, column + 1 - from, code);
    }
  }
  return Int32Array.from(strips);
}
