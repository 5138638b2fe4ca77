/**
 * The heads of pages, one family for all parts: a short bar in the pattern's accent and the title; on the pages that go on,
 * the title small. Matter begins below `FIRST_HEAD_MM` and `LATER_HEAD_MM`.
 */
import { fitText, textWidthMm } from './faces/measure-text.ts';
import { label } from './label.ts';
import type { Item } from './page.ts';
import type { Area } from './papers.ts';
import { inks, sizes } from './style.ts';

/** From the body's top to where matter may begin. */
export const FIRST_HEAD_MM = 19;
export const LATER_HEAD_MM = 10;

const BAR = { widthMm: 14, heightMm: 1.1 } as const;

export function firstHead({ x, y, width }: Area, title: string, accent: string): Item[] {
  const sizeMm = Math.min(sizes.pageTitle, (sizes.pageTitle * width) / titleWidth(title));
  return [
    { kind: 'box', x, y, width: BAR.widthMm, height: BAR.heightMm, fill: accent },
    label(x, y + 11, title, { face: 'serif-bold', sizeMm, role: 'title' }),
  ];
}

export function laterHead({ x, y, width }: Area, title: string, accent: string): Item[] {
  const look = { face: 'serif-bold', sizeMm: sizes.heading, color: inks.soft, role: 'again' } as const;
  return [
    { kind: 'box', x, y: y + 0.6, width: 1.1, height: 3.6, fill: accent },
    label(x + 3, y + 4, fitText(title, 'serif-bold', sizes.heading, width - 3), look),
  ];
}

function titleWidth(title: string): number {
  return textWidthMm(title, 'serif-bold', sizes.pageTitle);
}
