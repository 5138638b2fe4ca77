/**
 * The careful person: ties row by row, and at each run looks for a parked strand of its yarn within reach, whose
 * piece still holds the carry and one knot. The nearest one is taken: the shortest carry, and among equals the one
 * that was parked last. Where none is left, a new strand is attached.
 *
 * A strand is within reach where its last knot lies at most so many cords and rows away, both inclusive, and no cell
 * of the run's row is bare from the cord where it hangs to the run's first cord.
 */
import { BARE } from '../../design/codes.ts';
import { carryLength } from '../question/carry.ts';
import type { PlanQuestion, StrandChoice } from '../question/strand-choice.ts';
import { tieRun } from '../question/tie-run.ts';
import { ParkedStrands } from './parked-strands.ts';

export function carefulPerson(question: PlanQuestion): StrandChoice {
  const { runs, tenths, chart } = question;
  const previous = new Int32Array(runs.count).fill(-1);
  const joins: number[] = [];
  /** What is left, in tenths, in the piece that tied the last knot of a run. */
  const roomAfter = new Float64Array(runs.count);
  const parked = new ParkedStrands(runs, chart.columns);
  for (let run = 0; run < runs.count; run++) {
    const found = nearest(question, parked, roomAfter, run);
    if (found !== -1) {
      previous[run] = found;
      parked.take(found);
    }
    const room = found === -1 ? tenths.room : roomAfter[found]! - carryLength(question, found, run);
    roomAfter[run] = tieRun(runs, run, tenths, room, joins);
    if (roomAfter[run]! >= tenths.knot[runs.yarn[run]!]!) parked.park(run);
  }
  return { previous, joins };
}

/** The run after which the strand hangs that is best carried to `run`; -1 where there is none. */
function nearest(
  question: PlanQuestion,
  parked: ParkedStrands,
  roomAfter: Float64Array,
  run: number,
): number {
  const { runs, tenths, chart, settings } = question;
  const start = runs.first[run]!;
  const rowStart = runs.row[run]! * chart.columns;
  let best = -1;
  let bestCarry = Number.POSITIVE_INFINITY;
  // Outwards on both sides at once, on each until a bare cell or the edge closes it.
  let leftOpen = true;
  let rightOpen = true;
  lookAlong(start, 0);
  for (let cords = 1; cords <= settings.carryMaxCords; cords++) {
    // Further out no strand can be nearer than the one that was found.
    if (tenths.carry(cords, 0) > bestCarry) break;
    leftOpen &&= isKnot(start - cords);
    rightOpen &&= isKnot(start + cords);
    if (!leftOpen && !rightOpen) break;
    if (leftOpen) lookAlong(start - cords, cords);
    if (rightOpen) lookAlong(start + cords, cords);
  }
  return best;

  function isKnot(column: number): boolean {
    return column >= 0 && column < chart.columns && chart.cells[rowStart + column] !== BARE;
  }

  /** Looks through the strands that hang at `column`, the one parked last first. */
  function lookAlong(column: number, cords: number): void {
    const knot = tenths.knot[runs.yarn[run]!]!;
    let hanging = parked.lastAt(runs.yarn[run]!, column);
    while (hanging !== -1) {
      const earlier = parked.earlier(hanging);
      const rows = runs.row[run]! - runs.row[hanging]!;
      const carry = tenths.carry(cords, rows);
      const left = roomAfter[hanging]! - knot;
      if (rows > settings.carryMaxRows || tenths.carry(0, rows) > left) {
        // Rows only grow, so it will never be within reach again.
        parked.take(hanging);
      } else if (carry > bestCarry) {
        return;
      } else if (carry <= left && (carry < bestCarry || hanging > best)) {
        best = hanging;
        bestCarry = carry;
      }
      hanging = earlier;
    }
  }
}
