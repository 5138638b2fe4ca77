import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { planQuestion } from '../../../shared/tying/question/plan-question.ts';
import { KeptStrands } from '../../../shared/tying/repair/kept-strands.ts';

/** How long it takes to have strands and pieces again after one cell has become another yarn, in ms, in order. */
export function repairTimesMs(design: Design, edits: number): number[] {
  const kept = new KeptStrands();
  let chart = flatten(design);
  let state = 7;
  const below = (limit: number) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * limit);
  };
  const times: number[] = [];
  // The first ones warm up and are not counted.
  for (let edit = -50; edit < edits; edit++) {
    const cells = chart.cells.slice();
    cells[below(cells.length)] = 1 + below(design.yarns.length);
    chart = { ...chart, cells };
    const began = performance.now();
    const question = planQuestion(design, chart, undefined, kept.runsOf(chart));
    if (!question.ok) throw new Error(question.problem.sentence);
    kept.choose(question.value);
    if (edit >= 0) times.push(performance.now() - began);
  }
  return times.sort((a, b) => a - b);
}
