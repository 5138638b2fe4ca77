/** A cell of the chart: row and column from 0. May lie outside the chart while a tool is dragged beyond its edge. */
export interface Cell {
  readonly row: number;
  readonly column: number;
}

export interface ChartSize {
  readonly columns: number;
  readonly rows: number;
}

export function isInside({ row, column }: Cell, { columns, rows }: ChartSize): boolean {
  return row >= 0 && row < rows && column >= 0 && column < columns;
}
