import type { Strips } from '../../shared/chart/tools/strips.ts';
import { BARE, EMPTY } from '../../shared/design/codes.ts';
import { type CellSet, traceOutline } from './cell-outline.ts';
import type { CellBlock } from './chart-bitmap.ts';
import { strokeTwoTones } from './two-tones.ts';
import { type CellSize, columnEdge, rowEdge, type View } from './view.ts';

interface Ghost {
  readonly strips: Strips;
  /** By code; what is emptied or bare is shown in `paper`. */
  readonly colors: Readonly<Record<number, string>>;
  readonly paper: string;
  readonly columns: number;
  readonly rows: number;
}

/** What a tool would draw where the pointer is: the cells in their colours, lighter than real ones, in an outline. */
export function drawGhost(
  pen: CanvasRenderingContext2D,
  { strips, colors, paper, columns, rows }: Ghost,
  inSight: CellBlock,
  view: View,
  size: CellSize,
  ratio: number,
): void {
  const set: CellSet = { columns, rows, cells: new Uint8Array(columns * rows) };
  let block: CellBlock | null = null;
  pen.globalAlpha = 0.7;
  for (let i = 0; i < strips.length; i += 4) {
    const row = strips[i]!;
    const from = Math.max(inSight.left, strips[i + 1]!);
    const to = Math.min(inSight.right, strips[i + 1]! + strips[i + 2]! - 1);
    if (row < inSight.top || row > inSight.bottom || from > to) continue;
    const code = strips[i + 3]!;
    set.cells.fill(1, row * columns + from, row * columns + to + 1);
    block = joined(block, { left: from, top: row, right: to, bottom: row });
    pen.fillStyle = code === EMPTY || code === BARE ? paper : (colors[code] ?? paper);
    const [x, y] = [columnEdge(view, size, from), rowEdge(view, size, row)];
    pen.fillRect(x, y, columnEdge(view, size, to + 1) - x, rowEdge(view, size, row + 1) - y);
  }
  pen.globalAlpha = 1;
  if (!block) return;
  pen.beginPath();
  traceOutline(pen, set, block, view, size);
  strokeTwoTones(pen, { ratio, width: 1 });
}

function joined(a: CellBlock | null, b: CellBlock): CellBlock {
  if (!a) return b;
  return {
    left: Math.min(a.left, b.left),
    top: Math.min(a.top, b.top),
    right: Math.max(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
  };
}
