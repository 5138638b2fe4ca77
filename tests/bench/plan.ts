/**
 * The planner against a careful person on pictures that nobody here drew, what a reserve in each piece takes, and how
 * long planning takes: for the demo designs, for charts as hard as a photograph, and for one cell of such a chart.
 */
import { flatten } from '../../shared/chart/chart.ts';
import { demoDesigns } from '../../shared/demos/demo-designs.ts';
import type { Design } from '../../shared/design/design.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { planFully } from '../../shared/tying/planners/plan-fully.ts';
import { planQuickly } from '../../shared/tying/planners/plan-quickly.ts';
import { planQuestion } from '../../shared/tying/question/plan-question.ts';
import type { PlanQuestion } from '../../shared/tying/question/strand-choice.ts';
import { mottledDesign } from './parts/mottled-design.ts';
import { inWords, timesMs } from './parts/times-ms.ts';
import { compareOnPictures } from './plan/compare-on-pictures.ts';
import { compareReserves } from './plan/compare-reserves.ts';
import { mostMemory } from './plan/most-memory.ts';
import { repairTimesMs } from './plan/repair-times.ts';
import { shadedDesign } from './plan/shaded-design.ts';

await compareOnPictures(40, 48, 6);
await compareOnPictures(100, 120, 8);
await compareReserves();

for (const design of [
  ...demoDesigns.map(({ make }) => make()),
  shadedDesign(40, 48),
  shadedDesign(200, 300),
  mottledDesign(200, 300),
  mottledDesign(400, 600),
]) {
  const question = asked(design);
  const { title, columns, rows } = design;
  console.log(`\n${title}, ${columns} x ${rows}, ${question.runs.count} runs`);
  console.log(`  cover and pieces: ${inWords(await timesMs(20, () => planQuickly(question)))}`);
  console.log(`  full search:      ${inWords(await timesMs(2, () => finish(planFully(question))))}`);
  const chart = flatten(design);
  const plan = planStrands(design, chart, { effort: 'quick' });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  console.log(
    `  materials:        ${inWords(await timesMs(20, () => materialsOf(design, chart, plan.value)))}`,
  );
}

const times = repairTimesMs(shadedDesign(200, 300), 1000);
const at = (share: number) => times[Math.floor(times.length * share)]!.toFixed(2);
console.log('\nOne cell of 200 x 300 shaded, repaired: the question anew, the cover, the pieces');
console.log(`  median ${at(0.5)} ms, 95 % ${at(0.95)} ms, 99 % ${at(0.99)} ms (${times.length} edits)`);

console.log('\nMemory that planning takes, each in a process of its own: before, at most');
for (const [picture, columns, rows] of [
  ['shaded', 40, 48],
  ['shaded', 200, 300],
  ['mottled', 400, 600],
] as const) {
  for (const effort of ['quick', 'full'] as const) {
    const [before, most] = mostMemory({ picture, columns, rows, effort });
    const way = effort === 'quick' ? 'cover and pieces' : 'full search';
    console.log(`  ${picture}, ${columns} x ${rows}, ${way}: ${before} MB, ${most} MB`);
  }
}

function asked(design: Design): PlanQuestion {
  const question = planQuestion(design, flatten(design));
  if (!question.ok) throw new Error(question.problem.sentence);
  return question.value;
}

function finish(steps: Generator<number, unknown>): void {
  while (!steps.next().done);
}
