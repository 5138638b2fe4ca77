/** The parts that a design asks for, in printing order; the usual ones where it does not say. */
import type { Design } from '../design/design.ts';
import { type PatternPart, patternParts } from '../design/pattern-schema.ts';
import { parts } from './parts.ts';

export function chosenParts({ pattern }: Pick<Design, 'pattern'>): readonly PatternPart[] {
  return pattern?.parts ?? patternParts.filter((part) => parts[part]?.usual);
}
