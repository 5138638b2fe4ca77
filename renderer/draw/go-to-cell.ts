/** Brings the cell cursor to a cell of the chart, from wherever in the studio a cell is named. */
import type { Cell } from '../../shared/chart/tools/cell.ts';

let goes: ((cell: Cell) => void) | null = null;

/** The chart that is shown follows until the function that is given back is called. */
export function followCells(go: (cell: Cell) => void): () => void {
  goes = go;
  return () => {
    if (goes === go) goes = null;
  };
}

/** Row and column from 0. The chart has the focus afterwards. */
export function goToCell(cell: Cell): void {
  goes?.(cell);
}
