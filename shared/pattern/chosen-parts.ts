/** The parts that a design asks for, in printing order; the usual ones where it does not say. */
import type { Design } from '../design/design.ts';
import { type PatternPart, patternParts } from '../design/pattern-schema.ts';

/** Printed only where the design asks for them. */
const asked: readonly PatternPart[] = ['cut-list', 'chart-symbols', 'ticks', 'strands'];

const usual = patternParts.filter((part) => !asked.includes(part));

/** Where pieces are cut to measure, only a cut list tells how long each is. */
const usualToMeasure = patternParts.filter((part) => part === 'cut-list' || usual.includes(part));

export function chosenParts({
  pattern,
  bundles,
}: Pick<Design, 'pattern'> & Partial<Pick<Design, 'bundles'>>): readonly PatternPart[] {
  return pattern?.parts ?? (bundles?.fitted ? usualToMeasure : usual);
}

/** Which of the parts that texts of other parts point to are there. */
export function partsThere(design: Parameters<typeof chosenParts>[0]): {
  readonly materials: boolean;
  readonly knots: boolean;
} {
  const chosen = chosenParts(design);
  return { materials: chosen.includes('materials'), knots: chosen.includes('knots') };
}
