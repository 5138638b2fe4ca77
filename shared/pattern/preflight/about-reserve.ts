/**
 * Pieces that are planned to the last knot of their length hold for the hand of the gauge, and for no looser one; and no
 * buyer ties just as the designer does.
 */
import { planAsCut } from '../../materials/bundles/plan-as-cut.ts';
import { planByHand } from '../../materials/plan-by-hand.ts';
import { usualReserveShare } from '../../tying/usual-reserve.ts';
import { counted } from '../../units/counted.ts';
import { formatPercent } from '../../units/percent.ts';
import type { PatternInput } from '../pattern-input.ts';
import type { Finding } from './finding.ts';

export function aboutReserve({ design, plan }: Pick<PatternInput, 'design' | 'plan'>): Finding[] {
  if ((plan.settings.reserveShare ?? 0) > 0) return [];
  const ids = Object.keys(plan.settings.knotMm);
  const byHand = planByHand(
    planAsCut(design, plan),
    Object.fromEntries(ids.map((id) => [id, 1 + usualReserveShare])),
  );
  const pieces = Object.values(byHand).reduce((sum, yarn) => sum + yarn.pieces, 0);
  const more = pieces - plan.totals.pieces;
  if (more <= 0) return [];
  return [
    {
      kind: 'no-reserve',
      weight: 'doubt',
      sentence: `Nothing of a piece is kept in reserve: a buyer whose hand is ${formatPercent(usualReserveShare)} looser takes ${counted(more, 'piece')} more.`,
      mend: 'Keep a reserve in each piece, or make the working length longer, among the settings of Plan.',
      place: { on: 'setting', setting: 'reserve' },
    },
  ];
}
