/** What a pattern can be composed of. Each part makes its own pages; `lay-out-pattern.ts` puts them one behind the other. */
import type { PatternPart } from '../design/pattern-schema.ts';
import { type ChartPart, chartInput } from './chart-pages/chart-input.ts';
import { chartPages, countCellPages, countChartPages } from './chart-pages/chart-pages.ts';
import { mapPage } from './chart-pages/map-page.ts';
import { chosenParts } from './chosen-parts.ts';
import type { Draft } from './flow/page-foot.ts';
import { knotsPages } from './knots/knots-pages.ts';
import { carePage } from './part-pages/care-page.ts';
import { coverPage } from './part-pages/cover-page.ts';
import { cutListPages } from './part-pages/cut-list-pages.ts';
import { designerPages } from './part-pages/designer-page.ts';
import { finishingPages } from './part-pages/finishing-pages.ts';
import { fringePages } from './part-pages/fringe-pages.ts';
import { materialsPages } from './part-pages/materials-pages.ts';
import { readingPage } from './part-pages/reading-page.ts';
import { rowsPages } from './part-pages/rows-pages.ts';
import { strandsPages } from './part-pages/strands-pages.ts';
import { ticksPages } from './part-pages/ticks-pages.ts';
import { welcomePages } from './part-pages/welcome-pages.ts';
import type { PageNumbers, PatternContext } from './pattern-input.ts';

export interface Part {
  /**
   * Its pages, in order; none where it has nothing to tell. `at` says where the parts begin; on a first pass, which only counts
   * pages, all begin on page 1. How many pages there are must not hang on it.
   */
  readonly pages: (context: PatternContext, at: PageNumbers) => Draft[];
  /** How many pages it has, where that is known without making them: those of a large chart take a while. */
  readonly count?: (context: PatternContext) => number;
}

/** A part that is not in this table can't be printed yet, and is passed over. */
export const parts: Readonly<Partial<Record<PatternPart, Part>>> = {
  cover: { pages: (context) => [coverPage(context)] },
  welcome: { pages: welcomePages },
  materials: { pages: materialsPages },
  'cut-list': { pages: cutListPages },
  reading: { pages: reading },
  knots: { pages: knotsPages },
  map: { pages: map },
  chart: {
    pages: (context, at) => chartPages(chartInput(context, at, 'chart'), at.first('chart') ?? 1),
    count: (context) => countChartPages(chartInput(context, whileCounting, 'chart')),
  },
  'chart-symbols': {
    pages: (context, at) =>
      isInSymbolsAlready(context)
        ? []
        : chartPages(chartInput(context, at, 'chart-symbols'), at.first('chart-symbols') ?? 1),
    count: (context) =>
      isInSymbolsAlready(context) ? 0 : countChartPages(chartInput(context, whileCounting, 'chart-symbols')),
  },
  rows: { pages: rowsPages },
  ticks: { pages: ticksPages },
  strands: { pages: strandsPages },
  finishing: { pages: finishingPages },
  fringe: { pages: fringePages },
  care: { pages: carePage },
  designer: { pages: designerPages },
};

const whileCounting: PageNumbers = { first: () => 1, count: () => 1 };

/** The chart in symbols stands beside the one in colour; a copy in symbols has it already. */
function isInSymbolsAlready(context: PatternContext): boolean {
  return context.copy.ink === 'symbols' && isChosen(context, 'chart');
}

/** Told of as many pages as the map shows. */
function reading(context: PatternContext): Draft[] {
  const part = printedChart(context);
  return readingPage(context, part ? countCellPages(chartInput(context, whileCounting, part)) : 0);
}

function map(context: PatternContext, at: PageNumbers): Draft[] {
  const part = printedChart(context);
  return part ? mapPage(chartInput(context, at, part), at.first(part) ?? 1) : [];
}

/** The chart in colour where there are both; none where neither is printed. */
function printedChart(context: PatternContext): ChartPart | undefined {
  return (['chart', 'chart-symbols'] as const).find((each) => isChosen(context, each));
}

/** Asked of the design rather than of page numbers, so that a first pass counts the same pages. */
function isChosen({ design }: PatternContext, part: PatternPart): boolean {
  return chosenParts(design).includes(part);
}
