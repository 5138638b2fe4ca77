/**
 * Finishing: the steps from the last row to the wall, the finished hanging with its measures beside them, and tying off in drawings
 * where loose ends are left.
 */
import { hangingGeometry } from '../chart/hanging/geometry.ts';
import { fringeMm } from '../gauge/fringe.ts';
import { wrapText } from './faces/measure-text.ts';
import { textOf } from './first-texts.ts';
import { type Flow, heading, newFlow, paragraph } from './flow.ts';
import { drawOutline } from './hanging-outline.ts';
import { drawPicture } from './knots/draw-picture.ts';
import { PICTURE_MM } from './knots/picture.ts';
import { drawnUpAndTrimmed, tiedOnce, tiedTwice } from './knots/tying-off.ts';
import { label } from './label.ts';
import type { Draft } from './page-foot.ts';
import type { PatternContext } from './pattern-input.ts';
import { LEADING, ruleMm, sizes } from './style.ts';
import { linesOf } from './texts.ts';
import { finishingWords } from './words/finishing-words.ts';

const STEPS_SHARE = 0.6;
const SIDE_SHARE = 0.33;
const SIDE_MM = 98;
const GAP_MM = 8;

export function finishingPages(context: PatternContext): Draft[] {
  const { copy, printer, materials } = context;
  const words = finishingWords[copy.language];
  const flow = newFlow(context, words.title);
  const { y } = flow;
  flow.put(...finishedHanging(context, flow));
  const steps = linesOf(textOf(context, 'finishing'), printer);
  if (steps.length > 0) {
    heading(flow, words.steps);
    steps.forEach((step, i) => {
      paragraph(flow, step, {
        indent: 8,
        mark: String(i + 1),
        width: flow.area.width * STEPS_SHARE,
        after: 2.2,
      });
    });
  }
  if (flow.drafts().length === 1) flow.y = Math.max(flow.y, y + SIDE_MM + 10);
  if (materials.totals.looseEnds > 0) tyingOff(flow, context);
  return flow.drafts();
}

/** At the right of the first page. */
function finishedHanging({ design, materials, figures, copy }: PatternContext, flow: Flow) {
  const { area, y, accent } = flow;
  const words = finishingWords[copy.language];
  const width = area.width * SIDE_SHARE;
  const x = area.x + area.width - width;
  const { finished } = materials;
  const { items } = drawOutline({
    geometry: hangingGeometry(design, materials.gauge, fringeMm(design.columns, design.fringe)),
    figures,
    accent,
    box: { x, y: y + 14, width, height: SIDE_MM - 14 },
  });
  const size = [finished.widthMm, finished.heightWithFringeMm].map((mm) => figures.length(mm));
  return [
    label(x, y + 9.1, words.finished, { face: 'serif-bold', sizeMm: sizes.lead, role: 'heading' as const }),
    {
      kind: 'rule' as const,
      x1: x,
      y1: y + 11.1,
      x2: x + width,
      y2: y + 11.1,
      widthMm: 0.4,
      color: accent,
    },
    { kind: 'figure' as const, alt: words.finishedAlt(size.join(' × ')), items },
  ];
}

/** Three drawings side by side, a sentence below each. */
function tyingOff(flow: Flow, { copy }: PatternContext): void {
  const words = finishingWords[copy.language];
  const column = (flow.area.width - 2 * GAP_MM) / 3;
  const wrapped = words.drawings.map(([sentence]) => wrapText(sentence, 'sans', sizes.note, column - 5));
  const textMm = Math.max(...wrapped.map(({ length }) => length)) * sizes.note * LEADING;
  flow.need(sizes.heading + 12 + PICTURE_MM + textMm);
  heading(flow, words.tyingOff);
  const top = flow.y + 2;
  [tiedOnce, tiedTwice, drawnUpAndTrimmed].forEach((picture, i) => {
    const x = flow.area.x + i * (column + GAP_MM);
    const baseline = top + PICTURE_MM + 2 + sizes.note * 1.1;
    flow.put(
      {
        kind: 'rule',
        x1: x,
        y1: top - 1,
        x2: x + column,
        y2: top - 1,
        widthMm: ruleMm.thin,
        color: flow.accent,
      },
      { kind: 'figure', alt: words.drawings[i]![1], items: drawPicture(picture, x + column / 2, top) },
      label(x, baseline, String(i + 1), {
        face: 'serif-bold',
        sizeMm: sizes.note,
        color: flow.accent,
        role: 'paragraph',
      }),
      ...wrapped[i]!.map((text, line) =>
        label(x + 5, baseline + line * sizes.note * LEADING, text, { sizeMm: sizes.note }),
      ),
    );
  });
  flow.y = top + PICTURE_MM + 2 + textMm;
}
