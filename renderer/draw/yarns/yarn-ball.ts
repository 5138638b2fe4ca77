/** A little ball of yarn with its symbol on it, if it has one. */

import { darker } from '../../../shared/pattern/page/tones.ts';
import { drawSymbol } from '../../surface/knot-look.ts';

const sizePx = 34;

export function drawBall(canvas: HTMLCanvasElement, color: string, symbol: string | null): void {
  const ratio = Math.max(1, window.devicePixelRatio || 1);
  canvas.width = sizePx * ratio;
  canvas.height = sizePx * ratio;
  const pen = canvas.getContext('2d')!;
  pen.scale(ratio, ratio);
  const middle = sizePx / 2;
  pen.beginPath();
  pen.arc(middle, middle, middle - 1, 0, Math.PI * 2);
  pen.fillStyle = color;
  pen.fill();
  pen.save();
  pen.clip();
  pen.strokeStyle = darker(color, 0.22);
  pen.lineWidth = 1.2;
  pen.beginPath();
  // Turns of yarn, wound two ways.
  for (let i = -3; i <= 3; i++) {
    pen.moveTo(middle + i * 6 - 14, -2);
    pen.quadraticCurveTo(middle + i * 5 + 6, middle, middle + i * 6 - 10, sizePx + 2);
    pen.moveTo(-2, middle + i * 6 + 12);
    pen.quadraticCurveTo(middle, middle + i * 5 - 7, sizePx + 2, middle + i * 6 + 8);
  }
  pen.stroke();
  pen.restore();
  // A middle grey, so that the ball stands out from light and dark panels alike.
  pen.strokeStyle = 'rgb(128 120 108 / 80%)';
  pen.lineWidth = 1;
  pen.beginPath();
  pen.arc(middle, middle, middle - 1, 0, Math.PI * 2);
  pen.stroke();
  if (symbol === null) return;
  // The symbol lies on a plain round, so that the turns don't disturb it.
  pen.fillStyle = color;
  pen.beginPath();
  pen.arc(middle, middle, 10, 0, Math.PI * 2);
  pen.fill();
  pen.translate(middle - 10, middle - 10);
  drawSymbol(pen, { color, symbol }, 20, 20);
}
