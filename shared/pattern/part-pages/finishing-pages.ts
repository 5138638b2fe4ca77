/**
 * Finishing: the steps from the last row to the wall, and the finished hanging with its measures beside them, in large print below
 * them. Where loose ends are left, tying off is drawn here, unless the knots are explained in the pattern, which then draw it.
 */
import { hungGeometry } from '../../chart/hanging/hung-geometry.ts';
import { chosenParts } from '../chosen-parts.ts';
import { wrapText } from '../faces/measure-text.ts';
import { textOf } from '../first-texts.ts';
import { type Flow, heading, newFlow, paragraph } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { linesOf } from '../flow/texts.ts';
import { drawPicture } from '../knots/draw-picture.ts';
import { PICTURE_MM } from '../knots/picture.ts';
import { drawnUpAndTrimmed, tiedOnce, tiedTwice } from '../knots/tying-off.ts';
import { label } from '../page/label.ts';
import type { Item } from '../page/page.ts';
import type { Area } from '../page/papers.ts';
import { LEADING, ruleMm } from '../page/style.ts';
import type { PageNumbers, PatternContext } from '../pattern-input.ts';
import { finishingWords } from '../words/finishing-words.ts';
import { drawOutline } from './hanging-outline.ts';

const STEPS_SHARE = 0.58;
const SIDE_SHARE = 0.37;
const SIDE_MM = 125;
const GAP_MM = 8;

export function finishingPages(context: PatternContext, at: PageNumbers): Draft[] {
  const { copy, printer, materials, design } = context;
  const words = finishingWords[copy.language];
  const flow = newFlow(context, words.title);
  const isLarge = copy.cells === 'large';
  const { area, y } = flow;
  const width = area.width * (isLarge ? 1 : STEPS_SHARE);
  if (!isLarge) {
    const side = area.width * SIDE_SHARE;
    finishedHanging(flow, context, { x: area.x + area.width - side, y: y + 5, width: side, height: SIDE_MM });
  }
  const steps = linesOf(textOf(context, 'finishing'), printer);
  if (steps.length > 0) {
    heading(flow, words.steps, width);
    steps.forEach((step, i) => {
      const mark = String(i + 1);
      paragraph(flow, step, { indent: flow.sizes.body * 2.4, mark, width, after: 3 });
    });
  }
  const hasEnds = materials.totals.looseEnds > 0;
  const knotsDrawIt = chosenParts(design).includes('knots');
  if (hasEnds && knotsDrawIt) {
    const page = (at.first('knots') ?? 1) + at.count('knots') - 1;
    paragraph(flow, words.drawnOn(page), { link: page, width });
  }
  if (isLarge) {
    flow.need(SIDE_MM + 5);
    finishedHanging(flow, context, { ...area, y: flow.y + 5, height: SIDE_MM });
    flow.y += SIDE_MM + 5;
  } else if (flow.drafts().length === 1) flow.y = Math.max(flow.y, y + SIDE_MM + 10);
  if (hasEnds && !knotsDrawIt) tyingOff(flow, context);
  return flow.drafts();
}

/** Its heading on a rule, and its outline below. */
function finishedHanging(
  flow: Flow,
  { design, materials, figures, copy }: PatternContext,
  { x, y, width, height }: Area,
): void {
  const { accent, sizes } = flow;
  const words = finishingWords[copy.language];
  const { finished } = materials;
  const baseline = y + sizes.lead * 1.05;
  const geometry = hungGeometry(design, materials.gauge);
  const top = baseline + 6;
  const outlineIn = (heightMm: number) =>
    drawOutline({
      geometry,
      figures,
      accent,
      sizeMm: sizes.small,
      box: { x, y: top, width, height: heightMm },
    });
  // It stands in the middle of its box: what is free above it is taken off, above and below.
  const most = height - (top - y);
  const free = outlineIn(most).place.y(geometry.bounds.top) - top;
  const { items } = outlineIn(most - 2 * free);
  const size = [finished.widthMm, finished.heightWithFringeMm].map((mm) => figures.length(mm));
  flow.put(
    label(x, baseline, words.finished, { face: 'serif-bold', sizeMm: sizes.lead, role: 'heading' }),
    ruleAt(x, baseline + 2, width, 0.4, accent),
    { kind: 'figure', alt: words.finishedAlt(size.join(' × ')), items },
  );
}

function ruleAt(x: number, y: number, width: number, widthMm: number, color: string): Item {
  return { kind: 'rule', x1: x, y1: y, x2: x + width, y2: y, widthMm, color };
}

/** Three drawings side by side, a sentence below each. */
function tyingOff(flow: Flow, { copy }: PatternContext): void {
  const words = finishingWords[copy.language];
  const { note } = flow.sizes;
  const column = (flow.area.width - 2 * GAP_MM) / 3;
  const indent = note * 1.7;
  const wrapped = words.drawings.map(([sentence]) => wrapText(sentence, 'sans', note, column - indent));
  const textMm = Math.max(...wrapped.map(({ length }) => length)) * note * LEADING;
  flow.need(flow.sizes.heading + 12 + PICTURE_MM + textMm);
  heading(flow, words.tyingOff);
  const top = flow.y + 2;
  [tiedOnce, tiedTwice, drawnUpAndTrimmed].forEach((picture, i) => {
    const x = flow.area.x + i * (column + GAP_MM);
    const baseline = top + PICTURE_MM + 2 + note * 1.1;
    flow.put(
      ruleAt(x, top - 1, column, ruleMm.thin, flow.accent),
      {
        kind: 'figure',
        alt: words.drawings[i]![1],
        items: drawPicture(picture, { x: x + column / 2, y: top, scale: 1 }),
      },
      label(x, baseline, String(i + 1), {
        face: 'serif-bold',
        sizeMm: note,
        color: flow.accent,
        role: 'paragraph',
      }),
      ...wrapped[i]!.map((text, line) =>
        label(x + indent, baseline + line * note * LEADING, text, { sizeMm: note }),
      ),
    );
  });
  flow.y = top + PICTURE_MM + 2 + textMm;
}
