/**
 * Greys for a printer without colours. A yarn's own grey would often be that of its neighbour; here each yarn takes one of
 * a few greys that any printer keeps apart, so that yarns which touch differ wherever that is possible, and stay about as
 * pale or dark as they are. Symbols carry the meaning; the greys let the picture be seen.
 */
import { codeOf } from '../../design/codes.ts';
import type { Yarn } from '../../design/schema.ts';
import { cieLabOf } from '../../yarn/colour-difference.ts';
import type { TouchingPair } from '../../yarn/touching.ts';

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

/**
 * What it costs that two yarns which touch have one grey, the more the more they touch; that their greys are neighbours; and
 * that a yarn leaves its own lightness. Two that touch in one place only are still to be told apart.
 */
const price = { alike: 1, alikeByShare: 10, oneStep: 0.02, awayPerLightness: 0.001 } as const;

/** The grey of each yarn, as #rrggbb. The same yarns and pairs give the same greys. */
export function printedGreys(
  yarns: readonly Pick<Yarn, 'id' | 'color'>[],
  pairs: readonly TouchingPair[],
): string[] {
  const own = yarns.map(({ color }) => cieLabOf(color).l);
  const chosen = own.map(nearestStep);
  const touching = touchingLists(yarns, pairs);
  const away = (yarn: number, step: number) =>
    price.awayPerLightness * Math.abs(steps[step]!.lightness - own[yarn]!);
  const costOf = (yarn: number, step: number) =>
    touching[yarn]!.reduce((sum, touch) => sum + alikeness(touch, step, chosen[touch.other]!), 0) +
    away(yarn, step);
  const lower = (yarn: number): boolean => {
    const costs = steps.map((_, step) => costOf(yarn, step));
    const best = costs.indexOf(Math.min(...costs));
    if (costs[best]! >= costs[chosen[yarn]!]! - 1e-9) return false;
    chosen[yarn] = best;
    return true;
  };
  /** Moves two that touch and are alike at once, where moving either alone does not help. */
  const part = (one: number, touch: Touch): boolean => {
    const { other } = touch;
    const before = [chosen[one]!, chosen[other]!] as const;
    if (before[0] !== before[1]) return false;
    const costNow = () =>
      costOf(one, chosen[one]!) +
      costOf(other, chosen[other]!) -
      alikeness(touch, chosen[one]!, chosen[other]!);
    let least = costNow() - 1e-9;
    let best = before;
    for (let a = 0; a < steps.length; a++) {
      for (let b = 0; b < steps.length; b++) {
        [chosen[one], chosen[other]] = [a, b];
        if (costNow() >= least) continue;
        least = costNow();
        best = [a, b];
      }
    }
    [chosen[one], chosen[other]] = best;
    return best !== before;
  };
  // Each turn lowers the whole cost, so it comes to an end; the bound only guards against rounding.
  for (let turn = 0, moved = true; moved && turn < 40; turn++) {
    moved = yarns.map((_, yarn) => lower(yarn)).includes(true);
    if (!moved) moved = touching.some((list, one) => list.some((touch) => part(one, touch)));
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
    const share = count / Math.max(all, 1);
    lists[one]!.push({ other, share });
    lists[other]!.push({ other: one, share });
  }
  return lists;
}

function alikeness({ share }: Touch, step: number, other: number): number {
  if (step === other) return price.alike + price.alikeByShare * share;
  const gap = Math.abs(steps[step]!.lightness - steps[other]!.lightness);
  return gap < 10 ? price.oneStep : 0;
}

function nearestStep(lightness: number): number {
  const gaps = steps.map((step) => Math.abs(step.lightness - lightness));
  return gaps.indexOf(Math.min(...gaps));
}
