/**
 * Greys for a printer without colours. A yarn's own grey would often be that of its neighbour; here each yarn takes one of
 * a few greys that any printer keeps apart, so that yarns which touch differ wherever that is possible, and stay about as
 * pale or dark as they are. Symbols carry the meaning; the greys let the picture be seen.
 */
import { codeOf } from '../design/codes.ts';
import type { Yarn } from '../design/schema.ts';
import { cieLabOf } from '../yarn/colour-difference.ts';
import type { TouchingPair } from '../yarn/touching.ts';

/**
 * The greys, pale to dark, each 9 apart in CIE lightness L*. None lies between 36 and 60, where neither black nor white
 * symbols stand out well, and none is white, which is bare. Common practice, no source.
 */
const steps = [
  { lightness: 96, color: '#f3f3f3' },
  { lightness: 87, color: '#d9d9d9' },
  { lightness: 78, color: '#c1c1c1' },
  { lightness: 69, color: '#a8a8a8' },
  { lightness: 60, color: '#919191' },
  { lightness: 36, color: '#555555' },
  { lightness: 27, color: '#404040' },
] as const;

/** What it costs that all places where yarns touch show one grey, or greys of one step; and to leave one's own lightness. */
const price = { alike: 1, oneStep: 0.08, awayPerLightness: 0.002 } as const;

/** The grey of each yarn, as #rrggbb. The same yarns and pairs give the same greys. */
export function printedGreys(
  yarns: readonly Pick<Yarn, 'id' | 'color'>[],
  pairs: readonly TouchingPair[],
): string[] {
  const own = yarns.map(({ color }) => cieLabOf(color).l);
  const chosen = own.map(nearestStep);
  const touching = touchingLists(yarns, pairs);
  const costOf = (yarn: number, step: number) =>
    touching[yarn]!.reduce((sum, { other, share }) => sum + share * alikeness(step, chosen[other]!), 0) +
    (price.awayPerLightness * Math.abs(steps[step]!.lightness - own[yarn]!)) / yarns.length;
  // Each turn lowers the whole cost, so it comes to an end; the bound only guards against rounding.
  for (let turn = 0; turn < 40; turn++) {
    let moved = false;
    for (let yarn = 0; yarn < yarns.length; yarn++) {
      const costs = steps.map((_, step) => costOf(yarn, step));
      const best = costs.indexOf(Math.min(...costs));
      if (costs[best]! < costs[chosen[yarn]!]! - 1e-12) {
        chosen[yarn] = best;
        moved = true;
      }
    }
    if (!moved) break;
  }
  return chosen.map((step) => steps[step]!.color);
}

interface Touch {
  readonly other: number;
  /** Of all places where yarns touch. */
  readonly share: number;
}

function touchingLists(yarns: readonly Pick<Yarn, 'id'>[], pairs: readonly TouchingPair[]): Touch[][] {
  const at = new Map(yarns.map(({ id }, i) => [codeOf(id), i]));
  const lists: Touch[][] = yarns.map(() => []);
  const all = pairs.reduce((sum, { count }) => sum + count, 0);
  for (const { a, b, count } of pairs) {
    const [one, other] = [at.get(a), at.get(b)];
    if (one === undefined || other === undefined) continue;
    // A pair that touches in one place only is still to be told apart.
    const share = (count + 1) / (all + pairs.length);
    lists[one]!.push({ other, share });
    lists[other]!.push({ other: one, share });
  }
  return lists;
}

function alikeness(step: number, other: number): number {
  if (step === other) return price.alike;
  const gap = Math.abs(steps[step]!.lightness - steps[other]!.lightness);
  return gap < 10 ? price.oneStep : 0;
}

function nearestStep(lightness: number): number {
  const gaps = steps.map((step) => Math.abs(step.lightness - lightness));
  return gaps.indexOf(Math.min(...gaps));
}
