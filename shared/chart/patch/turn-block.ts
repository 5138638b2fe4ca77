/** A block seen in a mirror, turned, or at another size. Names go by what the person sees on the chart. */
import type { Block } from './block.ts';

export function flippedLeftRight(block: Block): Block {
  const { columns, rows } = block;
  return mapped(block, columns, rows, (row, column) => row * columns + columns - 1 - column);
}

export function flippedTopBottom(block: Block): Block {
  const { columns, rows } = block;
  return mapped(block, columns, rows, (row, column) => (rows - 1 - row) * columns + column);
}

/** A quarter turn clockwise: what was at the top is at the right. In cells: true only where cells are square. */
export function turnedRight(block: Block): Block {
  const { columns, rows } = block;
  return mapped(block, rows, columns, (row, column) => (rows - 1 - column) * columns + row);
}

/** A quarter turn anticlockwise: what was at the top is at the left. In cells, as `turnedRight`. */
export function turnedLeft(block: Block): Block {
  const { columns, rows } = block;
  return mapped(block, rows, columns, (row, column) => column * columns + columns - 1 - row);
}

export function turnedHalf(block: Block): Block {
  return { ...block, cells: block.cells.slice().reverse() };
}

/** The block stretched or thinned to a size of at least one cell: each cell is the one nearest to its middle. */
export function scaledBlock(block: Block, columns: number, rows: number): Block {
  const oldRow = (row: number) => Math.floor(((row + 0.5) * block.rows) / rows);
  const oldColumn = (column: number) => Math.floor(((column + 0.5) * block.columns) / columns);
  return mapped(block, columns, rows, (row, column) => oldRow(row) * block.columns + oldColumn(column));
}

/** A block of another size; `from` tells at which place of the old block a cell is taken. */
function mapped(
  block: Block,
  columns: number,
  rows: number,
  from: (row: number, column: number) => number,
): Block {
  const cells = new Uint8Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      cells[row * columns + column] = block.cells[from(row, column)]!;
    }
  }
  return { columns, rows, cells };
}
