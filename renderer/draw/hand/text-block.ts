/** The text that the Text tool sets down, in the chosen yarn. */
import type { FittedMotif } from '../../../shared/chart/patch/block-of-motif.ts';
import { cellText } from '../../../shared/chart/text/cell-text.ts';
import type { Means } from './deed.ts';

/** Null where nothing is written, or only blanks. */
export function textBlock({ open, drawing: { text, alphabet, align } }: Means): FittedMotif | null {
  const { columns, rows, cells } = cellText(text, alphabet, { align });
  if (!cells.includes(1)) return null;
  return { block: { columns, rows, cells: cells.map((isKnot) => isKnot * open.code) }, newYarns: [] };
}
