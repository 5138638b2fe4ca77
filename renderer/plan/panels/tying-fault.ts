/** Whether pieces hold a knot with the settings that are being written, told at their field before anything is planned. */
import type { Chart } from '../../../shared/chart/chart.ts';
import { codeOf } from '../../../shared/design/codes.ts';
import type { Design } from '../../../shared/design/design.ts';
import type { TyingSettings } from '../../../shared/design/schema.ts';
import { gaugeOf, knotMm } from '../../../shared/gauge/gauge.ts';
import { checkTying } from '../../../shared/tying/check-tying.ts';
import type { Units } from '../../../shared/units/units.ts';

/** The longest knot of the yarns that tie any; 0 where all is bare. `chart` is the design's own. */
export function longestKnotMm(design: Design, chart: Chart): number {
  const tied = new Set(chart.cells);
  const gauge = gaugeOf(design);
  const knots = design.yarns
    .filter(({ id }) => tied.has(codeOf(id)))
    .map((yarn) => knotMm(design, yarn, gauge));
  return Math.max(0, ...knots);
}

/** Why nothing can be tied with these settings, and what to do, in a sentence; empty where it can. */
export function tyingFault(tying: TyingSettings, longestMm: number, units: Units): string {
  const tyable = checkTying(tying, longestMm, units);
  return tyable.ok ? '' : tyable.problem.sentence;
}
