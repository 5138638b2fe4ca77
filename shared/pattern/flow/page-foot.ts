/**
 * The foot of each page: the pattern's title, where in it the reader is, and on chart pages what joins where, with a
 * line of 50 mm to see that the sheet was printed at its true size.
 */

import type { Language } from '../../design/pattern-schema.ts';
import { fitText, textWidthMm } from '../faces/measure-text.ts';
import { label } from '../page/label.ts';
import type { Item, Page, TextItem } from '../page/page.ts';
import { FOOT_MM, margins, type Sheet } from '../page/papers.ts';
import { inks, ruleMm, typeScales } from '../page/style.ts';
import { footWords } from '../words/foot-words.ts';

/** A page without its foot: how many pages there are is known only when all are laid out. */
export interface Draft {
  readonly sheet: Sheet;
  /** For the outline. */
  readonly title: string;
  readonly items: readonly Item[];
  /** In the middle of the foot. */
  readonly middle?: string;
  /** In its second line. */
  readonly below?: string;
  readonly checkLine?: boolean;
  /** For a cover. */
  readonly withoutFoot?: boolean;
}

const CHECK_MM = 50;

/** What all pages of a document have at their foot. */
export interface FootStyle {
  readonly title: string;
  readonly language: Language;
  /** Which edition, and for whom it is prepared; empty: neither is told. */
  readonly stamp: string;
  /** Em of the foot. */
  readonly sizeMm: number;
}

/** `number` counts from 1. */
export function finishPage(draft: Draft, style: FootStyle, number: number, of: number): Page {
  return {
    widthMm: draft.sheet.widthMm,
    heightMm: draft.sheet.heightMm,
    title: draft.title,
    ...(draft.withoutFoot && { unnumbered: true }),
    items: [...draft.items, ...(draft.withoutFoot ? [] : foot(draft, style, number, of))],
  };
}

function foot(
  draft: Draft,
  { title, language, stamp, sizeMm }: FootStyle,
  number: number,
  of: number,
): Item[] {
  const { widthMm, heightMm } = draft.sheet;
  const left = margins.left;
  const right = widthMm - margins.right;
  const top = heightMm - margins.bottom - FOOT_MM;
  const usual = top + 2.8 + sizeMm * 0.9;
  const second = Math.min(usual + sizeMm * 1.4, top + FOOT_MM - sizeMm * 0.2);
  const words = footWords[language];
  const middle = draft.middle ?? '';
  const titleRoom = (right - left) / 2 - textWidthMm(middle, 'sans', sizeMm) / 2 - 4;
  const checked = CHECK_MM + 4 + textWidthMm(words.checkLine, 'sans', sizeMm);
  const secondRoom = right - left - (draft.checkLine ? checked : 0);
  const below = secondLine([stamp, draft.below ?? ''], sizeMm, secondRoom);
  // Two lines of large type stand a little higher, and so does the rule above them.
  const hasSecond = below.text !== '' || draft.checkLine === true;
  const first = hasSecond ? Math.min(usual, second - sizeMm * 1.15) : usual;
  const ruleY = Math.min(top + 2, first - sizeMm * 0.95);
  const rule: Item = {
    kind: 'rule',
    x1: left,
    y1: ruleY,
    x2: right,
    y2: ruleY,
    widthMm: ruleMm.thin,
    color: inks.hair,
  };
  const note = noteOf(sizeMm);
  const notes = [
    note(left, first, fitText(title, 'sans', sizeMm, titleRoom), 'left'),
    note((left + right) / 2, first, middle, 'center'),
    note(right, first, words.page(number, of), 'right'),
    noteOf(below.sizeMm)(left, second, below.text, 'left'),
  ];
  return [
    rule,
    ...notes.filter(({ text }) => text !== ''),
    ...(draft.checkLine ? checkLine(right, second, words.checkLine, sizeMm) : []),
  ];
}

/**
 * What joins where is marked beside the chart too: where it has no room it is left out rather than cut. A long stamp is set in the
 * usual size of feet before it is cut.
 */
function secondLine(
  [stamp, joins]: readonly [string, string],
  sizeMm: number,
  room: number,
): { readonly text: string; readonly sizeMm: number } {
  const both = [stamp, joins].filter((text) => text !== '').join(' · ');
  if (textWidthMm(both, 'sans', sizeMm) <= room) return { text: both, sizeMm };
  if (textWidthMm(stamp, 'sans', sizeMm) <= room) return { text: stamp, sizeMm };
  const usual = Math.min(sizeMm, typeScales.standard.foot);
  return { text: fitText(stamp, 'sans', usual, room), sizeMm: usual };
}

type Note = (x: number, y: number, text: string, align: TextItem['align']) => TextItem;

function noteOf(sizeMm: number): Note {
  return (x, y, text, align) => label(x, y, text, { sizeMm, color: inks.soft, align, role: 'foot' });
}

/** Ends at `right`; the figure stands before it. */
function checkLine(right: number, baseline: number, words: string, sizeMm: number): Item[] {
  const y = baseline - sizeMm * 0.32;
  const from = right - CHECK_MM;
  return [
    noteOf(sizeMm)(from - 2, baseline, words, 'right'),
    {
      kind: 'path',
      steps: [
        ['M', from, y],
        ['L', right, y],
        ['M', from, y - 1],
        ['L', from, y + 1],
        ['M', right, y - 1],
        ['L', right, y + 1],
      ],
      stroke: inks.text,
      strokeMm: 0.2,
    },
  ];
}
