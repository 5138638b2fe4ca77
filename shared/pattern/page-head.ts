/**
 * The heads of pages, one family for all parts: a short bar in the pattern's accent and the title; on the pages that go on,
 * the title small. Matter begins below `FIRST_HEAD_MM` and `LATER_HEAD_MM`.
 */
import { fitText } from './faces/measure-text.ts';
import { label } from './label.ts';
import type { Item } from './page.ts';
import type { Area } from './papers.ts';
import { sizeToFit } from './size-to-fit.ts';
import { inks, sizes } from './style.ts';

/** From the body's top to where matter may begin. */
export const FIRST_HEAD_MM = 19;
export const LATER_HEAD_MM = 10;

const BAR = { widthMm: 14, heightMm: 1.1 } as const;

/** Its upper left corner is at `x` and `y`. */
export function accentBar(x: number, y: number, color: string): Item {
  const middle = y + BAR.heightMm / 2;
  return { kind: 'rule', x1: x, y1: middle, x2: x + BAR.widthMm, y2: middle, widthMm: BAR.heightMm, color };
}

export function firstHead({ x, y, width }: Area, title: string, accent: string): Item[] {
  const sizeMm = sizeToFit(title, 'serif-bold', sizes.pageTitle, width);
  return [accentBar(x, y, accent), label(x, y + 11, title, { face: 'serif-bold', sizeMm, role: 'title' })];
}

export function laterHead({ x, y, width }: Area, title: string, accent: string): Item[] {
  const look = { face: 'serif-bold', sizeMm: sizes.heading, color: inks.soft, role: 'again' } as const;
  return [
    { kind: 'rule', x1: x + 0.55, y1: y + 0.6, x2: x + 0.55, y2: y + 4.2, widthMm: 1.1, color: accent },
    label(x + 3, y + 4, fitText(title, 'serif-bold', sizes.heading, width - 3), look),
  ];
}
