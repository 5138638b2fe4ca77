/**
 * The flat chart: what the maker ties. Layers are looked through from the top; the first cell that is not empty
 * shows, and where every layer is empty the cord is bare.
 */
import { BARE, EMPTY } from '../design/codes.ts';
import type { Design, Layer } from '../design/design.ts';
import type { StartCorner } from '../design/schema.ts';

/** `cells[row * columns + column]` is a yarn's code or BARE, never EMPTY. Rows and columns from 0. */
export interface Chart {
  readonly columns: number;
  readonly rows: number;
  readonly startCorner: StartCorner;
  readonly cells: Uint8Array;
}

export function flatten(design: Design): Chart {
  const { columns, rows, startCorner } = design;
  const cells = new Uint8Array(columns * rows);
  flattenRows(cells, design, 0, rows - 1);
  return { columns, rows, startCorner, cells };
}

/** The chart of `design`, where all but rows `first` to `last` are as in `chart`. */
export function reflatten(chart: Chart, design: Design, first: number, last: number): Chart {
  const cells = chart.cells.slice();
  flattenRows(cells, design, first, last);
  return { ...chart, startCorner: design.startCorner, cells };
}

/** True where row `row` (from 0) is tied left to right. */
export function goesRight(startCorner: StartCorner, row: number): boolean {
  return (startCorner === 'top-left') === (row % 2 === 0);
}

function flattenRows(cells: Uint8Array, { columns, layers }: Design, first: number, last: number): void {
  const visible = layers.filter((layer: Layer) => layer.visible).reverse();
  for (let r = first; r <= last; r++) {
    const sheets = visible.map((layer) => layer.rows[r]!);
    for (let c = 0; c < columns; c++) {
      let code = EMPTY;
      for (let s = 0; s < sheets.length && code === EMPTY; s++) code = sheets[s]![c]!;
      cells[r * columns + c] = code === EMPTY ? BARE : code;
    }
  }
}
