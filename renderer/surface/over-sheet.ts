/**
 * The sheet that lies over the cells and below the rules: the reference picture shining through, the veil over what
 * does not count at the moment, and outlines around marked cells. It is hidden while there is none of them.
 */
import Konva from 'konva';
import type { Design } from '../../shared/design/design.ts';
import type { Reference } from '../../shared/design/schema.ts';
import { type CellSet, traceOutline } from './cell-outline.ts';
import type { CellBlock } from './chart-bitmap.ts';
import { cellsInSight, chartEdges } from './draw-around.ts';
import type { Placed } from './placed.ts';
import { ReferenceImage } from './reference-image.ts';
import { strokeTwoTones } from './two-tones.ts';
import { type Veil, VeilBitmap } from './veil-bitmap.ts';
import { type CellSize, columnEdge, rowEdge } from './view.ts';

type Pen = CanvasRenderingContext2D;

/** What lies over the cells. */
export interface Over {
  readonly design: Design;
  readonly size: CellSize;
  readonly veil: Veil | null;
  readonly reference: Reference | null;
}

/** Below this width of a cell its outline would cover it: it gets a ring around it instead. */
const outlinesFromPx = 5;

export class OverSheet {
  readonly layer = new Konva.Layer({ listening: false, visible: false });
  readonly #image = new ReferenceImage();
  readonly #onReady: () => void;
  #over: Over | null = null;
  #veil: VeilBitmap | null = null;
  #placed: Placed | null = null;

  /** `onReady` is called when the picture was decoded and can be drawn. */
  constructor(onReady: () => void) {
    this.#onReady = onReady;
    const sceneFunc = (context: Konva.Context) => this.#draw(context._context);
    this.layer.add(new Konva.Shape({ listening: false, perfectDrawEnabled: false, sceneFunc }));
  }

  /** What lies over the cells from now on; null: nothing does. */
  take(over: Over | null): void {
    this.#over = over;
    this.#veil = over?.veil ? new VeilBitmap(over.design, over.veil) : null;
    if (!over?.reference) this.#image.forget();
    this.layer.visible(over !== null);
  }

  /** The design with other cells in some rows (from 0, in order); true where that changes the veil. */
  patch(design: Design, rows: readonly number[]): boolean {
    if (!this.#over) return false;
    this.#over = { ...this.#over, design };
    if (this.#over.veil?.layer == null) return false;
    this.#veil?.patch(design, rows);
    return true;
  }

  draw(placed: Placed): void {
    this.#placed = placed;
    if (this.#over) this.layer.draw();
  }

  forget(): void {
    this.#image.forget();
  }

  #draw(pen: Pen): void {
    if (!this.#over || !this.#placed) return;
    const { reference, veil } = this.#over;
    pen.imageSmoothingEnabled = false;
    if (this.#veil) this.#drawVeil(pen, this.#veil, this.#over, this.#placed);
    if (reference?.visible) this.#drawReference(pen, reference, this.#placed);
    if (veil?.marked)
      drawMarks(pen, { ...this.#over.design, cells: veil.marked }, this.#over.size, this.#placed);
  }

  #drawVeil(pen: Pen, veil: VeilBitmap, { design, size }: Over, { view }: Placed): void {
    const { left, top, right, bottom } = chartEdges(view, { ...size, ...design });
    pen.drawImage(veil.canvas, left, top, right - left, bottom - top);
  }

  #drawReference(pen: Pen, reference: Reference, { view }: Placed): void {
    const image = this.#image.of(reference, this.#onReady);
    if (!image) return;
    const { leftMm, topMm, widthMm, heightMm, opacity } = reference;
    const { scale, x, y } = view;
    pen.globalAlpha = opacity;
    pen.imageSmoothingEnabled = true;
    pen.drawImage(image, x + leftMm * scale, y + topMm * scale, widthMm * scale, heightMm * scale);
    pen.globalAlpha = 1;
  }
}

function drawMarks(pen: Pen, marked: CellSet, size: CellSize, placed: Placed): void {
  const { view, widthPx, heightPx, ratio } = placed;
  const block = cellsInSight(view, { ...size, ...marked }, widthPx, heightPx);
  if (!block) return;
  pen.beginPath();
  if (size.pitchMm * view.scale >= outlinesFromPx * ratio) traceOutline(pen, marked, block, view, size);
  else traceRings(pen, marked, size, block, placed);
  strokeTwoTones(pen, { ratio });
}

/** A ring around each marked cell, large enough to be seen. */
function traceRings(
  pen: Pen,
  { columns, cells }: CellSet,
  size: CellSize,
  block: CellBlock,
  placed: Placed,
): void {
  const { view, ratio } = placed;
  for (let row = block.top; row <= block.bottom; row++) {
    for (let column = block.left; column <= block.right; column++) {
      if (cells[row * columns + column] !== 1) continue;
      const x = (columnEdge(view, size, column) + columnEdge(view, size, column + 1)) / 2;
      const y = (rowEdge(view, size, row) + rowEdge(view, size, row + 1)) / 2;
      pen.rect(x - 3 * ratio, y - 3 * ratio, 6 * ratio, 6 * ratio);
    }
  }
}
