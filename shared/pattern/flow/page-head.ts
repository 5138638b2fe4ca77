/**
 * The heads of pages, one family for all parts: a short bar in the pattern's accent and the title; on the pages that go on,
 * the title small. Matter begins below `FIRST_HEAD_MM` and `LATER_HEAD_MM`.
 */
import { fitText } from '../faces/measure-text.ts';
import { label } from '../page/label.ts';
import type { Item, PathStep } from '../page/page.ts';
import type { Area } from '../page/papers.ts';
import { sizeToFit } from '../page/size-to-fit.ts';
import { inks, sizes } from '../page/style.ts';

/** From the body's top to where matter may begin. */
export const FIRST_HEAD_MM = 19;
export const LATER_HEAD_MM = 10;

const BAR = { widthMm: 14, heightMm: 1.1 } as const;

/** Its upper left corner is at `x` and `y`. */
export function accentBar(x: number, y: number, color: string): Item {
  return filled(x, y, BAR.widthMm, BAR.heightMm, color);
}

export function firstHead({ x, y, width }: Area, title: string, accent: string): Item[] {
  const sizeMm = sizeToFit(title, 'serif-bold', sizes.pageTitle, width);
  return [accentBar(x, y, accent), label(x, y + 11, title, { face: 'serif-bold', sizeMm, role: 'title' })];
}

export function laterHead(
  { x, y, width }: Area,
  title: string,
  accent: string,
  sizeMm: number = sizes.heading,
): Item[] {
  const look = { face: 'serif-bold', sizeMm, color: inks.soft, role: 'again' } as const;
  return [
    filled(x, y + 0.6, 1.1, sizeMm * 0.78, accent),
    label(x + 3, y + sizeMm * 0.87, fitText(title, 'serif-bold', sizeMm, width - 3), look),
  ];
}

/** A path rather than a box: boxes are what a maker ticks. */
function filled(x: number, y: number, width: number, height: number, fill: string): Item {
  const steps: PathStep[] = [
    ['M', x, y],
    ['L', x + width, y],
    ['L', x + width, y + height],
    ['L', x, y + height],
    ['Z'],
  ];
  return { kind: 'path', steps, fill };
}
