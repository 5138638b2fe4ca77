import { codeOf } from '../../../shared/design/codes.ts';
import { seenAs } from '../../../shared/yarn/sight.ts';
import { studio } from '../../store/studio.ts';
import { shownPins } from '../pins/shown-pins.ts';
import { chosenStrand } from '../plan-deeds.ts';
import { plans, shownPlan } from '../plans/plans.ts';
import type { Overlay } from './overlay.ts';

/** What lies over the chart by what the studio and the Plan screen hold now; null while there is no plan. */
export function overlayNow(element: Element): Overlay | null {
  const { open, views } = studio.getState();
  const state = plans.getState();
  const planned = shownPlan(state);
  if (!open || !planned) return null;
  const style = getComputedStyle(element);
  const ink = (name: string) => style.getPropertyValue(name).trim();
  const { view, tied, carryFrom, pinAhead, overMm, rowsBy } = state;
  return {
    planned,
    view,
    strand: chosenStrand(),
    tied,
    pins: shownPins(open.design.pins, planned),
    carryFrom,
    pinAhead,
    overMm,
    rowsBy,
    inks: { ink: ink('--ink'), paper: ink('--linen'), accent: ink('--madder') },
    colors: Object.fromEntries(
      open.design.yarns.map(({ id, color }) => [codeOf(id), seenAs(views.sight, color)]),
    ),
  };
}
