/**
 * Makes a pattern's pages in a worker, where nobody waits for it: at once from a quick plan, and then from the full one,
 * which is what is saved and printed. Another paper or other units need no other plan. Between two steps of planning it
 * listens for what else is wished.
 */
import type { Chart } from '../../shared/chart/chart.ts';
import type { Design } from '../../shared/design/design.ts';
import type { Materials } from '../../shared/materials/materials.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import { layOutPattern } from '../../shared/pattern/lay-out-pattern.ts';
import type { PatternDocument } from '../../shared/pattern/page.ts';
import type { Paper } from '../../shared/pattern/papers.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { planSteps } from '../../shared/tying/plan-steps.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import type { Units } from '../../shared/units/units.ts';

export type PatternEffort = 'quick' | 'full';

/** What the pages are laid out for. */
export interface PatternSheet {
  readonly paper: Paper;
  readonly units: Units;
}

/** Questions are numbered, each higher than the one before. */
export type PatternQuestion =
  /** The design comes without its layers: the chart says all that a pattern needs. */
  | {
      readonly kind: 'pattern';
      readonly number: number;
      readonly design: Design;
      readonly chart: Chart;
      readonly sheet: PatternSheet;
    }
  /** The same design for another sheet. */
  | { readonly kind: 'sheet'; readonly number: number; readonly sheet: PatternSheet }
  /** The full plan is not wanted any more. */
  | { readonly kind: 'stop' };

/** Answers carry the number of the last question that was heard. */
export type PatternAnswer =
  | {
      readonly kind: 'pages';
      readonly number: number;
      readonly effort: PatternEffort;
      readonly document: PatternDocument;
    }
  /** Share of the full plan that is done. */
  | { readonly kind: 'progress'; readonly number: number; readonly done: number }
  | { readonly kind: 'problem'; readonly number: number; readonly sentence: string };

interface Planned {
  readonly design: Design;
  readonly chart: Chart;
  readonly plan: Plan;
  readonly materials: Materials;
  readonly effort: PatternEffort;
}

/** How long it plans between two looks at what has come in, and between two words of its progress. */
const lookMs = 30;
const tellMs = 120;

export class PatternMaker {
  readonly #answer: (answer: PatternAnswer) => void;
  readonly #pause: () => Promise<void>;
  readonly #now: () => number;
  #number = 0;
  #sheet: PatternSheet = { paper: 'a4', units: 'metric' };
  #planned: Planned | null = null;
  /** Goes up with each design, and when planning is stopped: whoever plans by an older one ends. */
  #turn = 0;

  /** `pause` lets in what waits to be heard; `now` is the time in ms. */
  constructor(
    answer: (answer: PatternAnswer) => void,
    pause: () => Promise<void>,
    now: () => number = () => performance.now(),
  ) {
    this.#answer = answer;
    this.#pause = pause;
    this.#now = now;
  }

  /** Settles when nothing more will be answered to this question. */
  async hear(question: PatternQuestion): Promise<void> {
    switch (question.kind) {
      case 'pattern':
        this.#number = question.number;
        this.#sheet = question.sheet;
        await this.#make(question.design, question.chart);
        return;
      case 'sheet':
        this.#number = question.number;
        this.#sheet = question.sheet;
        if (this.#planned) this.#layOut(this.#planned);
        return;
      case 'stop':
        this.#turn++;
    }
  }

  async #make(design: Design, chart: Chart): Promise<void> {
    const turn = ++this.#turn;
    this.#planned = null;
    const quick = planStrands(design, chart, { effort: 'quick' });
    if (!quick.ok) {
      this.#answer({ kind: 'problem', number: this.#number, sentence: quick.problem.sentence });
      return;
    }
    this.#take(design, chart, quick.value, 'quick');
    const full = await this.#planFully(design, chart, turn);
    if (full) this.#take(design, chart, full, 'full');
  }

  /** Null where it was stopped, or another design was heard of. */
  async #planFully(design: Design, chart: Chart, turn: number): Promise<Plan | null> {
    const steps = planSteps(design, chart);
    // What came in while the quick plan's pages were laid out is heard before the first step.
    let looked = Number.NEGATIVE_INFINITY;
    let told = this.#now();
    for (;;) {
      if (this.#now() - looked >= lookMs) {
        await this.#pause();
        if (this.#turn !== turn) return null;
        looked = this.#now();
      }
      const step = steps.next();
      if (step.done) return step.value.ok ? step.value.value : null;
      if (this.#now() - told < tellMs) continue;
      this.#answer({ kind: 'progress', number: this.#number, done: step.value });
      told = this.#now();
    }
  }

  #take(design: Design, chart: Chart, plan: Plan, effort: PatternEffort): void {
    this.#planned = { design, chart, plan, materials: materialsOf(design, chart, plan), effort };
    this.#layOut(this.#planned);
  }

  #layOut({ effort, ...planned }: Planned): void {
    const document = layOutPattern({ ...planned, ...this.#sheet });
    this.#answer({ kind: 'pages', number: this.#number, effort, document });
  }
}
