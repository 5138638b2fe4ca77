/** The chart as it is seen across the room, where cells are too small to be seen one by one; see `across-room.ts`. */
import type { Chart } from '../../shared/chart/chart.ts';
import { picturedFromAfar } from './across-room.ts';
import { chartEdges } from './draw-around.ts';
import type { Look } from './look.ts';
import type { Placed } from './placed.ts';

export class FarPicture {
  readonly #canvas = document.createElement('canvas');
  readonly #geometry: Look['geometry'];
  readonly #lights: Record<number, [number, number, number]>;
  #left = 0;
  #top = 0;

  constructor({ geometry, colors, cells }: Look) {
    this.#geometry = geometry;
    this.#lights = Object.fromEntries(
      Object.keys(colors.right).map((code) => [code, cells.lightOf(Number(code))]),
    );
  }

  /** As much of it as is in sight. */
  make(chart: Chart, { view, widthPx, heightPx }: Placed): void {
    const edges = chartEdges(view, this.#geometry);
    this.#left = Math.max(0, edges.left);
    this.#top = Math.max(0, edges.top);
    const width = Math.max(1, Math.min(widthPx, edges.right) - this.#left);
    const height = Math.max(1, Math.min(heightPx, edges.bottom) - this.#top);
    const bytes = picturedFromAfar(chart, this.#lights, {
      width,
      height,
      x: edges.left - this.#left,
      y: edges.top - this.#top,
      cellWidth: (edges.right - edges.left) / chart.columns,
      cellHeight: (edges.bottom - edges.top) / chart.rows,
    });
    this.#canvas.width = width;
    this.#canvas.height = height;
    this.#canvas.getContext('2d')!.putImageData(new ImageData(bytes, width, height), 0, 0);
  }

  draw(pen: CanvasRenderingContext2D): void {
    pen.drawImage(this.#canvas, this.#left, this.#top);
  }
}
