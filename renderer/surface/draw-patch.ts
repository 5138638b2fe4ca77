import type { Mask } from '../../shared/chart/patch/mask.ts';
import { traceOutline } from './cell-outline.ts';
import type { CellBlock } from './chart-bitmap.ts';
import { strokeTwoTones } from './two-tones.ts';
import type { CellSize, View } from './view.ts';

/** The outline of the chosen patch, broken so that it is not taken for a rule. */
export function drawPatch(
  pen: CanvasRenderingContext2D,
  { columns, rows, chosen, bounds }: Mask,
  inSight: CellBlock,
  view: View,
  size: CellSize,
  ratio: number,
): void {
  if (!bounds) return;
  const block = {
    left: Math.max(bounds.left, inSight.left),
    top: Math.max(bounds.top, inSight.top),
    right: Math.min(bounds.right, inSight.right),
    bottom: Math.min(bounds.bottom, inSight.bottom),
  };
  pen.beginPath();
  traceOutline(pen, { columns, rows, cells: chosen }, block, view, size);
  strokeTwoTones(pen, { ratio, dash: [5, 4] });
}
