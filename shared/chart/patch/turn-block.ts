/** A block seen in a mirror, turned, or at another size. Names go by what the person sees on the chart. */
import type { Block } from './block.ts';

export function flippedLeftRight(block: Block): Block {
  return mapped(block, block.columns, block.rows, (row, column) => [row, block.columns - 1 - column]);
}

export function flippedTopBottom(block: Block): Block {
  return mapped(block, block.columns, block.rows, (row, column) => [block.rows - 1 - row, column]);
}

/** A quarter turn clockwise: what was at the top is at the right. In cells: true only where cells are square. */
export function turnedRight(block: Block): Block {
  return mapped(block, block.rows, block.columns, (row, column) => [block.rows - 1 - column, row]);
}

/** A quarter turn anticlockwise: what was at the top is at the left. In cells, as `turnedRight`. */
export function turnedLeft(block: Block): Block {
  return mapped(block, block.rows, block.columns, (row, column) => [column, block.columns - 1 - row]);
}

export function turnedHalf(block: Block): Block {
  return mapped(block, block.columns, block.rows, (row, column) => [
    block.rows - 1 - row,
    block.columns - 1 - column,
  ]);
}

/** The block stretched or thinned to a size of at least one cell: each cell is the one nearest to its middle. */
export function scaledBlock(block: Block, columns: number, rows: number): Block {
  return mapped(block, columns, rows, (row, column) => [
    Math.floor(((row + 0.5) * block.rows) / rows),
    Math.floor(((column + 0.5) * block.columns) / columns),
  ]);
}

/** A block of another size; `from` tells the row and column of the old block that a cell comes from. */
function mapped(
  block: Block,
  columns: number,
  rows: number,
  from: (row: number, column: number) => readonly [row: number, column: number],
): Block {
  const cells = new Uint8Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const [oldRow, oldColumn] = from(row, column);
      cells[row * columns + column] = block.cells[oldRow * block.columns + oldColumn]!;
    }
  }
  return { columns, rows, cells };
}
