/** What the pages of a document share, made once from what it is made from. */
import { touchingPairs } from '../yarn/touching.ts';
import { accentOf } from './accent.ts';
import { cellInks } from './chart-pages/cell-inks.ts';
import { copyOf } from './copy.ts';
import { figuresIn } from './flow/figures.ts';
import { emptyImprint } from './imprint.ts';
import { papers } from './page/papers.ts';
import { newPrinter } from './page/printable.ts';
import type { PatternContext, PatternInput } from './pattern-input.ts';

export function patternContext(input: PatternInput): PatternContext {
  const { design, materials } = input;
  const copy = input.copy ?? copyOf(design);
  const imprint = input.imprint ?? emptyImprint;
  return {
    edition: null,
    ...input,
    imprint,
    accent: accentOf({ design, materials, imprint }),
    copy,
    figures: figuresIn(input.units, copy.language),
    sheet: papers[input.paper],
    cellInks: cellInks(design.yarns, copy.ink, copy.ink === 'grey' ? touchingPairs(input.chart) : []),
    printer: newPrinter(),
  };
}
