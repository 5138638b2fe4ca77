/**
 * The lift marks of a chart: a small triangle in the cell of each cord that is lifted before its row is tied, in the upper
 * corner that the row comes to first. They are the cords that the written rows name after 'lift'.
 */
import { type Chart, goesRight } from '../../chart/chart.ts';
import { BARE } from '../../design/codes.ts';
import { BLACK_INK, WHITE_INK } from '../../yarn/colour-contrast.ts';
import { liftShapes } from '../../yarn/lift-shapes.ts';
import type { CellInk, CellsItem } from '../page/page.ts';
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

/** Width of the edge that keeps a mark apart from symbols and rules, as a share of the cell's lesser side. */
const EDGE = 0.05;

/** In the ink of the cell's symbol, so that they are seen on any yarn, with an edge of the other one. */
export function liftMarks(cells: MarkedCells): CellsItem[] {
  const { chart, across, down, cellInks } = cells;
  const columns = across.end - across.first;
  const rows = down.end - down.first;
  const marked = { left: new Uint8Array(columns * rows), right: new Uint8Array(columns * rows) };
  const places = [...new Set(Object.values(cellInks).map(({ ink }) => ink))];
  const any = { left: false, right: false };
  for (let row = down.first; row < down.end; row++) {
    const right = goesRight(chart.startCorner, row);
    const corner = right ? 'left' : 'right';
    for (let column = across.first; column < across.end; column++) {
      if (!isLifted(chart, row, column, right)) continue;
      const ink = cellInks[chart.cells[row * chart.columns + column]!]!.ink;
      marked[corner][(row - down.first) * columns + column - across.first] = places.indexOf(ink) + 1;
      any[corner] = true;
    }
  }
  return (['left', 'right'] as const)
    .filter((corner) => any[corner])
    .map((corner) => sheetOf(cells, corner, marked[corner], places));
}

/** Marks of one corner as cells without a fill, moved so that the corner of each symbol is that of its cell. */
function sheetOf(
  { x, y, cellWidth, cellHeight, across, down }: MarkedCells,
  corner: 'left' | 'right',
  codes: Uint8Array,
  places: readonly string[],
): CellsItem {
  const size = Math.min(cellWidth, cellHeight);
  const aside = ((cellWidth - size) / 2) * (corner === 'left' ? -1 : 1);
  return {
    kind: 'cells',
    x: x + aside,
    y: y - (cellHeight - size) / 2,
    cellWidth,
    cellHeight,
    columns: across.end - across.first,
    rows: down.end - down.first,
    codes,
    inks: Object.fromEntries(places.map((ink, i) => [i + 1, liftInk(corner, ink, size)])),
    symbolMm: size,
  };
}

/** How one mark is printed in a cell of this size, in mm. */
export function liftInk(corner: 'left' | 'right', ink: string, size: number): CellInk {
  const edge = { color: ink === WHITE_INK ? BLACK_INK : WHITE_INK, widthMm: size * EDGE };
  return { symbol: liftShapes[corner].text, ink, edge };
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

function isLifted({ cells, columns }: Chart, row: number, column: number, right: boolean): boolean {
  const before = right ? column - 1 : column + 1;
  if (before < 0 || before >= columns) return false;
  const code = cells[row * columns + column]!;
  return code !== BARE && code !== cells[row * columns + before];
}
