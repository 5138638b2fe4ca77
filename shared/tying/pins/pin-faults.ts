import type { Chart } from '../../chart/chart.ts';
import type { Design } from '../../design/design.ts';
import type { PlanWishes } from '../plan-wishes.ts';
import { wishedQuestion } from '../question/wished-question.ts';
import type { PinFault } from './read-pins.ts';

/**
 * The pins that no plan of this chart obeys, each with a sentence that says why and what to do: they no longer fit the
 * chart, go beyond the maker's limits, or contradict one that stands before them. They stay in the design. Empty where
 * there can be no plan at all. `chart` is the design's own, `wishes` those that it is planned with.
 */
export function pinFaults(
  design: Pick<Design, 'cord' | 'yarns' | 'tying' | 'swatches' | 'ground' | 'pins'>,
  chart: Chart,
  { liveWish = design.tying.liveWish, ...wishes }: Omit<PlanWishes, 'effort'> = {},
): readonly PinFault[] {
  const asked = wishedQuestion(design, chart, liveWish === undefined ? wishes : { ...wishes, liveWish });
  return asked.ok ? asked.value.pinFaults : [];
}
