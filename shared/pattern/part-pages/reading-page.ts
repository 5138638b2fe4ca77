/** How to read the chart and tie from it: the order of work in words. */

import { yarnIdOf } from '../../design/codes.ts';
import { touchingPairs } from '../../yarn/touching.ts';
import { framedRepeats } from '../chart-pages/framed-repeats.ts';
import { rowNames } from '../chart-pages/row-names.ts';
import { sharedGreys } from '../chart-pages/shared-greys.ts';
import { chosenParts } from '../chosen-parts.ts';
import { textOf } from '../first-texts.ts';
import { type Flow, heading, newFlow, paragraph } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { linesOf } from '../flow/texts.ts';
import type { PatternContext } from '../pattern-input.ts';
import { readingWords } from '../words/reading-words.ts';

export function readingPage(context: PatternContext, chartPages: number): Draft[] {
  const words = readingWords[context.copy.language];
  const flow = newFlow(context, words.title);
  const pages = chartPages > 1 ? [words.pages(chartPages)] : [];
  const parts = chosenParts(context.design);
  const hasChart = parts.includes('chart') || parts.includes('chart-symbols');
  const frames = hasChart && framedRepeats(context.chart).length > 0 ? [words.frames] : [];
  const text = linesOf(textOf(context, 'reading'), context.printer);
  section(flow, words.chart, [...text, ...pages, ...frames, ...sameGreys(context)]);
  section(flow, words.order, linesOf(textOf(context, 'order'), context.printer));
  if (!parts.includes('knots')) {
    heading(flow, words.knot);
    paragraph(flow, words.aboutTheKnot, { width: flow.area.width * 0.9 });
  }
  return flow.drafts();
}

/** What the designer has left out has no heading. */
function section(flow: Flow, title: string, sentences: readonly string[]): void {
  if (sentences.length === 0) return;
  heading(flow, title);
  list(flow, sentences);
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

/** Told where a maker must go by the symbols alone; of many pairs the first ones, which touch in the most places. */
function sameGreys(context: PatternContext): string[] {
  const { copy, chart, design } = context;
  if (copy.ink !== 'grey') return [];
  const { byId } = rowNames(context);
  const nameOf = (code: number) => byId.get(yarnIdOf(code))!.name;
  const pairs = sharedGreys(design.yarns, touchingPairs(chart)).map(
    ({ a, b }) => [nameOf(a), nameOf(b)] as const,
  );
  if (pairs.length === 0) return [];
  return [readingWords[copy.language].sameGreys(pairs.slice(0, MOST_PAIRS), pairs.length > MOST_PAIRS)];
}

const MOST_PAIRS = 6;
