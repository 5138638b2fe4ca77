import type { Chart } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';

/** What a plan is made from: the chart, and the design without its layers. */
export interface PlanSource {
  readonly chart: Chart;
  readonly design: Design;
}

/** True where both give the same plan and figures, so that it need not be made again. */
export function plannedAlike(a: PlanSource, b: PlanSource): boolean {
  const keys = Object.keys({ ...a.design, ...b.design }) as (keyof Design)[];
  const isSameDesign = keys.every((key) => key === 'layers' || isSame(a.design[key], b.design[key]));
  return isSameDesign && sameCells(a.chart, b.chart);
}

/** What stands beside the layers is small, so its text is soon made. */
function isSame(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

function sameCells(a: Chart, b: Chart): boolean {
  if (a === b) return true;
  if (a.columns !== b.columns || a.rows !== b.rows || a.startCorner !== b.startCorner) return false;
  return a.cells.every((code, cell) => code === b.cells[cell]);
}
