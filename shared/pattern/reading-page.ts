/** How to read the chart and tie from it: the order of work in words. */

import { chosenParts } from './chosen-parts.ts';
import { textOf } from './first-texts.ts';
import { type Flow, heading, newFlow, paragraph } from './flow.ts';
import type { Draft } from './page-foot.ts';
import type { PatternContext } from './pattern-input.ts';
import { linesOf } from './texts.ts';
import { readingWords } from './words/reading-words.ts';

export function readingPage(context: PatternContext, chartPages: number): Draft[] {
  const words = readingWords[context.copy.language];
  const flow = newFlow(context, words.title);
  const pages = chartPages > 1 ? [words.pages(chartPages)] : [];
  section(flow, words.chart, [...linesOf(textOf(context, 'reading'), context.printer), ...pages]);
  section(flow, words.order, linesOf(textOf(context, 'order'), context.printer));
  if (!chosenParts(context.design).includes('knots')) {
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
