/** The plan of a careful person who doesn't look ahead: the baseline that better planners are measured against. */
import type { Chart } from '../../chart/chart.ts';
import type { Design } from '../../design/design.ts';
import type { Gauge } from '../../gauge/gauge.ts';
import type { Result } from '../../result.ts';
import type { Plan } from '../plan.ts';
import { planBy } from '../planners/plan-by.ts';
import { carefulPerson } from './careful-person.ts';

/**
 * Each run is tied by the nearest parked strand of its yarn that may be carried to it, else by a new one, and each
 * piece is used until it runs out. The maker's pins are not looked at: they are decisions of someone who looks ahead. `chart` is the design's own, as `flatten` makes it.
 * Problem: `piece-too-short` where the working length can't hold one knot and two tails.
 */
export function planCarefully(design: Design, chart: Chart, gauge?: Gauge): Result<Plan> {
  return planBy(carefulPerson, design, chart, gauge);
}
