/** How to read the chart and tie from it: the order of work in words. */

import { goesRight } from '../chart/chart.ts';
import { chosenParts } from './chosen-parts.ts';
import { type Flow, heading, newFlow, paragraph } from './flow.ts';
import type { Draft } from './page-foot.ts';
import type { PatternContext } from './pattern-input.ts';
import { readingWords } from './words/reading-words.ts';

export function readingPage(context: PatternContext, chartPages: number): Draft[] {
  const words = readingWords[context.copy.language];
  const flow = newFlow(context, words.title);
  heading(flow, words.chart);
  list(flow, aboutTheChart(context, chartPages));
  heading(flow, words.order);
  list(flow, orderOfWork(context));
  if (!chosenParts(context.design).includes('knots')) {
    heading(flow, words.knot);
    paragraph(flow, words.aboutTheKnot, { width: flow.area.width * 0.9 });
  }
  return flow.drafts();
}

function aboutTheChart({ chart, materials, copy }: PatternContext, chartPages: number): string[] {
  const words = readingWords[copy.language];
  return [
    words.cell,
    words.ways(goesRight(chart.startCorner, 0)),
    words.rules,
    words.lifts,
    ...(materials.totals.bareCells > 0 ? [words.bare] : []),
    ...(chartPages > 1 ? [words.pages(chartPages)] : []),
    words.rows,
  ];
}

function orderOfWork({ materials, chart, copy, figures }: PatternContext): readonly string[] {
  const { cords, tying, totals } = materials;
  return readingWords[copy.language].steps({
    cutCords: cords.cutCords,
    fitted: tying.fitted,
    length: figures.cutLength(tying.workingLengthMm),
    tail: figures.cutLength(tying.tailMm),
    startsLeft: chart.startCorner === 'top-left',
    looseEnds: figures.count(totals.looseEnds),
  });
}

function list(flow: Flow, sentences: readonly string[]): void {
  sentences.forEach((sentence, i) => {
    paragraph(flow, sentence, {
      indent: flow.sizes.body * 2.4,
      mark: String(i + 1),
      width: flow.area.width * 0.92,
      after: 2.6,
    });
  });
}
