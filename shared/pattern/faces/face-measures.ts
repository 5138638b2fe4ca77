/**
 * How wide each character of each face is, how near pairs of them stand, and how high the face stands, in thousandths of the
 * em. The figures of
 * the text faces are read from their files by `build/faces/measure.ts`; a symbol fills its whole em.
 */
import { alphabet } from '../../yarn/symbols.ts';
import type { Face } from '../page/page.ts';
import measures from './measures.generated.json' with { type: 'json' };

export interface FaceMeasures {
  /** By code point. What is not listed, the face cannot print. */
  readonly advances: ReadonlyMap<number, number>;
  /** Advance of the mark that is drawn for a character that the face lacks. */
  readonly missing: number;
  /** What is added between two characters, by their code points: mostly negative, mostly nothing. */
  readonly kern: (left: number, right: number) => number;
  /** Letters that are drawn as one, longest first, and what it takes. */
  readonly ligatures: ReadonlyMap<string, number>;
  readonly ascent: number;
  /** Below the baseline, as a positive number. */
  readonly descent: number;
  readonly capHeight: number;
}

interface Stored extends Omit<FaceMeasures, 'advances' | 'kern' | 'ligatures'> {
  /** Stretches of characters: the first one's code point, then all their advances. */
  runs: readonly (readonly number[])[];
  /** Classes of characters; by the left one's class its pairs: right class, what is added, and so on. */
  kerning: {
    readonly lefts: readonly string[];
    readonly rights: readonly string[];
    readonly pairs: readonly (readonly number[])[];
  };
  ligatures: Readonly<Record<string, number>>;
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
    kern: () => 0,
    ligatures: new Map(),
    ascent: EM,
    descent: 0,
    capHeight: EM,
  },
};

export function faceMeasures(face: Face): FaceMeasures {
  return faces[face];
}

function unpacked({ runs, kerning, ligatures, ...figures }: Stored): FaceMeasures {
  const advances = new Map<number, number>();
  for (const [first, ...list] of runs) {
    list.forEach((advance, i) => {
      advances.set(first! + i, advance);
    });
  }
  return { advances, kern: kernOf(kerning), ligatures: new Map(Object.entries(ligatures)), ...figures };
}

function kernOf({ lefts, rights, pairs }: Stored['kerning']): FaceMeasures['kern'] {
  const leftOf = classOf(lefts);
  const rightOf = classOf(rights);
  const values = new Int16Array(lefts.length * rights.length);
  pairs.forEach((list, left) => {
    for (let i = 0; i < list.length; i += 2) values[left * rights.length + list[i]!] = list[i + 1]!;
  });
  return (left, right) => {
    const at = leftOf.get(left);
    if (at === undefined) return 0;
    const to = rightOf.get(right);
    return to === undefined ? 0 : values[at * rights.length + to]!;
  };
}

function classOf(classes: readonly string[]): Map<number, number> {
  return new Map(
    classes.flatMap((letters, at) => [...letters].map((letter) => [letter.codePointAt(0)!, at])),
  );
}
