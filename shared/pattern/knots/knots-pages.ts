/**
 * The knots explained: drawings, each with its sentence, on two pages, or on more in large print, where drawings are larger too.
 * The row that row 1 goes comes first, so a maker who starts at the top right finds every drawing as it looks in their own hands.
 */

import type { Copy } from '../copy.ts';
import { wrapText } from '../faces/measure-text.ts';
import { type Flow, newFlow, paragraph } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { label } from '../page/label.ts';
import type { Item, PlainItem } from '../page/page.ts';
import { inks, LEADING, ruleMm } from '../page/style.ts';
import type { PatternContext } from '../pattern-input.ts';
import { knotsWords, type Side } from '../words/knots-words.ts';
import { drawPicture } from './draw-picture.ts';
import { type Hand, type KnotLesson, type KnotLessons, knotLessons, waysOf } from './knot-lessons.ts';
import { type DrawnWord, PICTURE_MM } from './picture.ts';

const GAP_MM = 5;

/** Between two lines of drawings: what a page has left is shared out among them; where it is little, drawings are a little smaller. */
const LEAST_BETWEEN_MM = 3.5;
const MOST_BETWEEN_MM = 9;
const LEAST_SCALE = 0.88;
const OFF_FOOT_MM = 2;

/** A lesson, or some steps of one that goes on in the next line, where its title is not told again. */
interface Stretch {
  readonly lesson: KnotLesson;
  readonly from: number;
  readonly end: number;
}

/** Stretches side by side, a column to each step. */
type Line = readonly Stretch[];

/** What stands together on one page, if it has room for it. */
interface Group {
  readonly columns: number;
  /** How much larger than usual the drawings are: as much as words of the copy's type need beside them. */
  readonly scale: number;
  readonly lines: readonly Line[];
}

export function knotsPages(context: PatternContext): Draft[] {
  const { chart, copy } = context;
  const towards: Side = chart.startCorner === 'top-left' ? 'right' : 'left';
  const hand: Hand = copy.leftHanded ? 'left' : 'right';
  const words = knotsWords[copy.language];
  const ways = waysOf(towards, hand);
  const lessons = knotLessons(copy.language, towards, hand);
  const back = knotLessons(copy.language, ways.from, hand);
  const flow = newFlow(context, words.title);
  const drawn = words.drawn(ways);
  paragraph(flow, words.introduction(ways), { width: flow.area.width * 0.9, after: 5 });
  groupsOf[copy.cells](lessons, back).forEach((group, i) => {
    if (i > 0) flow.nextPage();
    drawGroup({ flow, drawn, scale: group.scale }, group);
  });
  return flow.drafts();
}

interface KnotsSet {
  readonly flow: Flow;
  readonly drawn: Readonly<Record<DrawnWord, string>>;
  readonly scale: number;
}

const whole = (lesson: KnotLesson): Stretch => ({ lesson, from: 0, end: lesson.steps.length });
const steps = (lesson: KnotLesson, from: number, end: number): Stretch => ({ lesson, from, end });

const groupsOf: Readonly<
  Record<Copy['cells'], (lessons: KnotLessons, back: KnotLessons) => readonly Group[]>
> = {
  standard: (lessons, back) => [
    {
      columns: 4,
      scale: 1,
      lines: [[whole(lessons.mounting), whole(lessons.legend)], [whole(lessons.knot)], [whole(back.knot)]],
    },
    {
      columns: 3,
      scale: 1,
      lines: [
        [whole(lessons.attaching), whole(lessons.carrying)],
        [whole(lessons.changing)],
        [whole(lessons.joining), whole(lessons.turning)],
        [whole(lessons.tyingOff)],
      ],
    },
  ],
  large: (lessons, back) => [
    {
      columns: 2,
      scale: 1.5,
      lines: [[steps(lessons.mounting, 0, 2)], [steps(lessons.mounting, 2, 3), whole(lessons.legend)]],
    },
    ...[lessons.knot, back.knot].map((knot) => ({
      columns: 2,
      scale: 1.95,
      lines: [[steps(knot, 0, 2)], [steps(knot, 2, 4)]],
    })),
    {
      columns: 2,
      scale: 1.5,
      lines: [
        [whole(lessons.attaching)],
        [steps(lessons.changing, 0, 2)],
        [steps(lessons.changing, 2, 3), whole(lessons.carrying)],
        [whole(lessons.joining)],
        [steps(lessons.tyingOff, 0, 2)],
        [steps(lessons.tyingOff, 2, 3), whole(lessons.turning)],
      ],
    },
  ],
};

