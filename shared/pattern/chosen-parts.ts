/** The parts that a design asks for, in printing order; the usual ones where it does not say. */
import type { Design } from '../design/design.ts';
import { type PatternPart, patternParts } from '../design/pattern-schema.ts';

/** Printed only where the design asks for them. */
const asked: readonly PatternPart[] = ['cut-list', 'chart-symbols', 'ticks', 'strands'];

const usual = patternParts.filter((part) => !asked.includes(part));

export function chosenParts({ pattern }: Pick<Design, 'pattern'>): readonly PatternPart[] {
  return pattern?.parts ?? usual;
}
