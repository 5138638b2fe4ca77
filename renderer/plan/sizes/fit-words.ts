import type { DowelFit } from '../../../shared/gauge/fitting-dowel.ts';
import { formatLength } from '../../../shared/units/length.ts';
import type { Units } from '../../../shared/units/units.ts';

/** Whether the hanging fits on a dowel: 'fits, 6 cm free at each end', 'fits if you tie no looser', 'too short'. */
export function fitWords({ fits, fitsSurely, endsMm }: DowelFit, units: Units): string {
  if (!fits)
    return endsMm > 0
      ? `too short: only ${formatLength(endsMm, units, { spare: true })} free at each end`
      : 'too short';
  const free = `${formatLength(endsMm, units, { spare: true })} free at each end`;
  return fitsSurely ? `fits, ${free}` : `fits if you tie no looser, ${free}`;
}
