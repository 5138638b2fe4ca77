/**
 * The cut list of the cords. A cut cord is folded in half over the dowel and gives the cords of two columns; both
 * of its legs are as long as the longer one must be, and the fringe is trimmed to its outline last.
 *
 * Here the cords are the core of the work and run almost straight, so a leg is
 *   mount + knotted height x (1 + take-up) + fringe + trim.
 */
import type { Design } from '../design/design.ts';
import type { CordGroup, Materials } from '../materials/materials.ts';
import { wholeSteps } from '../units/round.ts';
import { fringeMm } from './fringe.ts';
import type { Gauge } from './gauge.ts';
import { headsOf } from './heads.ts';

type Hung = Pick<Design, 'columns' | 'rows' | 'cord' | 'dowel' | 'fringe'>;

export function cutList(
  design: Hung,
  gauge: Pick<Gauge, 'pitchMm' | 'rowHeightMm' | 'takeUp'>,
): Omit<Materials['cords'], 'uncertain'> {
  const { cord, columns } = design;
  const mountPerLegMm = mountMm(cord.diameterMm, design.dowel.diameterMm);
  const groups = groupsOf(design, mountPerLegMm + design.rows * gauge.rowHeightMm * (1 + gauge.takeUp));
  const totalMm = groups.reduce((sum, { count, cutMm }) => sum + count * cutMm, 0);
  const heads = headsOf(design, gauge);
  return {
    name: cord.name,
    diameterMm: cord.diameterMm,
    cutCords: Math.ceil(columns / 2),
    spareLegs: columns % 2 === 0 ? 0 : 1,
    mountPerLegMm,
    groups,
    totalMm,
    massG: (totalMm / 1000) * cord.gPerM,
    headWidthMm: heads.headWidthMm,
    headsSpread: heads.spread,
  };
}

/**
 * Cord that one leg spends on its half of a lark's head, in mm, measured along the middle of the cord.
 *
 * With D the cord's and Dd the dowel's diameter, a turn around the dowel is pi (Dd + D). From the middle of the
 * fold, a leg runs along the bar that lies across both legs in front, half of which is 2 D; up behind the dowel and
 * over its top, half a turn; and down in front of it under the bar, the other half. So
 *   mount = pi (Dd + D) / 2 + pi (Dd + D) / 2 + 2 D.
 * Derived, no published figure; value to be confirmed by measuring.
 */
function mountMm(cordMm: number, dowelMm: number): number {
  const halfTurnMm = (Math.PI * (dowelMm + cordMm)) / 2;
  return 2 * halfTurnMm + 2 * cordMm;
}

/** Cut cords by length, the longest first. `aboveFringeMm`: what a leg takes before its fringe begins. */
function groupsOf({ columns, cord, fringe }: Hung, aboveFringeMm: number): CordGroup[] {
  const fringes = fringeMm(columns, fringe);
  const byLength = new Map<number, CordGroup>();
  for (let left = 0; left < columns; left += 2) {
    const right = Math.min(left + 1, columns - 1);
    const legMm = aboveFringeMm + Math.max(fringes[left]!, fringes[right]!) + cord.trimMm;
    const steps = wholeSteps(2 * legMm, cord.roundUpMm, { enough: true });
    const group = byLength.get(steps) ?? { count: 0, cutMm: steps * cord.roundUpMm, columns: [] };
    byLength.set(steps, group);
    group.count++;
    const last = group.columns.at(-1);
    if (last?.to === left) last.to = right + 1;
    else group.columns.push({ from: left + 1, to: right + 1 });
  }
  return [...byLength.values()].sort((a, b) => b.cutMm - a.cutMm);
}