/** In lines down to the foot of the page. */
function drawGroup(full: KnotsSet, { columns, lines }: Group): void {
  const { flow } = full;
  const { area } = flow;
  const column = (area.width - GAP_MM * (columns - 1)) / columns;
  const bottom = area.y + area.height - OFF_FOOT_MM;
  const leftBetween = (set: KnotsSet) => {
    const taken = lines.reduce((sum, line) => sum + heightOf(set, line, column), 0);
    // In whole tenths, so that the last bits of fractions don't push the last line to the next page.
    return Math.floor(((bottom - flow.y - taken) / (lines.length - 1)) * 10) / 10;
  };
  const lacking = Math.max(0, LEAST_BETWEEN_MM - leftBetween(full)) * (lines.length - 1);
  const smaller = { ...full, scale: full.scale - lacking / (lines.length * PICTURE_MM) };
  // Where they go on over pages all the same, the drawings are full, and what a page has left is not shared out.
  const goesOn = smaller.scale < full.scale * LEAST_SCALE;
  const set = goesOn ? full : smaller;
  const between = goesOn ? GAP_MM : Math.min(leftBetween(set), MOST_BETWEEN_MM);
  for (const line of lines) {
    const height = heightOf(set, line, column);
    flow.need(height);
    drawLine(set, line, column);
    flow.y += height + between;
  }
}

function heightOf(set: KnotsSet, line: Line, column: number): number {
  const { sizes } = set.flow;
  const sentences = line.flatMap((stretch) =>
    stepsOf(stretch).map(({ sentence }) => wrapped(sentence, set, column)),
  );
  const textMm = Math.max(...sentences.map(({ length }) => length)) * sizes.note * LEADING;
  return headMm(set) + PICTURE_MM * set.scale + TEXT_FROM_MM + textMm;
}

function stepsOf({ lesson, from, end }: Stretch): KnotLesson['steps'] {
  return lesson.steps.slice(from, end);
}

function drawLine(set: KnotsSet, line: Line, column: number): void {
  const { flow } = set;
  let at = 0;
  for (const stretch of line) {
    const { lesson, from, end } = stretch;
    const left = flow.area.x + at * (column + GAP_MM);
    const right = left + (end - from) * (column + GAP_MM) - GAP_MM;
    flow.put(...headOf(set, from === 0 ? lesson.title : '', left, right));
    stepsOf(stretch).forEach((step, i) => {
      const number = lesson.steps.length > 1 ? String(from + i + 1) : '';
      const place = { x: left + i * (column + GAP_MM), y: flow.y + headMm(set), width: column };
      flow.put(...stepItems(set, step, number, place));
    });
    at += end - from;
  }
}

/** From a lesson's top to its drawings, and from these to their sentences. */
function headMm({ flow }: KnotsSet): number {
  return flow.sizes.heading * 2;
}

const TEXT_FROM_MM = 1.6;

function headOf({ flow }: KnotsSet, title: string, left: number, right: number): Item[] {
  const sizeMm = flow.sizes.heading * 0.85;
  const y = flow.y + sizeMm * 1.12;
  const rule: Item = {
    kind: 'rule',
    x1: left,
    y1: y + 2,
    x2: right,
    y2: y + 2,
    widthMm: ruleMm.thin,
    color: inks.hair,
  };
  return title === ''
    ? [rule]
    : [label(left, y, title, { face: 'serif-bold', sizeMm, role: 'heading' }), rule];
}

function numberMm({ flow }: KnotsSet): number {
  return flow.sizes.note * 1.36;
}

function wrapped(sentence: string, set: KnotsSet, column: number): string[] {
  return wrapText(sentence, 'sans', set.flow.sizes.note, column - numberMm(set));
}

/** The drawing, and below it its number and sentence. A step that is the only one has no number. */
function stepItems(
  set: KnotsSet,
  { picture, sentence, alt }: KnotLesson['steps'][number],
  number: string,
  { x, y, width }: { x: number; y: number; width: number },
): Item[] {
  const { flow, drawn, scale } = set;
  const { note } = flow.sizes;
  const middle = x + width / 2;
  const items: PlainItem[] = [
    ...drawPicture(picture, { x: middle, y, scale }),
    ...(picture.words ?? []).map(({ word, align, ...at }) =>
      label(middle + at.x * scale, y + at.y * scale, drawn[word], {
        sizeMm: flow.sizes.small,
        color: inks.soft,
        align,
      }),
    ),
  ];
  const from = y + PICTURE_MM * scale + TEXT_FROM_MM;
  const numbered = number !== '';
  return [
    { kind: 'figure', alt, items },
    ...(numbered
      ? [
          label(x, from + note * 1.1, number, {
            face: 'serif-bold',
            sizeMm: note,
            color: flow.accent,
            role: 'paragraph',
          }),
        ]
      : []),
    ...wrapped(sentence, set, width).map((text, i) =>
      label(numbered ? x + numberMm(set) : x, from + note * (1.1 + i * LEADING), text, {
        sizeMm: note,
        ...(i === 0 && !numbered && { role: 'paragraph' }),
      }),
    ),
  ];
}
