/** The pages as they are laid out: what lies beyond the edge, what lies over what, what is too small to be read. */

import { counted } from '../../units/counted.ts';
import { textWidthMm } from '../faces/measure-text.ts';
import type { Page, PatternDocument, TextItem } from '../page.ts';
import { plainItems } from '../plain-items.ts';
import type { Finding } from './finding.ts';

/** Home printers can't reach the last few millimetres of a sheet (common practice, no source). */
const UNPRINTED_MM = 5;
/** The least em of a text that is read, in mm: a little over 6 points (common practice, no source). */
const LEAST_TEXT_MM = 2.2;
/** From here on a buyer does not print a pattern gladly (common practice, no source). */
const MANY_PAGES = 60;

export function aboutPages({ pages }: PatternDocument): Finding[] {
  return [
    ...pages.flatMap((page, i) => ofPage(page, i + 1)),
    ...(pages.length > MANY_PAGES ? [manyPages(pages.length)] : []),
  ];
}

function manyPages(pages: number): Finding {
  return {
    kind: 'many-pages',
    weight: 'note',
    sentence: `The pattern has ${counted(pages, 'page')}.`,
    mend: 'Print cells of the standard size, or leave out the written rows or the strands.',
    place: { on: 'setting', setting: 'copy' },
  };
}

interface Box {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** At most one finding of each kind a page. */
function ofPage(page: Page, number: number): Finding[] {
  const place = { on: 'page', page: number } as const;
  const texts = plainItems(page.items).filter((item) => item.kind === 'text' && item.text.trim() !== '');
  const boxes = (texts as TextItem[]).map(boxOf);
  const beyond = boxes.filter((box) => isBeyond(box, page));
  const [overlap, ...others] = overlaps(boxes);
  const small = (texts as TextItem[]).filter(
    ({ sizeMm, role }) => sizeMm < LEAST_TEXT_MM && role !== 'aside',
  );
  return [
    ...beyond.slice(0, 1).map(
      ({ text }): Finding => ({
        kind: 'beyond-the-edge',
        weight: 'fault',
        sentence: `On page ${number} “${short(text)}” reaches beyond what a printer can print.`,
        mend: 'Shorten it.',
        place,
      }),
    ),
    ...(overlap
      ? [
          {
            kind: 'texts-overlap',
            weight: 'fault',
            sentence: `On page ${number} “${short(overlap[0].text)}” and “${short(overlap[1].text)}” lie over one another${others.length > 0 ? `, and ${counted(others.length, 'more pair')}` : ''}.`,
            mend: 'Shorten the longer one.',
            place,
          } as const,
        ]
      : []),
    ...small.slice(0, 1).map(
      ({ text }): Finding => ({
        kind: 'text-small',
        weight: 'note',
        sentence: `On page ${number} “${short(text)}” is printed very small.`,
        mend: 'Shorten it, so that it need not be made small to fit.',
        place,
      }),
    ),
  ];
}

/** What the letters take: capitals reach about 0.72 em above the line, descenders 0.21 em below (measured on the faces). */
function boxOf({ x, y, text, face, sizeMm, align }: TextItem): Box {
  const width = textWidthMm(text, face, sizeMm);
  const left = x - { left: 0, center: width / 2, right: width }[align];
  return { text, left, right: left + width, top: y - sizeMm * 0.72, bottom: y + sizeMm * 0.21 };
}

function isBeyond({ left, right, top, bottom }: Box, { widthMm, heightMm }: Page): boolean {
  return (
    left < UNPRINTED_MM ||
    top < UNPRINTED_MM ||
    right > widthMm - UNPRINTED_MM ||
    bottom > heightMm - UNPRINTED_MM
  );
}

/** Pairs that share more than a hair both ways. Boxes are looked at from the top down, each with those that begin before it ends. */
function overlaps(boxes: readonly Box[]): (readonly [Box, Box])[] {
  const hair = 0.25;
  const byTop = boxes.toSorted((a, b) => a.top - b.top);
  const pairs: (readonly [Box, Box])[] = [];
  byTop.forEach((upper, i) => {
    for (let j = i + 1; j < byTop.length && byTop[j]!.top < upper.bottom - hair; j++) {
      const lower = byTop[j]!;
      if (Math.min(upper.right, lower.right) - Math.max(upper.left, lower.left) > hair)
        pairs.push([upper, lower]);
    }
  });
  return pairs;
}

function short(text: string): string {
  const letters = [...text];
  return letters.length > 40 ? `${letters.slice(0, 39).join('')}…` : text;
}
