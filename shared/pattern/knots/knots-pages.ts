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
import { drawPicture } from './draw-picture.ts';
import {
  attaching,
  carrying,
  changing,
  joining,
  type KnotLesson,
  type KnotStep,
  legend,
  mounting,
  type Towards,
  theKnot,
  turning,
  tyingOff,
} from './knot-steps.ts';
import { PICTURE_MM } from './picture.ts';

const GAP_MM = 5;

/** Below a line of drawings, before the next. */
const AFTER_MM = 6;

export function knotsPages(context: PatternContext): Draft[] {
  const { chart } = context;
  const towards: Towards = chart.startCorner === 'top-left' ? 'right' : 'left';
  const back: Towards = towards === 'right' ? 'left' : 'right';
  const flow = newFlow(context, 'The knots explained');
  paragraph(
    flow,
    `Seen from the front. Row 1 of this pattern goes to the ${towards}, and the drawings follow it. A row that goes to the ${back} is tied the same way, in a mirror.`,
    { width: flow.area.width * 0.9, after: 5 },
  );
  line(flow, 4, [mounting(towards), legend()]);
  line(flow, 4, [theKnot(towards)]);
  line(flow, 4, [theKnot(back)]);
  flow.nextPage();
  line(flow, 3, [attaching(towards), carrying(towards)]);
  line(flow, 3, [changing(towards)]);
  line(flow, 3, [joining(towards), turning(towards)]);
  line(flow, 3, [tyingOff(towards)]);
  return flow.drafts();
}

/** Lessons side by side in columns, a drawing to each. */
function line(flow: Flow, columns: 3 | 4, lessons: readonly KnotLesson[]): void {
  const { x, width } = flow.area;
  const column = (width - GAP_MM * (columns - 1)) / columns;
  const sentences = lessons.flatMap(({ steps }) => steps.map(({ sentence }) => wrapped(sentence, column)));
  const textMm = Math.max(...sentences.map(({ length }) => length)) * sizes.note * LEADING;
  const heightMm = HEAD_MM + PICTURE_MM + TEXT_FROM_MM + textMm;
  flow.need(heightMm);
  let at = 0;
  for (const { title, steps } of lessons) {
    const left = x + at * (column + GAP_MM);
    flow.put(...headOf(title, left, left + steps.length * (column + GAP_MM) - GAP_MM, flow.y));
    steps.forEach((step, i) => {
      flow.put(
        ...stepOf(step, steps.length > 1 ? String(i + 1) : '', flow.accent, {
          x: left + i * (column + GAP_MM),
          y: flow.y + HEAD_MM,
          width: column,
        }),
      );
    });
    at += steps.length;
  }
  flow.y += heightMm + AFTER_MM;
}

/** From a lesson's top to its drawings, and from these to their sentences. */
const HEAD_MM = 9.6;
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
  number: string,
  accent: string,
  { x, y, width }: { x: number; y: number; width: number },
): Item[] {
  const items: PlainItem[] = drawPicture(picture, x + width / 2, y);
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
