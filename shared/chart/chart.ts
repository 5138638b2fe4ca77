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
  flattenRows(
    cells,
    design,
    Array.from({ length: rows }, (_, row) => row),
  );
  return { columns, rows, startCorner, cells };
}

/** The chart of `design`, where all but some rows (from 0) are as in `chart`; both are of one size. */
export function reflatten(chart: Chart, design: Design, rows: readonly number[]): Chart {
  const cells = chart.cells.slice();
  flattenRows(cells, design, rows);
  return { ...chart, startCorner: design.startCorner, cells };
}

/** True where row `row` (from 0) is tied left to right. */
export function goesRight(startCorner: StartCorner, row: number): boolean {
  return (startCorner === 'top-left') === (row % 2 === 0);
}

/** From the top down, and only where nothing has shown yet; a row that is full needs no look further down. */
function flattenRows(cells: Uint8Array, { columns, layers }: Design, rows: readonly number[]): void {
  const visible = layers.filter((layer: Layer) => layer.visible).reverse();
  for (const r of rows) {
    const from = r * columns;
    const line = cells.subarray(from, from + columns).fill(EMPTY);
    let open = columns;
    for (const layer of visible) {
      const sheet = layer.rows[r]!;
      for (let c = 0; c < columns; c++) {
        if (line[c] !== EMPTY || sheet[c] === EMPTY) continue;
        line[c] = sheet[c]!;
        open--;
      }
      if (open === 0) break;
    }
    if (open > 0) for (let c = 0; c < columns; c++) if (line[c] === EMPTY) line[c] = BARE;
  }
}
