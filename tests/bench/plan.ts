/** How long the plan of strands and the materials take: for the demo designs, and for a chart as hard as a photograph. */
import { flatten } from '../../shared/chart/chart.ts';
import { demoDesigns } from '../../shared/demos/demo-designs.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { mottledDesign } from './parts/mottled-design.ts';
import { inWords, timesMs } from './parts/times-ms.ts';

for (const design of [
  ...demoDesigns.map(({ make }) => make()),
  mottledDesign(200, 300),
  mottledDesign(400, 600),
]) {
  const chart = flatten(design);
  const planned = planStrands(design, chart);
  if (!planned.ok) throw new Error(planned.problem.sentence);
  const plan = planned.value;
  const size = `${design.title}, ${design.columns} x ${design.rows}, ${plan.totals.pieces} pieces`;
  console.log(`${size}\n  plan:      ${inWords(await timesMs(20, () => planStrands(design, chart)))}`);
  console.log(`  materials: ${inWords(await timesMs(20, () => materialsOf(design, chart, plan)))}`);
}
