/** What a planner is asked, with all that the maker wishes beside the settings: pins, rows already tied, another gauge. */
import type { Chart } from '../../chart/chart.ts';
import type { Design } from '../../design/design.ts';
import { good, type Result } from '../../result.ts';
import { tiedRows } from '../kept/tied-rows.ts';
import { type PinFault, readPins } from '../pins/read-pins.ts';
import type { PlanWishes } from '../plan-wishes.ts';
import type { Runs } from '../runs.ts';
import { planQuestion } from './plan-question.ts';
import type { PlanQuestion } from './strand-choice.ts';

export interface WishedQuestion {
  readonly question: PlanQuestion;
  readonly pinFaults: readonly PinFault[];
}

/** `chart` is the design's own, and `runs` are the chart's. Problems: those of `planStrands`. */
export function wishedQuestion(
  design: Pick<Design, 'cord' | 'yarns' | 'tying' | 'swatches' | 'ground' | 'pins'>,
  chart: Chart,
  { gauge, liveWish, tied }: Omit<PlanWishes, 'effort'> = {},
  runs?: Runs,
): Result<WishedQuestion> {
  const asked = planQuestion(design, chart, gauge, runs);
  if (!asked.ok) return asked;
  let question = asked.value;
  if (tied && tied.rows > 0) {
    const read = tiedRows(tied, question);
    if (!read.ok) return read;
    question = { ...question, tied: read.value };
  }
  const { pinned, faults } = readPins(question, design.pins ?? [], liveWish);
  return good({ question: pinned ? { ...question, pinned } : question, pinFaults: faults });
}
