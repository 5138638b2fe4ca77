/** What a pattern can be composed of. Each part makes its own pages; `lay-out-pattern.ts` puts them one behind the other. */
import type { PatternPart } from '../design/pattern-schema.ts';
import { carePage } from './care-page.ts';
import { cellInks } from './cell-inks.ts';
import { chartPages } from './chart-pages.ts';
import { coverPage } from './cover-page.ts';
import { keyEntries } from './key.ts';
import { knotsPages } from './knots/knots-pages.ts';
import { materialsPages } from './materials-pages.ts';
import type { Draft } from './page-foot.ts';
import type { PageNumbers, PatternContext } from './pattern-input.ts';
import { printedAspect } from './printed-aspect.ts';
import { readingPage } from './reading-page.ts';
import { rowsPages } from './rows-pages.ts';

export interface Part {
  /** Whether it is printed where the design does not say which parts are. */
  readonly usual: boolean;
  /**
   * Its pages, in order; none where it has nothing to tell. `at` says where the parts begin; on a first pass, which only counts
   * pages, all begin on page 1. How many pages there are must not hang on it.
   */
  readonly pages: (context: PatternContext, at: PageNumbers) => Draft[];
}

/** A part that is not in this table can't be printed yet, and is passed over. */
export const parts: Readonly<Partial<Record<PatternPart, Part>>> = {
  cover: { usual: true, pages: (context) => [coverPage(context)] },
  materials: { usual: true, pages: materialsPages },
  reading: { usual: true, pages: (context, at) => readingPage(context, at.count('chart')) },
  knots: { usual: true, pages: knotsPages },
  chart: { usual: true, pages: chart },
  rows: { usual: true, pages: rowsPages },
  care: { usual: true, pages: carePage },
};

function chart({ design, chart, materials, sheet, printer }: PatternContext, at: PageNumbers): Draft[] {
  return chartPages({
    chart,
    aspect: printedAspect(materials.gauge),
    sheet,
    entries: keyEntries(
      design.yarns.map(({ id, name }) => ({ id, name: printer.printable(name) })),
      chart,
    ),
    cellInks: cellInks(design.yarns),
    firstPage: at.first('chart') ?? 1,
  });
}
