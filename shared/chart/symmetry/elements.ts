/**
 * The elements of a symmetry as maps of cells. The point group's are the orthogonal 2 x 2 matrices of whole numbers,
 * moved so that they hold the centre; a repeat adds the translations of its lattice, each after each of these.
 * The identity is the last element, so that what was drawn lies on top of its images.
 */
import type { ChartSize } from '../tools/cell.ts';
import { type CellMap, imageOf } from './cell-map.ts';
import { soundSymmetry } from './sound-symmetry.ts';
import type { Centre, PointKind, Symmetry } from './symmetry.ts';

type Matrix = Pick<CellMap, 'rr' | 'rc' | 'cr' | 'cc'>;

const identity: Matrix = { rr: 1, rc: 0, cr: 0, cc: 1 };
const leftRight: Matrix = { rr: 1, rc: 0, cr: 0, cc: -1 };
const topBottom: Matrix = { rr: -1, rc: 0, cr: 0, cc: 1 };
const halfTurn: Matrix = { rr: -1, rc: 0, cr: 0, cc: -1 };
const diagonal: Matrix = { rr: 0, rc: 1, cr: 1, cc: 0 };
const antidiagonal: Matrix = { rr: 0, rc: -1, cr: -1, cc: 0 };
const clockwise: Matrix = { rr: 0, rc: 1, cr: -1, cc: 0 };
const anticlockwise: Matrix = { rr: 0, rc: -1, cr: 1, cc: 0 };

const matrices: Record<PointKind, readonly Matrix[]> = {
  none: [identity],
  'mirror-left-right': [leftRight, identity],
  'mirror-top-bottom': [topBottom, identity],
  'mirror-both': [halfTurn, topBottom, leftRight, identity],
  'mirror-diagonal': [diagonal, identity],
  'mirror-antidiagonal': [antidiagonal, identity],
  'mirror-diagonals': [halfTurn, antidiagonal, diagonal, identity],
  'half-turn': [halfTurn, identity],
  'quarter-turn': [anticlockwise, halfTurn, clockwise, identity],
  'quarter-turn-mirrored': [
    anticlockwise,
    halfTurn,
    clockwise,
    antidiagonal,
    diagonal,
    topBottom,
    leftRight,
    identity,
  ],
};

/**
 * Every element of the point group; with a repeat, every element that can bring a cell of the chart into the chart.
 * With short periods these are many: for a period of one cell four times the chart's cells and more, so what copies
 * whole drawings uses `pointElementsOf` and the lattice.
 */
export function elementsOf(symmetry: Symmetry, size: ChartSize): readonly CellMap[] {
  const sound = soundSymmetry(symmetry, size);
  const points = pointElementsOf(sound);
  if (sound.repeat === 'none') return points;
  const elements: CellMap[] = [];
  points.forEach((map, i) => {
    const isIdentity = i === points.length - 1;
    for (const { rows, columns } of translationsOf(map, sound, size)) {
      if (isIdentity && rows === 0 && columns === 0) continue;
      elements.push({ ...map, r0: map.r0 + rows, c0: map.c0 + columns });
    }
  });
  elements.push(points.at(-1)!);
  return elements;
}

/** The elements of the point group alone, one to eight; the symmetry must be sound. */
export function pointElementsOf({ point, centre }: Symmetry): readonly CellMap[] {
  return matrices[point].map((matrix) => about(matrix, centre));
}

/** The map that does what `matrix` does and holds the centre: in halves, a cell's middle is twice its number and 1. */
function about(matrix: Matrix, { acrossHalves, downHalves }: Centre): CellMap {
  const { rr, rc, cr, cc } = matrix;
  return {
    ...matrix,
    r0: (downHalves - 1 + rr * (1 - downHalves) + rc * (1 - acrossHalves)) / 2,
    c0: (acrossHalves - 1 + cr * (1 - downHalves) + cc * (1 - acrossHalves)) / 2,
  };
}

/** The lattice's translations after which `map` brings some cell of the chart into the chart. */
function translationsOf(
  map: CellMap,
  { repeat, periodColumns, periodRows }: Symmetry,
  { columns, rows }: ChartSize,
): { rows: number; columns: number }[] {
  const one = imageOf({ row: 0, column: 0 }, map);
  const other = imageOf({ row: rows - 1, column: columns - 1 }, map);
  const top = Math.min(one.row, other.row);
  const bottom = Math.max(one.row, other.row);
  const left = Math.min(one.column, other.column);
  const right = Math.max(one.column, other.column);
  const translations: { rows: number; columns: number }[] = [];
  const lastAcross = Math.floor((columns - 1 - left) / periodColumns);
  for (let across = Math.ceil(-right / periodColumns); across <= lastAcross; across++) {
    const drop = repeat === 'half-drop' && across % 2 !== 0 ? periodRows / 2 : 0;
    const lastDown = Math.floor((rows - 1 - top - drop) / periodRows);
    for (let down = Math.ceil((-bottom - drop) / periodRows); down <= lastDown; down++) {
      translations.push({ rows: down * periodRows + drop, columns: across * periodColumns });
    }
  }
  return translations;
}
