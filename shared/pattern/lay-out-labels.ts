/** The labels of the bundles as a document of their own, for makers who cut before they begin, in the language of the design's pattern. */
import type { Design } from '../design/design.ts';
import type { Bundles } from '../materials/bundles/bundles.ts';
import type { Units } from '../units/units.ts';
import { cellInks } from './chart-pages/cell-inks.ts';
import { copyOf } from './copy.ts';
import { figuresIn } from './flow/figures.ts';
import { finishPage } from './flow/page-foot.ts';
import type { PatternDocument } from './page/page.ts';
import { type Paper, papers } from './page/papers.ts';
import { newPrinter } from './page/printable.ts';
import { inks, sizes } from './page/style.ts';
import { labelsPages } from './part-pages/labels-page.ts';

export interface LabelsInput {
  readonly design: Design;
  readonly bundles: Bundles;
  readonly paper: Paper;
  readonly units: Units;
}

/** Without a page where no knot is tied. */
export function layOutLabels({ design, bundles, paper, units }: LabelsInput): PatternDocument {
  const printer = newPrinter();
  const { language } = copyOf(design);
  const context = {
    design,
    figures: figuresIn(units, language),
    printer,
    sheet: papers[paper],
    cellInks: cellInks(design.yarns),
    accent: inks.accent,
    copy: { language, cells: 'standard' } as const,
  };
  const drafts = labelsPages(context, bundles);
  const title = printer.printable(design.title);
  return {
    title,
    author: printer.printable(design.designer),
    language,
    pages: drafts.map((draft, i) =>
      finishPage(draft, { title, language, stamp: '', sizeMm: sizes.foot }, i + 1, drafts.length),
    ),
    notices: [...printer.notices],
  };
}
