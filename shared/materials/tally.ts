/**
 * What the hanging takes: every figure of it, put together here and nowhere else, from gauge, chart and plan.
 */
import type { Chart } from '../chart/chart.ts';
import { BARE } from '../design/codes.ts';
import type { Design } from '../design/design.ts';
import { cutList } from '../gauge/cords.ts';
import { dowelMassG, dowelOf } from '../gauge/dowel.ts';
import { gaugeOf, sizeOf } from '../gauge/gauge.ts';
import type { Plan } from '../tying/plan.ts';
import type { Materials } from './materials.ts';
import { workSeconds } from './work-time.ts';
import { yarnNeeds } from './yarn-needs.ts';

/**
 * `chart` and `plan` are the design's own. The mass of the whole counts yarn and cord as cut, so it is a little more
 * than what will hang: a fixing is chosen by it.
 */
export function materialsOf(design: Design, chart: Chart, plan: Plan): Materials {
  const gauge = gaugeOf(design);
  const cords = cutList(design, gauge);
  const dowel = dowelOf(design, gauge);
  const yarns = yarnNeeds(design, plan);
  const { knots, pieces, strands, looseEnds, liveMax, cutMm } = plan.totals;
  const yarnMassG = yarns.reduce((sum, { massG }) => sum + massG, 0);
  const work = { knots, pieces, tiedRows: tiedRows(chart), cutCords: cords.cutCords, looseEnds };
  return {
    format: 'larkrow-materials',
    version: 1,
    title: design.title,
    columns: design.columns,
    rows: design.rows,
    gauge: { ...gauge, knotsPer10Cm: 100 / gauge.pitchMm, rowsPer10Cm: 100 / gauge.rowHeightMm },
    finished: sizeOf(design, gauge),
    dowel,
    cords,
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
      massG: yarnMassG + cords.massG + dowelMassG(design.dowel, dowel.minLengthMm),
      seconds: workSeconds(work, design.rates),
    },
    tying: {
      workingLengthMm: design.tying.workingLengthMm,
      tailMm: design.tying.tailMm,
      margin: design.yarnMargin,
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
