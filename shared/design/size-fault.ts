import { limits } from './limits.ts';

/** Why there can be no design of this size, as a sentence without its capital and full stop; null where there can. */
export function sizeFault(columns: number, rows: number, layers: number): string | null {
  if (!(columns >= 1 && rows >= 1)) return 'a design has at least one cord and one row';
  if (columns > limits.columns)
    return `${columns} cords are more than the ${limits.columns} of the widest chart`;
  if (rows > limits.rows) return `${rows} rows are more than the ${limits.rows} of the longest chart`;
  if (layers > limits.layers) return `${layers} layers are more than the ${limits.layers} of one design`;
  if (columns * rows * layers > limits.cells) {
    return `${layers} layers of ${columns} cords and ${rows} rows have more than the ${limits.cells} cells of one design`;
  }
  return null;
}
