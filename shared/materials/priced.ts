/**
 * The same materials at other prices, or with another stash: what is owned, what to buy and what it costs, computed anew
 * from what the plan takes. Nothing is planned again, since no length depends on a price.
 */
import type { Design } from '../design/design.ts';
import type { Units } from '../units/units.ts';
import { buyingOf } from './buying.ts';
import { costOf } from './cost.ts';
import type { Materials } from './materials.ts';

/**
 * `design`: with the yarns that the materials are of. The materials of this very design stay as they are. `units`:
 * whether formulas count cord in metres, or in yards.
 */
export function priced(
  materials: Materials,
  design: Pick<Design, 'yarns' | 'money'>,
  units: Units = 'metric',
): Materials {
  const byId = new Map(design.yarns.map((yarn) => [yarn.id, yarn]));
  const yarns = materials.yarns.map((need) => ({
    ...need,
    ...buyingOf(need.withMarginMm, need.skeinMm, byId.get(need.id) ?? {}),
  }));
  const { cords, totals } = materials;
  const taken = { yarns, cordMm: cords.totalMm, seconds: totals.seconds };
  return { ...materials, yarns, cost: costOf(design, taken, units) };
}
