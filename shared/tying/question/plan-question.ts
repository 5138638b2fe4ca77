/** What a planner is asked: a design's chart as runs, with the maker's settings in the measure of plans. */
import type { Chart } from '../../chart/chart.ts';
import type { Design } from '../../design/design.ts';
import { type Gauge, gaugeOf } from '../../gauge/gauge.ts';
import { good, type Result } from '../../result.ts';
import { checkTying } from '../check-tying.ts';
import { planSettings } from '../plan-settings.ts';
import { type Runs, runsOf } from '../runs.ts';
import { tenthsOf } from '../tenths.ts';
import type { PlanQuestion } from './strand-choice.ts';

/** `chart` is the design's own, as `flatten` makes it, and `runs` are the chart's. Problem: `piece-too-short`, see `check-tying.ts`. */
export function planQuestion(
  design: Pick<Design, 'cord' | 'yarns' | 'tying' | 'swatches' | 'ground'>,
  chart: Chart,
  gauge: Gauge = gaugeOf(design),
  runs: Runs = runsOf(chart),
): Result<PlanQuestion> {
  const settings = planSettings(design, runs, gauge);
  const tyable = checkTying(settings, Math.max(0, ...Object.values(settings.knotMm)));
  if (!tyable.ok) return tyable;
  return good({ chart, runs, settings, tenths: tenthsOf(settings) });
}
