/**
 * What the hanging takes: every figure of it, put together here and nowhere else, from gauge, chart and plan.
 */
import type { Chart } from '../chart/chart.ts';
import { BARE } from '../design/codes.ts';
import type { Design } from '../design/design.ts';
import { cutList } from '../gauge/cords.ts';
import { dowelMassG, dowelOf, dowelSpread } from '../gauge/dowel.ts';
import { sizeOf } from '../gauge/gauge.ts';
import { type GaugeSpread, gaugeSpread, spreadOf } from '../gauge/gauge-spread.ts';
import type { PlainPlan } from '../tying/plan.ts';
import { sumOfUncertain } from '../units/uncertain.ts';
import { planAsCut } from './bundles/plan-as-cut.ts';
import { costOf } from './cost.ts';
import { gaugeFigures } from './gauge-figures.ts';
import type { Materials } from './materials.ts';
import { uncertainNeeds } from './uncertain-needs.ts';
import { workSeconds } from './work-time.ts';
import { yarnNeeds } from './yarn-needs.ts';

/**
 * `chart` and `planned` are the design's own. What is counted is the plan as its pieces are cut. The mass of the whole counts yarn and cord as cut, so it is a little more
 * than what will hang: a fixing is chosen by it.
 */
export function materialsOf(design: Design, chart: Chart, planned: PlainPlan): Materials {
  const plan = planAsCut(design, planned);
  const spread = gaugeSpread(design);
  const needs = uncertainNeeds(design, plan, spread);
  const cords = cutList(design, spread.gauge);
  const yarns = yarnNeeds(design, plan, needs);
  const { knots, pieces, strands, looseEnds, liveMax, cutMm } = plan.totals;
  const work = { knots, pieces, tiedRows: tiedRows(chart), cutCords: cords.cutCords, looseEnds };
  const seconds = workSeconds(work, design.rates);
  const yarnMassG = yarns.reduce((sum, { massG }) => sum + massG, 0);
  const restMassG = spreadOf(
    spread,
    (at) => cutList(design, at).massG + dowelMassG(design.dowel, dowelOf(design, at).minLengthMm),
  );
  return {
    format: 'larkrow-materials',
    version: 1,
    title: design.title,
    columns: design.columns,
    rows: design.rows,
    gauge: gaugeFigures(design, spread),
    ...sizes(design, spread),
    cords: { ...cords, uncertain: { totalMm: spreadOf(spread, (at) => cutList(design, at).totalMm) } },
    yarns,
    totals: {
      knots,
      bareCells: chart.cells.length - knots,
      pieces,
      strands,
      looseEnds,
      liveMax,
      yarnCutMm: cutMm,
      yarnMassG,
      massG: yarnMassG + restMassG.value,
      seconds,
      uncertain: {
        yarnCutMm: needs.total.cutMm,
        yarnUsedMm: needs.total.usedMm,
        yarnMassG: needs.total.massG,
        massG: sumOfUncertain([needs.total.massG, restMassG]),
      },
    },
    tying: {
      workingLengthMm: design.tying.workingLengthMm,
      tailMm: design.tying.tailMm,
      margin: design.yarnMargin,
      fitted: design.bundles?.fitted === true,
    },
    cost: costOf(design, { yarns, cordMm: cords.totalMm, seconds }),
  };
}

function sizes(design: Design, spread: GaugeSpread): Pick<Materials, 'finished' | 'dowel'> {
  const finished = (what: keyof ReturnType<typeof sizeOf>) =>
    spreadOf(spread, (at) => sizeOf(design, at)[what]);
  return {
    finished: {
      ...sizeOf(design, spread.gauge),
      uncertain: {
        widthMm: finished('widthMm'),
        knottedHeightMm: finished('knottedHeightMm'),
        heightWithFringeMm: finished('heightWithFringeMm'),
      },
    },
    dowel: {
      ...dowelOf(design, spread.gauge),
      uncertain: { minLengthMm: dowelSpread(design, spread) },
    },
  };
}

/** Rows with at least one knot. */
function tiedRows({ cells, columns, rows }: Chart): number {
  let tied = 0;
  for (let row = 0; row < rows; row++) {
    if (cells.subarray(row * columns, (row + 1) * columns).some((code) => code !== BARE)) tied++;
  }
  return tied;
}
