/** From a design to its plan, by any planner. */
import type { Chart } from '../chart/chart.ts';
import { chartHash, chartJson } from '../chart/chart-json.ts';
import type { Design } from '../design/design.ts';
import { type Gauge, gaugeOf } from '../gauge/gauge.ts';
import { good, type Result } from '../result.ts';
import { assemblePlan } from './assemble-plan.ts';
import { checkTying } from './check-tying.ts';
import type { Plan } from './plan.ts';
import { planSettings } from './plan-settings.ts';
import { runsOf } from './runs.ts';
import type { Planner } from './strand-choice.ts';
import { tenthsOf } from './tenths.ts';

/** `chart` is the design's own, as `flatten` makes it. Problem: `piece-too-short`, see `check-tying.ts`. */
export function planBy(
  planner: Planner,
  design: Design,
  chart: Chart,
  gauge: Gauge = gaugeOf(design),
): Result<Plan> {
  const runs = runsOf(chart);
  const settings = planSettings(design, runs, gauge);
  const tyable = checkTying(settings, Math.max(0, ...Object.values(settings.knotMm)));
  if (!tyable.ok) return tyable;
  const question = { chart, runs, settings, tenths: tenthsOf(settings) };
  return good(assemblePlan(question, planner(question), chartHash(chartJson(design, chart))));
}
