/**
 * The careful person told in the plainest way: one cell after another, all strands looked at for each run. Slow and
 * separate from the studio's planner, which must tie the very same.
 */
import { type Chart, goesRight } from '../../shared/chart/chart.ts';
import { BARE, yarnIdOf } from '../../shared/design/codes.ts';
import type { PlanSettings, Stretch } from '../../shared/tying/plan.ts';

interface Hanging {
  code: number;
  pieces: Stretch[][];
  /** Tenths of a mm left in the last piece. */
  left: number;
  /** The last knot: row and cord from 1, and when it was tied. */
  row: number;
  cord: number;
  since: number;
}

/** For each strand, in the order of attaching, the stretches of its pieces. */
export function plainCarefulPerson(settings: PlanSettings, chart: Chart): Stretch[][][] {
  const strands: Hanging[] = [];
  const { workingLengthMm, tailMm, reserveShare = 0 } = settings;
  const planned = Math.floor(Math.round(workingLengthMm * 10) * (1 - reserveShare) + 1e-6);
  const whole = planned - 2 * Math.round(tailMm * 10);
  const { columns, rows, cells } = chart;
  let clock = 0;
  for (let row = 1; row <= rows; row++) {
    const right = goesRight(chart.startCorner, row - 1);
    const at = (cord: number) => cells[(row - 1) * columns + cord - 1];
    let inHand = null as Hanging | null;
    for (let n = 1; n <= columns; n++) {
      const cord = right ? n : columns + 1 - n;
      const code = at(cord)!;
      clock++;
      if (code === BARE) {
        inHand = null;
        continue;
      }
      const knot = Math.round(settings.knotMm[yarnIdOf(code)]! * 10);
      if (inHand?.code !== code) {
        const carry = (strand: Hanging) =>
          Math.round(
            settings.slack *
              (Math.abs(strand.cord - cord) * settings.pitchMm + (row - strand.row) * settings.rowHeightMm) *
              10 +
              1e-6,
          );
        const reach = strands.filter((strand) => {
          if (strand.code !== code) return false;
          if (Math.abs(strand.cord - cord) > settings.carryMaxCords) return false;
          if (row - strand.row > settings.carryMaxRows) return false;
          for (let c = Math.min(strand.cord, cord); c <= Math.max(strand.cord, cord); c++) {
            if (at(c) === BARE) return false;
          }
          return carry(strand) + knot <= strand.left;
        });
        reach.sort((a, b) => carry(a) - carry(b) || b.since - a.since);
        inHand = reach[0] ?? null;
        if (inHand) {
          inHand.left -= carry(inHand);
          inHand.pieces.at(-1)!.push({ row, from: cord, to: cord });
        } else {
          inHand = { code, pieces: [[{ row, from: cord, to: cord }]], left: whole, row, cord, since: clock };
          strands.push(inHand);
        }
      } else if (inHand.left < knot) {
        inHand.left = whole;
        inHand.pieces.push([{ row, from: cord, to: cord }]);
      }
      inHand.left -= knot;
      inHand.pieces.at(-1)!.at(-1)!.to = cord;
      Object.assign(inHand, { row, cord, since: clock });
    }
  }
  return strands.map(({ pieces }) => pieces);
}
