import { limits } from '../design/limits.ts';
import type { Swatch } from '../design/schema.ts';

/**
 * The swatch of so many knots and rows in 10 cm. Counts are kept to 0.1: a swatch holds whole cords and rows, so it
 * is a metre long, over ten times the counts. A gauge too fine for the limits of a swatch gets a shorter one.
 */
export function gaugeFromPer10Cm(knots: number, rows: number): Swatch {
  const across = metreOf(knots, limits.columns);
  const down = metreOf(rows, limits.rows);
  return { widthMm: across.lengthMm, cords: across.count, heightMm: down.lengthMm, rows: down.count };
}

function metreOf(per10Cm: number, most: number): { lengthMm: number; count: number } {
  const perMetre = Math.max(1, Math.round(per10Cm * 10));
  const count = Math.min(perMetre, most);
  return { lengthMm: (count * 1000) / perMetre, count };
}
