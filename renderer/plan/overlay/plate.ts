import type { Pen, PlacedOverlay } from './overlay.ts';

/** A few letters on a plate of paper, with their middle at a point in device pixels. */
export function drawPlate(
  pen: Pen,
  text: string,
  x: number,
  y: number,
  { inks, placed: { ratio } }: Pick<PlacedOverlay, 'inks' | 'placed'>,
): void {
  pen.font = `600 ${11 * ratio}px "Noto Sans", sans-serif`;
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  const width = pen.measureText(text).width + 8 * ratio;
  pen.beginPath();
  pen.roundRect(x - width / 2, y - 8 * ratio, width, 16 * ratio, 5 * ratio);
  pen.fillStyle = inks.paper;
  pen.fill();
  pen.strokeStyle = inks.ink;
  pen.lineWidth = ratio;
  pen.setLineDash([]);
  pen.stroke();
  pen.fillStyle = inks.ink;
  pen.fillText(text, x, y + 0.5 * ratio);
}
