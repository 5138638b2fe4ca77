/**
 * The plan of someone who cuts the yarn at every change: what the careful person is compared with.
 *
 * The careful person never takes more pieces than this one, for any yarn: a run of n knots at K knots a piece takes
 * ceil(n / K) new pieces here, and there at most ceil((n - 1) / K), since a strand is carried to a run only where its
 * piece holds at least one knot of it. So neither is more yarn cut. The planner's cost may still be higher there: a
 * carry to a long run may save no piece, and a dear one costs more than the piece it saves.
 */
import type { Chart } from '../../chart/chart.ts';
import type { Design } from '../../design/design.ts';
import type { Gauge } from '../../gauge/gauge.ts';
import type { Result } from '../../result.ts';
import type { Plan } from '../plan.ts';
import { planBy } from '../planners/plan-by.ts';
import type { PlanQuestion, StrandChoice } from '../question/strand-choice.ts';
import { tieRun } from '../question/tie-run.ts';

/** Problem: `piece-too-short`, as with `planStrands`. */
export function planNeverCarrying(design: Design, chart: Chart, gauge?: Gauge): Result<Plan> {
  return planBy(neverCarrying, design, chart, gauge);
}

function neverCarrying({ runs, tenths }: PlanQuestion): StrandChoice {
  const joins: number[] = [];
  for (let run = 0; run < runs.count; run++) tieRun(runs, run, tenths, tenths.room, joins);
  return { previous: new Int32Array(runs.count).fill(-1), joins };
}
