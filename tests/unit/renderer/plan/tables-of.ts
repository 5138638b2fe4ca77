/** The tables of a careful person's plan, which a reader can follow by hand, of a chart in letters. */
import { type PlanTables, planTables } from '../../../../renderer/plan/plans/plan-tables.ts';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { planCarefully } from '../../../../shared/tying/careful-person/plan-carefully.ts';
import { type TyingOrder, tyingOrder } from '../../../../shared/tying/steps/tying-order.ts';
import { designFromLetters } from '../../../notation.ts';

export interface Told {
  readonly order: TyingOrder;
  readonly tables: PlanTables;
}

export function tablesOf(letters: readonly string[], tying: Partial<Design['tying']> = {}): Told {
  const base = designFromLetters(letters);
  const design = { ...base, tying: { ...base.tying, ...tying } };
  const chart = flatten(design);
  const plan = planCarefully(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const order = tyingOrder(chart, plan.value);
  return { order, tables: planTables(order) };
}
