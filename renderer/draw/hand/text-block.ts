/** The text that the Text tool sets down, in the chosen yarn. */
import type { Block } from '../../../shared/chart/patch/block.ts';
import { cellText } from '../../../shared/chart/text/cell-text.ts';
import type { Means } from './deed.ts';

/** Null where nothing is written, or only blanks. */
export function textBlock({ open, drawing: { text, alphabet, align } }: Means): Block | null {
  const { columns, rows, cells } = cellText(text, alphabet, { align });
  if (!cells.includes(1)) return null;
  return { columns, rows, cells: cells.map((isKnot) => isKnot * open.code) };
}
