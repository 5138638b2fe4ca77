/**
 * The knots explained: two pages of drawings, each with its sentence. The row that row 1 goes comes
 * first, so a maker who starts at the top right finds every drawing as it looks in their own hands.
 */

import { wrapText } from '../faces/measure-text.ts';
import { type Flow, newFlow, paragraph } from '../flow.ts';
import { label } from '../label.ts';
import type { Item, PlainItem } from '../page.ts';
import type { Draft } from '../page-foot.ts';
import type { PatternContext } from '../pattern-input.ts';
import { inks, LEADING, ruleMm, sizes } from '../style.ts';
import { knotsWords, type Side } from '../words/knots-words.ts';
import { drawPicture } from './draw-picture.ts';
import { type Hand, type KnotLesson, type KnotStep, knotLessons, waysOf } from './knot-lessons.ts';
import { type DrawnWord, PICTURE_MM } from './picture.ts';

const GAP_MM = 5;

/** Between two lines of drawings, at most: what a page has left is shared out among them. */
const MOST_BETWEEN_MM = 9;
const OFF_FOOT_MM = 2;

export function knotsPages(context: PatternContext): Draft[] {
  const { chart, copy } = context;
  const towards: Side = chart.startCorner === 'top-left' ? 'right' : 'left';
  const hand: Hand = copy.leftHanded ? 'left' : 'right';
  const words = knotsWords[copy.language];
  const ways = waysOf(towards, hand);
  const lessons = knotLessons(copy.language, towards, hand);
  const back = knotLessons(copy.language, ways.from, hand);
  const flow = newFlow(context, words.title);
  const { width } = flow.area;
  const drawn = words.drawn(ways);
  paragraph(flow, words.introduction(ways), { width: width * 0.9, after: 5 });
  linesOf(flow, drawn, 4, [[lessons.mounting, lessons.legend], [lessons.knot], [back.knot]]);
  flow.nextPage();
  linesOf(flow, drawn, 3, [
    [lessons.attaching, lessons.carrying],
    [lessons.changing],
    [lessons.joining, lessons.turning],
    [lessons.tyingOff],
  ]);
  return flow.drafts();
}

type DrawnWords = Readonly<Record<DrawnWord, string>>;

/** Lessons side by side in columns, a drawing to each, and in lines down to the foot of the page. */
function linesOf(
  flow: Flow,
  drawn: DrawnWords,
  columns: number,
  lines: readonly (readonly KnotLesson[])[],
): void {
  const { area } = flow;
  const column = (area.width - GAP_MM * (columns - 1)) / columns;
  const heights = lines.map((lessons) => heightOf(lessons, column));
  const left =
    area.y + area.height - OFF_FOOT_MM - flow.y - heights.reduce((sum, heightMm) => sum + heightMm, 0);
  // In whole tenths, so that the last bits of fractions don't push the last line to the next page.
  const share = Math.floor((left / (lines.length - 1)) * 10) / 10;
  const between = Math.min(Math.max(share, 0), MOST_BETWEEN_MM);
  lines.forEach((lessons, i) => {
    flow.need(heights[i]!);
    drawLine(flow, drawn, column, lessons);
    flow.y += heights[i]! + between;
  });
}

function heightOf(lessons: readonly KnotLesson[], column: number): number {
  const sentences = lessons.flatMap(({ steps }) => steps.map(({ sentence }) => wrapped(sentence, column)));
  const textMm = Math.max(...sentences.map(({ length }) => length)) * sizes.note * LEADING;
  return HEAD_MM + PICTURE_MM + TEXT_FROM_MM + textMm;
}

function drawLine(flow: Flow, drawn: DrawnWords, column: number, lessons: readonly KnotLesson[]): void {
  let at = 0;
  for (const { title, steps } of lessons) {
    const left = flow.area.x + at * (column + GAP_MM);
    flow.put(...headOf(title, left, left + steps.length * (column + GAP_MM) - GAP_MM, flow.y));
    steps.forEach((step, i) => {
      const number = steps.length > 1 ? String(i + 1) : '';
      const place = { x: left + i * (column + GAP_MM), y: flow.y + HEAD_MM, width: column };
      flow.put(...stepOf(step, drawn, number, flow.accent, place));
    });
    at += steps.length;
  }
}

/** From a lesson's top to its drawings, and from these to their sentences. */
const HEAD_MM = 9.2;
const TEXT_FROM_MM = 1.6;

function headOf(title: string, left: number, right: number, top: number): Item[] {
  const y = top + 4.4;
  return [
    label(left, y, title, { face: 'serif-bold', sizeMm: sizes.heading * 0.85, role: 'heading' }),
    {
      kind: 'rule',
      x1: left,
      y1: y + 2,
      x2: right,
      y2: y + 2,
      widthMm: ruleMm.thin,
      color: inks.hair,
    },
  ];
}

const NUMBER_MM = 4;

function wrapped(sentence: string, column: number): string[] {
  return wrapText(sentence, 'sans', sizes.note, column - NUMBER_MM);
}

/** The drawing, and below it its number and sentence. A step that is the only one has no number. */
function stepOf(
  { picture, sentence, alt }: KnotStep,
  drawn: DrawnWords,
  number: string,
  accent: string,
  { x, y, width }: { x: number; y: number; width: number },
): Item[] {
  const middle = x + width / 2;
  const items: PlainItem[] = [
    ...drawPicture(picture, middle, y),
    ...(picture.words ?? []).map(({ word, align, ...at }) =>
      label(middle + at.x, y + at.y, drawn[word], { sizeMm: sizes.small, color: inks.soft, align }),
    ),
  ];
  const from = y + PICTURE_MM + TEXT_FROM_MM;
  return [
    { kind: 'figure', alt, items },
    ...(number === ''
      ? []
      : [
          label(x, from + sizes.note * 1.1, number, {
            face: 'serif-bold',
            sizeMm: sizes.note,
            color: accent,
            role: 'paragraph',
          }),
        ]),
    ...wrapped(sentence, width).map((text, i) =>
      label(number === '' ? x : x + NUMBER_MM, from + sizes.note * (1.1 + i * LEADING), text, {
        sizeMm: sizes.note,
        ...(i === 0 && number === '' && { role: 'paragraph' }),
      }),
    ),
  ];
}
