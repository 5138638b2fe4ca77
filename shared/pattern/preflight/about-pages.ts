/** The pages as they are laid out: what lies beyond the edge, what lies over what, what is too small to be read. */

import type { PatternPart } from '../../design/pattern-schema.ts';
import { counted } from '../../units/counted.ts';
import type { Copy } from '../copy.ts';
import { textWidthMm } from '../faces/measure-text.ts';
import { inQuotes } from '../flow/in-quotes.ts';
import type { Page, PatternDocument, TextItem } from '../page/page.ts';
import { plainItems } from '../page/plain-items.ts';
import { partWords } from '../words/part-words.ts';
import type { Finding } from './finding.ts';

/** Home printers can't reach the last few millimetres of a sheet (common practice, no source). */
const UNPRINTED_MM = 5;
/** The least em of a text that is read, in mm: a little over 6 points (common practice, no source). */
const LEAST_TEXT_MM = 2.2;
/** From here on a buyer does not print a pattern gladly (common practice, no source). */
const MANY_PAGES = 60;

/** Cells of which a side is less are smudged together, and can't be ticked (common practice, no source). */
const LEAST_CELL_MM = 2.5;

/** `own`: the texts of the design, as they are written. */
export function aboutPages(
  { pages }: Pick<PatternDocument, 'pages'>,
  { copy, own }: { readonly copy: Pick<Copy, 'cells'>; readonly own: ReadonlySet<string> },
): Finding[] {
  return [
    ...pages.flatMap((page, i) => ofPage(page, i + 1)),
    ...shortened(pages, own),
    ...smallCells(pages),
    ...(pages.length > MANY_PAGES ? [manyPages(pages, copy)] : []),
  ];
}

/** What is left out where there are too many, if it is much. */
const canBeLeftOut = new Set<PatternPart>(['cut-list', 'chart-symbols', 'rows', 'ticks', 'strands']);

function manyPages(pages: readonly Page[], { cells }: Pick<Copy, 'cells'>): Finding {
  const counts = new Map<PatternPart, number>();
  for (const { part } of pages) if (part) counts.set(part, (counts.get(part) ?? 0) + 1);
  const named = [...counts]
    .filter(([, count]) => count > 1)
    .toSorted((a, b) => b[1] - a[1])
    .slice(0, 2);
  const by = named.map(([part, count]) => `${partWords.en[part]} ${count}`).join(', ');
  const extra = named.find(([part]) => canBeLeftOut.has(part));
  const ways = [
    ...(cells === 'large' ? ['offer it with cells of the standard size besides'] : []),
    ...(extra ? [`leave out ‘${partWords.en[extra[0]]}’, or sell it as a file by itself`] : []),
    'say in the listing how many pages it has',
  ].join('; ');
  return {
    kind: 'many-pages',
    weight: 'note',
    sentence: `The pattern has ${counted(pages.length, 'page')}${by && `, most of them in few parts: ${by}`}.`,
    mend: `${ways[0]!.toUpperCase()}${ways.slice(1)}.`,
    place: { on: 'setting', setting: extra ? 'parts' : 'copy' },
  };
}

/** Names that were cut because they have no room, which is seen by their ellipsis; each text once. */
function shortened(pages: readonly Page[], own: ReadonlySet<string>): Finding[] {
  const cut = new Map<string, number>();
  for (const [i, page] of pages.entries()) {
    for (const item of plainItems(page.items)) {
      if (item.kind !== 'text' || item.role === 'foot' || !/.…$/.test(item.text)) continue;
      if (!own.has(item.text) && !cut.has(item.text)) cut.set(item.text, i + 1);
    }
  }
  const [first] = cut;
  if (!first) return [];
  const others = cut.size - 1;
  return [
    {
      kind: 'text-shortened',
      weight: 'note',
      sentence: `On page ${first[1]} ${inQuotes(first[0])} has no room and is cut short${others > 0 ? `, and so ${others === 1 ? 'is' : 'are'} ${counted(others, 'other text')}` : ''}.`,
      mend: 'A shorter name is printed whole.',
      place: { on: 'page', page: first[1] },
    },
  ];
}

function smallCells(pages: readonly Page[]): Finding[] {
  for (const [i, { part, items }] of pages.entries()) {
    if (part !== 'chart' && part !== 'chart-symbols') continue;
    for (const item of plainItems(items)) {
      if (item.kind !== 'cells' || item.symbolMm === undefined) continue;
      if (Math.min(item.cellWidth, item.cellHeight) >= LEAST_CELL_MM) continue;
      return [
        {
          kind: 'cells-small',
          weight: 'doubt',
          sentence: `The cells on page ${i + 1} are so low or so narrow that their symbols can hardly be read.`,
          mend: 'Print large cells, or check the gauge: the proportions of a cell are those of a knot.',
          place: { on: 'setting', setting: 'copy' },
        },
      ];
    }
  }
  return [];
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
        sentence: `On page ${number} ${inQuotes(text)} reaches beyond what a printer can print.`,
        mend: 'Shorten it.',
        place,
      }),
    ),
    ...(overlap
      ? [
          {
            kind: 'texts-overlap',
            weight: 'fault',
            sentence: `On page ${number} ${inQuotes(overlap[0].text)} and ${inQuotes(overlap[1].text)} lie over one another${others.length > 0 ? `, and ${counted(others.length, 'more pair')}` : ''}.`,
            mend: 'Shorten the longer one.',
            place,
          } as const,
        ]
      : []),
    ...small.slice(0, 1).map(
      ({ text }): Finding => ({
        kind: 'text-small',
        weight: 'note',
        sentence: `On page ${number} ${inQuotes(text)} is printed very small.`,
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
