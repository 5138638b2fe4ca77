import { counted } from '../../../shared/units/counted.ts';

/** What is still to be done when the last knot is tied, in its order; as the pattern's page on finishing has it. */
export function afterLastRowWords(looseEnds: number): string[] {
  const ends =
    looseEnds === 0
      ? []
      : [
          `Turn the work over: ${counted(looseEnds, 'loose end')} ${looseEnds === 1 ? 'hangs' : 'hang'} at the back. Knot neighbouring ones together twice and trim them, or only trim them.`,
        ];
  return [...ends, 'Trim the fringe to its outline.', 'The hanging is done.'];
}
