/**
 * A design and its figures as the pages of a pattern: cover, materials, how to read it, the knots, the chart, the rows in words,
 * cautions and care. A pure function; drawing the pages is another's work.
 */

import type { Materials } from '../materials/materials.ts';
import { carePage } from './care-page.ts';
import { cellInks } from './cell-inks.ts';
import { chartPages, countChartPages } from './chart-pages.ts';
import { coverPage } from './cover-page.ts';
import { keyEntries } from './key.ts';
import { knotsPages } from './knots/knots-pages.ts';
import { materialsPages } from './materials-pages.ts';
import type { PatternDocument } from './page.ts';
import { type Draft, finishPage } from './page-foot.ts';
import { papers } from './papers.ts';
import type { PatternContext, PatternInput } from './pattern-input.ts';
import { newPrinter } from './printable.ts';
import { printedAspect } from './printed-aspect.ts';
import { readingPage } from './reading-page.ts';
import { rowsPages } from './rows-pages.ts';

export function layOutPattern(input: PatternInput): PatternDocument {
  const printer = newPrinter();
  const { design, chart, materials } = input;
  const context: PatternContext = {
    ...input,
    sheet: papers[input.paper],
    cellInks: cellInks(design.yarns),
    printer,
  };
  const charted = {
    chart,
    aspect: printedAspect(materials.gauge),
    sheet: context.sheet,
    entries: keyEntries(
      design.yarns.map(({ id, name }) => ({ id, name: printer.printable(name) })),
      chart,
    ),
    cellInks: context.cellInks,
  };
  const before = [
    coverPage(context),
    ...materialsPages(context),
    ...readingPage(context, countChartPages(charted)),
    ...knotsPages(context),
  ];
  const drafts: Draft[] = [
    ...before,
    ...chartPages({ ...charted, firstPage: before.length + 1 }),
    ...rowsPages(context),
    ...carePage(context),
  ];
  const title = printer.printable(design.title);
  return {
    title,
    author: printer.printable(design.designer),
    language: 'en',
    pages: drafts.map((draft, i) => finishPage(draft, title, i + 1, drafts.length)),
    notices: [...printer.notices, ...aspectNotice(materials.gauge)],
  };
}

function aspectNotice(gauge: Materials['gauge']): string[] {
  return printedAspect(gauge) === gauge.pitchMm / gauge.rowHeightMm
    ? []
    : [
        'The knots of this gauge are so narrow or so low that the chart cannot show their proportions: check the swatch.',
      ];
}
