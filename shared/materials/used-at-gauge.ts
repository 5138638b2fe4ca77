/** What the plan's knots, carries and tails would use of all yarns at another gauge, as long as no piece runs out. */
import type { Design } from '../design/design.ts';
import { type Gauge, knotMm } from '../gauge/gauge.ts';
import type { YarnNeed } from './materials.ts';

/** In mm. `yarns` are the design's needs; yarn on the way grows as that in the knots does, as in `plan-by-hand.ts`. */
export function usedAtGaugeMm(
  design: Pick<Design, 'cord' | 'yarns'>,
  yarns: readonly Pick<YarnNeed, 'id' | 'knots' | 'knottedMm' | 'carriedMm' | 'tailsMm'>[],
  gauge: Gauge,
): number {
  return yarns.reduce((sum, { id, knots, knottedMm, carriedMm, tailsMm }) => {
    const yarn = design.yarns.find((each) => each.id === id);
    // A yarn may be gone while the plan without it is still being made.
    if (!yarn || knottedMm === 0) return sum;
    const times = (knots * knotMm(design, yarn, gauge)) / knottedMm;
    return sum + (knottedMm + carriedMm) * times + tailsMm;
  }, 0);
}
