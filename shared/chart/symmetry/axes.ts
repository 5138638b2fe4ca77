/**
 * What the screen draws over the chart to show a symmetry: mirrors, the centre, and the repeats. All in cells from the
 * chart's top left corner, so that the middle of a cord is at a half, and all within the chart.
 *
 * Only what goes through the centre is shown of mirrors and turns: a repeat has more of them, and would hide the chart.
 */
import type { ChartSize } from '../tools/cell.ts';
import { soundSymmetry } from './sound-symmetry.ts';
import type { PointKind, Symmetry } from './symmetry.ts';

export interface AxisLine {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

export interface AxisPoint {
  readonly x: number;
  readonly y: number;
}

export interface Axes {
  readonly mirrors: readonly AxisLine[];
  /** The centre of the turns, where there are any. */
  readonly centres: readonly AxisPoint[];
  /** The edges of the repeats: the centre is in the middle of one. */
  readonly grid: readonly AxisLine[];
}

/** Beyond this only the repeat about the centre is outlined: more lines would hide the chart, and take long to draw. */
const gridLinesAtMost = 2_000;

type Direction = readonly [across: number, down: number];

const upright: Direction = [0, 1];
const level: Direction = [1, 0];
const falling: Direction = [1, 1];
const rising: Direction = [1, -1];

/** For each kind the directions of its mirrors, and whether it turns. */
const shown: Record<PointKind, { readonly mirrors: readonly Direction[]; readonly turns: boolean }> = {
  none: { mirrors: [], turns: false },
  'mirror-left-right': { mirrors: [upright], turns: false },
  'mirror-top-bottom': { mirrors: [level], turns: false },
  'mirror-both': { mirrors: [upright, level], turns: true },
  'mirror-diagonal': { mirrors: [falling], turns: false },
  'mirror-antidiagonal': { mirrors: [rising], turns: false },
  'mirror-diagonals': { mirrors: [falling, rising], turns: true },
  'half-turn': { mirrors: [], turns: true },
  'quarter-turn': { mirrors: [], turns: true },
  'quarter-turn-mirrored': { mirrors: [upright, level, falling, rising], turns: true },
};

export function axesOf(symmetry: Symmetry, size: ChartSize): Axes {
  const sound = soundSymmetry(symmetry, size);
  const centre = { x: sound.centre.acrossHalves / 2, y: sound.centre.downHalves / 2 };
  const { mirrors, turns } = shown[sound.point];
  return {
    mirrors: mirrors.map(([across, down]) => lineThrough(centre, across, down, size)),
    centres: turns ? [centre] : [],
    grid: sound.repeat === 'none' ? [] : gridOf(sound, centre, size),
  };
}

/** The part within the chart of the line through a point of the chart. */
function lineThrough({ x, y }: AxisPoint, across: number, down: number, size: ChartSize): AxisLine {
  const back = Math.min(reach(-across, x, size.columns), reach(-down, y, size.rows));
  const on = Math.min(reach(across, x, size.columns), reach(down, y, size.rows));
  return { x1: x - across * back, y1: y - down * back, x2: x + across * on, y2: y + down * on };
}

/** How many steps lead from `at` to the edge of what reaches from 0 to `end`. */
function reach(step: number, at: number, end: number): number {
  return step > 0 ? end - at : step < 0 ? at : Number.POSITIVE_INFINITY;
}

function gridOf(
  { point, repeat, periodColumns, periodRows }: Symmetry,
  centre: AxisPoint,
  size: ChartSize,
): AxisLine[] {
  // A repeat without mirrors or turns may begin anywhere, so its edges are laid between cords and between rows.
  const laid = point === 'none' ? Math.floor : (value: number) => value;
  const left = laid(centre.x - periodColumns / 2);
  const top = laid(centre.y - periodRows / 2);
  const drop = repeat === 'half-drop' ? periodRows / 2 : 0;
  const levelsAcross = drop === 0 ? 1 : size.columns / periodColumns;
  const count = size.columns / periodColumns + levelsAcross * (size.rows / periodRows);
  const lines =
    count > gridLinesAtMost
      ? outline(left, top, periodColumns, periodRows)
      : [
          ...uprights(left, periodColumns, size),
          ...(drop === 0
            ? levels(0, size.columns, top, periodRows, size)
            : droppedLevels(left, top, periodColumns, periodRows, size)),
        ];
  return lines.map((line) => within(line, size)).filter(({ x1, y1, x2, y2 }) => x1 < x2 || y1 < y2);
}

function outline(left: number, top: number, columns: number, rows: number): AxisLine[] {
  const right = left + columns;
  const bottom = top + rows;
  return [
    { x1: left, y1: top, x2: right, y2: top },
    { x1: right, y1: top, x2: right, y2: bottom },
    { x1: left, y1: bottom, x2: right, y2: bottom },
    { x1: left, y1: top, x2: left, y2: bottom },
  ];
}

function uprights(left: number, period: number, { columns, rows }: ChartSize): AxisLine[] {
  return stops(left, period, columns).map((x) => ({ x1: x, y1: 0, x2: x, y2: rows }));
}

function levels(x1: number, x2: number, top: number, period: number, { rows }: ChartSize): AxisLine[] {
  return stops(top, period, rows).map((y) => ({ x1, y1: y, x2, y2: y }));
}

/** Every other column of repeats, counted from the one about the centre, has its edges half a period lower. */
function droppedLevels(
  left: number,
  top: number,
  periodColumns: number,
  periodRows: number,
  size: ChartSize,
): AxisLine[] {
  return stops(left, periodColumns, size.columns + periodColumns).flatMap((right) => {
    const columnsAway = Math.round((right - left) / periodColumns) - 1;
    const drop = columnsAway % 2 === 0 ? 0 : periodRows / 2;
    return levels(right - periodColumns, right, top + drop, periodRows, size);
  });
}

/** From 0 to `end`, all that is a whole number of periods from `at`. */
function stops(at: number, period: number, end: number): number[] {
  const first = at - Math.floor(at / period) * period;
  return first > end
    ? []
    : Array.from({ length: Math.floor((end - first) / period) + 1 }, (_, i) => first + i * period);
}

/** The part of an upright or level line that is within the chart; of no length where none is. */
function within({ x1, y1, x2, y2 }: AxisLine, { columns, rows }: ChartSize): AxisLine {
  if (Math.max(x1, x2) < 0 || x1 > columns || Math.max(y1, y2) < 0 || y1 > rows)
    return { x1: 0, y1: 0, x2: 0, y2: 0 };
  return { x1: Math.max(0, x1), y1: Math.max(0, y1), x2: Math.min(columns, x2), y2: Math.min(rows, y2) };
}
