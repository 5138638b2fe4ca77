/** Colours that go with a yarn, as they are offered: what each is called, and why there is none where there is none. */
import { between, complementary, darker, lighter, softer } from '../../../shared/yarn/harmony.ts';

export interface HarmonyBall {
  readonly label: string;
  /** #rrggbb; null where the yarn has no such colour, and `fault` says why. */
  readonly color: string | null;
  readonly fault: string;
}

const ways: readonly { label: string; of: (color: string) => string; fault: string }[] = [
  { label: 'Lighter', of: lighter, fault: 'It is white already.' },
  { label: 'Darker', of: darker, fault: 'It is black already.' },
  { label: 'Softer', of: softer, fault: 'It is a grey already.' },
  { label: 'Complementary', of: complementary, fault: 'A grey has no opposite.' },
];

export function harmonyBalls(color: string): HarmonyBall[] {
  return ways.map(({ label, of, fault }) => {
    const made = of(color);
    return made === color ? { label, color: null, fault } : { label, color: made, fault: '' };
  });
}

const shares: readonly (readonly [label: string, share: number])[] = [
  ['A quarter of the way', 0.25],
  ['Halfway', 0.5],
  ['Three quarters', 0.75],
];

/** Colours on the way from one yarn to another. */
export function ballsBetween(color: string, other: string): HarmonyBall[] {
  return shares.map(([label, share]) => {
    const made = between(color, other, share);
    const isNew = made !== color && made !== other;
    return { label, color: isNew ? made : null, fault: isNew ? '' : 'These two are too close for that.' };
  });
}
