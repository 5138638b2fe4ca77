/**
 * A sheet of cells that strips are drawn on where they would be too many to keep one by one: a turned strip is a
 * column of single cells, and a repeated drawing covers the whole chart. A drawn cell holds its code plus one, so
 * that a cell that was made empty is told from one that was not drawn.
 */
export interface Sheet {
  readonly columns: number;
  readonly rows: number;
  readonly cells: Uint16Array;
}

export function newSheet(columns: number, rows: number): Sheet {
  return { columns, rows, cells: new Uint16Array(columns * rows) };
}

/** What a drawn cell of this code holds. */
export function drawnAs(code: number): number {
  return code + 1;
}

/**
 * Adds the stretches of a row of cells to `strips`, as `row, column, count, code`; undrawn cells give none. `row` and
 * `column` are those of the first cell.
 */
export function addStrips(strips: number[], cells: Uint16Array, row: number, column: number): void {
  for (let c = 0; c < cells.length; c++) {
    const drawn = cells[c]!;
    if (drawn === 0) continue;
    const from = c;
    while (c + 1 < cells.length && cells[c + 1] === drawn) c++;
    strips.push(row, column + from, c + 1 - from, drawn - 1);
  }
}
