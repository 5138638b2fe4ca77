import type { AlikePair } from '../../../../shared/yarn/alike-pairs.ts';
import { type Sight, sights } from '../../../../shared/yarn/sight.ts';

/** The pairs that look alike in each sight, those that touch in the most places first. */
export function pairsBySight(pairs: readonly AlikePair[]): ReadonlyMap<Sight, readonly AlikePair[]> {
  return new Map(
    sights.map((sight) => [sight, pairs.filter(({ alike }) => alike.some((each) => each.sight === sight))]),
  );
}
