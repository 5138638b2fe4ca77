/** A plan as the Plan screen shows it: made in the worker, with the same code as everywhere. */
import type { Chart } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { planAsCut } from '../../../shared/materials/bundles/plan-as-cut.ts';
import type { Materials } from '../../../shared/materials/materials.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import type { WishedTotals } from '../../../shared/tying/live-warning.ts';
import { pinFaults } from '../../../shared/tying/pins/pin-faults.ts';
import type { PinFault } from '../../../shared/tying/pins/read-pins.ts';
import type { Plan } from '../../../shared/tying/plan.ts';
import type { PlanToWish } from '../../../shared/tying/planners/plan-to-wish.ts';
import { type TyingOrder, tyingOrder } from '../../../shared/tying/steps/tying-order.ts';
import { type Figures, figuresOf } from './figures.ts';
import { type PlanTables, planTables } from './plan-tables.ts';
import { type RowFacts, rowFacts } from './row-facts.ts';

export interface Planned {
  readonly tables: PlanTables;
  /** Row 1 first. */
  readonly rows: readonly RowFacts[];
  readonly materials: Materials;
  readonly figures: Figures;
  /** The design's pins that the plan does not obey. */
  readonly pinFaults: readonly PinFault[];
  /** What the wish for few live strands takes; null where nothing is wished, and of a quick plan, which leaves it aside. */
  readonly wished: WishedTotals | null;
}

/**
 * `chart` and what was `made` are the design's own; `free` is absent for a quick plan. The plan is shown as its pieces are
 * cut. The order stays in the worker: steps are asked for a few at a time.
 */
export function planned(
  design: Design,
  chart: Chart,
  made: Pick<PlanToWish, 'plan'> & Partial<PlanToWish>,
): { readonly planned: Planned; readonly order: TyingOrder } {
  const plan = planAsCut(design, made.plan);
  const free = made.free && planAsCut(design, made.free);
  const order = tyingOrder(chart, plan);
  const materials = materialsOf(design, chart, plan);
  const figures = figuresOf(materials, plan);
  return {
    planned: {
      tables: planTables(order),
      rows: rowFacts(order),
      materials,
      figures,
      pinFaults: design.pins?.length ? pinFaults(design, chart) : [],
      wished: wishedOf(design, plan, free),
    },
    order,
  };
}

function wishedOf(
  { tying: { liveWish } }: Design,
  plan: Plan,
  free: Plan | null | undefined,
): WishedTotals | null {
  if (liveWish === undefined || free === undefined) return null;
  return { wish: liveWish, plan: plan.totals, free: free?.totals ?? null };
}
