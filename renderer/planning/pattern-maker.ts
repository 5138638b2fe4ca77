/**
 * Makes a pattern's pages in a worker, where nobody waits for it: at once from a quick plan, and then from the full one,
 * which is what is saved and printed. Another paper or other units need no other plan. Between two steps of planning it
 * listens for what else is wished.
 */
import type { Chart } from '../../shared/chart/chart.ts';
import type { Design } from '../../shared/design/design.ts';
import type { Edition } from '../../shared/design/schema.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import { type Copy, designForCopy } from '../../shared/pattern/copy.ts';
import { editionInForce, latestInForce } from '../../shared/pattern/editions/edition.ts';
import { firstTexts } from '../../shared/pattern/first-texts.ts';
import type { Imprint } from '../../shared/pattern/imprint.ts';
import { layOutPattern } from '../../shared/pattern/lay-out-pattern.ts';
import type { PatternDocument } from '../../shared/pattern/page/page.ts';
import type { Paper } from '../../shared/pattern/page/papers.ts';
import type { PatternInput } from '../../shared/pattern/pattern-input.ts';
import type { Finding } from '../../shared/pattern/preflight/finding.ts';
import { preflight } from '../../shared/pattern/preflight/preflight.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { planSteps } from '../../shared/tying/plan-steps.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import type { Units } from '../../shared/units/units.ts';

export type PatternEffort = 'quick' | 'full';

/** What the pages are laid out for. */
export interface PatternSheet {
  readonly paper: Paper;
  readonly units: Units;
  readonly copy: Copy;
  readonly imprint: Imprint;
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
  /** The same chart for another sheet, or composed otherwise: only another hand needs another plan. */
  | {
      readonly kind: 'sheet';
      readonly number: number;
      readonly pattern: Design['pattern'];
      readonly sheet: PatternSheet;
    }
  /** The full plan is not wanted any more. */
  | { readonly kind: 'stop' };

/** Answers carry the number of the last question that was heard. */
export type PatternAnswer =
  | {
      readonly kind: 'pages';
      readonly number: number;
      readonly effort: PatternEffort;
      readonly document: PatternDocument;
      /** What would disappoint a buyer. */
      readonly findings: readonly Finding[];
      /** The full plan of the design's own hand, which an edition is published with; null while it is not there. */
      readonly plan: Plan | null;
      /** The texts that a designer may write anew, as they are first written. */
      readonly firstTexts: ReturnType<typeof firstTexts>;
    }
  /** Share of the full plan that is done. */
  | { readonly kind: 'progress'; readonly number: number; readonly done: number }
  | { readonly kind: 'problem'; readonly number: number; readonly sentence: string };

interface Planned extends Pick<PatternInput, 'design' | 'chart' | 'plan' | 'materials'> {
  readonly edition: Edition | null;
  readonly leftHanded: boolean;
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
  #sheet: PatternSheet | null = null;
  /** The design as it was given, whichever hand the copy is for. */
  #given: { readonly design: Design; readonly chart: Chart } | null = null;
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
        this.#given = { design: question.design, chart: question.chart };
        await this.#make();
        return;
      case 'sheet':
        this.#number = question.number;
        await this.#turnTo(question);
        return;
      case 'stop':
        this.#turn++;
    }
  }

  async #turnTo({ number, sheet, pattern }: Extract<PatternQuestion, { kind: 'sheet' }>): Promise<void> {
    this.#sheet = sheet;
    if (!this.#given) return;
    this.#given = { ...this.#given, design: composedBy(this.#given.design, pattern) };
    // An edition that is in force again is printed by the plan that it was published with.
    const edition = latestInForce(this.#given.design, this.#given.chart);
    const isAgain = edition !== null && edition !== this.#planned?.edition;
    if (isAgain || this.#planned?.leftHanded !== sheet.copy.leftHanded) return this.#make();
    // Hundreds of pages take a while: of what is written letter by letter only the last is laid out.
    await this.#pause();
    if (this.#number !== number || !this.#planned) return;
    this.#planned = { ...this.#planned, design: composedBy(this.#planned.design, pattern), edition };
    this.#layOut(this.#planned);
  }

  async #make(): Promise<void> {
    const turn = ++this.#turn;
    this.#planned = null;
    const given = this.#given!;
    const inForce = editionInForce(given.design, given.chart);
    const { leftHanded } = this.#sheet!.copy;
    const design = designForCopy(given.design, { leftHanded });
    const chart = { ...given.chart, startCorner: design.startCorner };
    const tied = { design, chart, leftHanded };
    if (inForce && design === given.design) return this.#take(tied, inForce.plan, 'full');
    const quick = planStrands(design, chart, { effort: 'quick' });
    if (!quick.ok) {
      this.#answer({ kind: 'problem', number: this.#number, sentence: quick.problem.sentence });
      return;
    }
    this.#take(tied, quick.value, 'quick');
    const full = await this.#planFully(design, chart, turn);
    if (full) this.#take(tied, full, 'full');
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

  #take(
    tied: Omit<Planned, 'plan' | 'materials' | 'effort' | 'edition'>,
    plan: Plan,
    effort: PatternEffort,
  ): void {
    // Composed otherwise while the plan was made.
    const design = composedBy(tied.design, this.#given!.design.pattern);
    const edition = latestInForce(this.#given!.design, this.#given!.chart);
    const materials = materialsOf(design, tied.chart, plan);
    this.#planned = { ...tied, design, plan, materials, effort, edition };
    this.#layOut(this.#planned);
  }

  #layOut({ effort, leftHanded: _, ...planned }: Planned): void {
    const input = { ...planned, ...this.#sheet! };
    const document = layOutPattern(input);
    const findings = preflight(input, document);
    const isOwn = planned.design.startCorner === this.#given!.design.startCorner;
    const plan = effort === 'full' && isOwn ? planned.plan : null;
    this.#answer({
      kind: 'pages',
      number: this.#number,
      effort,
      document,
      findings,
      plan,
      firstTexts: firstTexts(input),
    });
  }
}

function composedBy(design: Design, pattern: Design['pattern']): Design {
  const { pattern: _, ...rest } = design;
  return pattern === undefined ? rest : { ...rest, pattern };
}
