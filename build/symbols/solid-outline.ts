/**
 * A drawing as one outline without overlaps, as text like an SVG path in thousandths of the cell's side. Outlines
 * that lie over one another leave seams and bumps where their edges touch, in fonts above all.
 */
import { Path2D } from '@napi-rs/canvas';
import { partContours } from './contours.ts';
import type { Drawing } from './raster.ts';

const UNITS = 1000;

export function solidOutline(drawing: Drawing): string {
  const path = new Path2D();
  for (const step of partContours(drawing)) {
    const at = step.slice(1).map((share) => Number(share) * UNITS) as [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    if (step[0] === 'M') path.moveTo(at[0], at[1]);
    if (step[0] === 'L') path.lineTo(at[0], at[1]);
    if (step[0] === 'C') path.bezierCurveTo(...at);
    if (step[0] === 'Z') path.closePath();
  }
  const united = path.simplify().asWinding();
  return rounded(united.toSVGString())
    .split(/(?<=Z)/)
    .filter((contour) => !isPinhole(contour))
    .join('');
}

/** A hole too small to be seen, where three strokes all but close up: a fiftieth of the cell or less. */
function isPinhole(contour: string): boolean {
  const numbers = contour.match(/\d+/g)!.map(Number);
  const spread = (side: 0 | 1) => {
    const along = numbers.filter((_, i) => i % 2 === side);
    return Math.max(...along) - Math.min(...along);
  };
  return Math.max(spread(0), spread(1)) <= UNITS / 50;
}

/** Whole units, without the steps that then lead nowhere. */
function rounded(path: string): string {
  let at = '';
  let out = '';
  for (const [, kind, numbers] of path.matchAll(/([A-Z])([^A-Z]*)/g)) {
    if (!'MLCZ'.includes(kind!)) throw new Error(`an outline has a step ${kind}`);
    const points = (numbers!.match(/[\d.e-]+/g) ?? []).map((each) => Math.round(Number(each)));
    const end = points.slice(-2).join(' ');
    if (kind !== 'Z' && kind !== 'M' && end === at) continue;
    if (kind !== 'Z') at = end;
    out += kind + points.join(' ');
  }
  return out;
}
