/**
 * The lift marks of a chart: a small triangle in the cell of each cord that is lifted before its row is tied, in the upper
 * corner that the row comes to first. They are the cords that the written rows name after 'lift'.
 */
import { type Chart, goesRight } from '../chart/chart.ts';
import { BARE } from '../design/codes.ts';
import type { CellsItem, PathItem, PathStep } from './page.ts';
import type { Stretch } from './split-chart.ts';

export interface MarkedCells {
  readonly chart: Chart;
  /** Top left corner of the cells. */
  readonly x: number;
  readonly y: number;
  readonly cellWidth: number;
  readonly cellHeight: number;
  readonly across: Pick<Stretch, 'first' | 'end'>;
  readonly down: Pick<Stretch, 'first' | 'end'>;
  readonly cellInks: CellsItem['inks'];
}

/** Sides of the triangle, and of the edge that keeps it apart from symbols and rules, as shares of the cell's lesser side. */
const SIDE = 0.3;
const EDGE = 0.05;

/** In the ink of the cell's symbol, so that they are seen on any yarn, with an edge of the other one. */
export function liftMarks(cells: MarkedCells): PathItem[] {
  const { chart, x, y, cellWidth, cellHeight, across, down, cellInks } = cells;
  const size = Math.min(cellWidth, cellHeight);
  const byInk = new Map<string, PathStep[]>();
  for (let row = down.first; row < down.end; row++) {
    const right = goesRight(chart.startCorner, row);
    for (let column = across.first; column < across.end; column++) {
      const ink =
        isLifted(chart, row, column, right) && cellInks[chart.cells[row * chart.columns + column]!]?.ink;
      if (!ink) continue;
      const corner = x + (column - across.first + (right ? 0 : 1)) * cellWidth;
      const steps = byInk.get(ink) ?? [];
      byInk.set(ink, steps);
      steps.push(...liftMark(corner, y + (row - down.first) * cellHeight, size, right ? 1 : -1));
    }
  }
  return [...byInk].map(([ink, steps]) => inkedMarks(steps, ink, size));
}

/** Whether any cord of the chart is to be lifted. */
export function hasLifts(chart: Chart): boolean {
  for (let row = 0; row < chart.rows; row++) {
    const right = goesRight(chart.startCorner, row);
    for (let column = 0; column < chart.columns; column++)
      if (isLifted(chart, row, column, right)) return true;
  }
  return false;
}

/** One mark: a triangle at a cell's upper corner, into the cell to the right (1) or left (-1) of it. */
export function liftMark(x: number, y: number, size: number, way: 1 | -1): PathStep[] {
  const side = size * SIDE;
  return [['M', x, y], ['L', x + way * side, y], ['L', x, y + side], ['Z']];
}

export function inkedMarks(steps: PathStep[], ink: string, size: number): PathItem {
  return { kind: 'path', steps, fill: ink, stroke: otherInk(ink), strokeMm: size * EDGE };
}

function isLifted({ cells, columns }: Chart, row: number, column: number, right: boolean): boolean {
  const before = right ? column - 1 : column + 1;
  if (before < 0 || before >= columns) return false;
  const code = cells[row * columns + column]!;
  return code !== BARE && code !== cells[row * columns + before];
}

function otherInk(ink: string): string {
  return ink === '#000000' ? '#ffffff' : '#000000';
}
