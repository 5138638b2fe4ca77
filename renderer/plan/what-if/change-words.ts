/** Changes of a variant in words. */
import type { Design } from '../../../shared/design/design.ts';
import { counted } from '../../../shared/units/counted.ts';
import { formatCutLength } from '../../../shared/units/cut-length.ts';
import { formatPercent } from '../../../shared/units/percent.ts';
import { decimal } from '../../../shared/units/round.ts';
import type { Units } from '../../../shared/units/units.ts';
import { gaugeOver } from '../leaves/gauge-over.ts';
import type { Change, ChangeKind } from './change.ts';

export const changeNames: Readonly<Record<ChangeKind, string>> = {
  'working-length': 'Another working length',
  carry: 'Other limits for carries',
  reserve: 'Another reserve of each piece',
  'live-wish': 'Fewer hanging at once',
  merge: 'One yarn merged into another',
  tidy: 'Lone knots tidied',
  gauge: 'Another gauge',
};

/** 'pieces of 180 cm', 'Dusk merged into Tide'; 'as it is' for no change at all. */
export function changesWords(changes: readonly Change[], design: Design, units: Units): string {
  if (changes.length === 0) return 'as it is';
  return changes.map((change) => changeWords(change, design, units)).join(', ');
}

function changeWords(change: Change, { yarns }: Design, units: Units): string {
  const nameOf = (id: string) => yarns.find((yarn) => yarn.id === id)?.name ?? 'a yarn';
  switch (change.kind) {
    case 'working-length':
      return `pieces of ${formatCutLength(change.mm, units)}`;
    case 'carry':
      // Without a row there is no turn either, and without a cord no carry within the row.
      if (change.cords === 0 && change.rows === 0) return 'nothing carried';
      return `carried ${counted(change.cords, 'cord')} and ${counted(change.rows, 'row')} at most`;
    case 'reserve':
      return change.share === 0
        ? 'pieces without reserve'
        : `${formatPercent(change.share)} of each piece in reserve`;
    case 'live-wish':
      return `${counted(change.strands, 'strand')} hanging at once at most`;
    case 'merge':
      return `${nameOf(change.from)} merged into ${nameOf(change.into)}`;
    case 'tidy':
      return 'lone knots tidied';
    case 'gauge': {
      const { mm, words } = gaugeOver(units);
      const [knots, rows] = [change.knotsPer10Cm, change.rowsPer10Cm].map((per) =>
        decimal((per * mm) / 100, 0.1),
      );
      return `${knots} knots and ${rows} rows per ${words}`;
    }
  }
}
