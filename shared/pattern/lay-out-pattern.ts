/**
 * A design and its figures as the pages of a pattern: cover, materials, how to read it, the chart, the rows in words,
 * cautions and care. A pure function; drawing the pages is another's work.
 */

import { carePage } from './care-page.ts';
import { cellInks } from './cell-inks.ts';
import { chartPages } from './chart-pages.ts';
import { coverPage } from './cover-page.ts';
import { keyEntries } from './key.ts';
import { materialsPages } from './materials-pages.ts';
import type { PatternDocument } from './page.ts';
import { type Draft, finishPage } from './page-foot.ts';
import { papers } from './papers.ts';
import type { PatternContext, PatternInput } from './pattern-input.ts';
import { newPrinter } from './printable.ts';
import { readingPage } from './reading-page.ts';
import { rowsPages } from './rows-pages.ts';

/** Taller or wider cells than this would not fit a page; the gauge then is a slip of measuring. */
const ASPECT_LIMIT = 3;

export function layOutPattern(input: PatternInput): PatternDocument {
  const printer = newPrinter();
  const { design, chart, materials } = input;
  const context: PatternContext = {
    ...input,
    sheet: papers[input.paper],
    cellInks: cellInks(design.yarns),
    printer,
  };
  const before = [coverPage(context), ...materialsPages(context), ...readingPage(context)];
  const drafts: Draft[] = [
    ...before,
    ...chartPages({
      chart,
      aspect: printedAspect(materials.gauge),
      sheet: context.sheet,
      entries: keyEntries(
        design.yarns.map(({ id, name }) => ({ id, name: printer.printable(name) })),
        chart,
      ),
      cellInks: context.cellInks,
      firstPage: before.length + 1,
    }),
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

interface Proportions {
  readonly pitchMm: number;
  readonly rowHeightMm: number;
}

/** The knot's width over its height, within what a page can show. */
export function printedAspect({ pitchMm, rowHeightMm }: Proportions): number {
  return Math.min(Math.max(pitchMm / rowHeightMm, 1 / ASPECT_LIMIT), ASPECT_LIMIT);
}

function aspectNotice(gauge: Proportions): string[] {
  return printedAspect(gauge) === gauge.pitchMm / gauge.rowHeightMm
    ? []
    : [
        'The knots of this gauge are so narrow or so low that the chart shows them broader: check the swatch.',
      ];
}
