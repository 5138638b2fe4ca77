/**
 * Small signs for where a piece begins, is joined, and ends. Each has a shape of its own, and dark and light in it, so
 * that it is told apart without colour on every yarn.
 */
import type { Pen } from './overlay.ts';

export type Sign = 'attach' | 'join' | 'end';

const dark = '#262522';
const light = '#fffaf0';

/** Adds nothing to the pen's path of before. `radius` in device pixels. */
export function drawSign(pen: Pen, sign: Sign, x: number, y: number, radius: number): void {
  pen.beginPath();
  tracers[sign](pen, x, y, radius);
  pen.closePath();
  pen.lineJoin = 'round';
  pen.setLineDash([]);
  pen.strokeStyle = light;
  pen.lineWidth = radius * 0.9;
  pen.stroke();
  pen.fillStyle = sign === 'end' ? dark : light;
  pen.fill();
  pen.strokeStyle = dark;
  pen.lineWidth = Math.max(1, radius * 0.34);
  pen.stroke();
}

const tracers: Readonly<Record<Sign, (pen: Pen, x: number, y: number, radius: number) => void>> = {
  attach: (pen, x, y, radius) => pen.arc(x, y, radius * 0.9, 0, 2 * Math.PI),
  join(pen, x, y, radius) {
    const reach = radius * 1.15;
    pen.moveTo(x, y - reach);
    pen.lineTo(x + reach, y);
    pen.lineTo(x, y + reach);
    pen.lineTo(x - reach, y);
  },
  end: (pen, x, y, radius) => pen.rect(x - radius * 0.8, y - radius * 0.8, radius * 1.6, radius * 1.6),
};
