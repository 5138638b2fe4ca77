/**
 * Plans designs that are only weighed against one another, one after the other: quick plans of all of them first, then
 * full ones. A newer question, or the word to stop, is listened for between two steps.
 */
import type { Chart } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import type { Materials } from '../../../shared/materials/materials.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import type { Plan } from '../../../shared/tying/plan.ts';
import { planSteps } from '../../../shared/tying/plan-steps.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { type Figures, figuresOf } from '../plans/figures.ts';

/** The design comes without its layers: the chart says all that a plan needs. */
export interface Weighable {
  readonly key: string;
  readonly design: Design;
  readonly chart: Chart;
}

export type WeighQuestion =
  | { readonly kind: 'weigh'; readonly number: number; readonly all: readonly Weighable[] }
  | { readonly kind: 'stop' };

export interface Weighed {
  readonly effort: 'quick' | 'full';
  readonly materials: Materials;
  readonly figures: Figures;
}

export type WeighAnswer = { readonly number: number } & (
  | { readonly kind: 'weighed'; readonly key: string; readonly weighed: Weighed }
  | { readonly kind: 'problem'; readonly key: string; readonly sentence: string }
  /** Share of the full plans that is done; 1 at the end. */
  | { readonly kind: 'progress'; readonly done: number }
);

const lookMs = 30;
let newest = -1;

self.addEventListener('message', ({ data }: MessageEvent<WeighQuestion>) => {
  newest = data.kind === 'weigh' ? data.number : -1;
  if (data.kind === 'weigh') weigh(data.number, data.all);
});

async function weigh(number: number, all: readonly Weighable[]): Promise<void> {
  const sound: Weighable[] = [];
  for (const each of all) {
    const quick = planStrands(each.design, each.chart, { effort: 'quick' });
    if (quick.ok) {
      sound.push(each);
      tell(number, each, 'quick', quick.value);
    } else answer({ kind: 'problem', number, key: each.key, sentence: quick.problem.sentence });
    if (!(await goesOn(number))) return;
  }
  for (const [i, each] of sound.entries()) {
    const steps = planSteps(each.design, each.chart);
    let looked = performance.now();
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done) {
        if (step.value.ok) tell(number, each, 'full', step.value.value);
        break;
      }
      if (performance.now() - looked < lookMs) continue;
      answer({ kind: 'progress', number, done: (i + step.value) / sound.length });
      if (!(await goesOn(number))) return;
      looked = performance.now();
    }
  }
  answer({ kind: 'progress', number, done: 1 });
}

function tell(
  number: number,
  { key, design, chart }: Weighable,
  effort: Weighed['effort'],
  plan: Plan,
): void {
  const materials = materialsOf(design, chart, plan);
  const weighed = { effort, materials, figures: figuresOf(materials, plan) };
  answer({ kind: 'weighed', number, key, weighed });
}

function answer(words: WeighAnswer): void {
  self.postMessage(words);
}

/** Lets in what waits; false where another question has come, or the word to stop. */
async function goesOn(number: number): Promise<boolean> {
  await new Promise((resolve) => setTimeout(resolve));
  return newest === number;
}
