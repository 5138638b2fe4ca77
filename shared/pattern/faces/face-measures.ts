/**
 * How wide each character of each face is, and how high the face stands, in thousandths of the em. The figures of
 * the text faces are read from their files by `build/faces/measure.ts`; a symbol fills its whole em.
 */
import { alphabet } from '../../yarn/symbols.ts';
import type { Face } from '../page.ts';
import measures from './measures.generated.json' with { type: 'json' };

export interface FaceMeasures {
  /** By code point. What is not listed, the face cannot print. */
  readonly advances: ReadonlyMap<number, number>;
  /** Advance of the mark that is drawn for a character that the face lacks. */
  readonly missing: number;
  readonly ascent: number;
  /** Below the baseline, as a positive number. */
  readonly descent: number;
  readonly capHeight: number;
}

interface Stored extends Omit<FaceMeasures, 'advances'> {
  /** Stretches of characters: the first one's code point, then all their advances. */
  runs: readonly (readonly number[])[];
}

const EM = 1000;

const faces: Readonly<Record<Face, FaceMeasures>> = {
  sans: unpacked(measures.sans),
  'sans-bold': unpacked(measures['sans-bold']),
  serif: unpacked(measures.serif),
  'serif-bold': unpacked(measures['serif-bold']),
  symbols: {
    advances: new Map([' ', ...alphabet.map(({ text }) => text)].map((text) => [text.codePointAt(0)!, EM])),
    missing: EM,
    ascent: EM,
    descent: 0,
    capHeight: EM,
  },
};

export function faceMeasures(face: Face): FaceMeasures {
  return faces[face];
}

function unpacked({ runs, ...figures }: Stored): FaceMeasures {
  const advances = new Map<number, number>();
  for (const [first, ...list] of runs) {
    list.forEach((advance, i) => {
      advances.set(first! + i, advance);
    });
  }
  return { advances, ...figures };
}
