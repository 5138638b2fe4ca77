/**
 * What is tied already, from the plan that it was tied by: its top rows stay as they are, and whatever is planned
 * below goes on from there. A strand hangs where the plan had it carried on below those rows; one that the plan ended
 * there was trimmed, and is no more.
 */
import { codeOf } from '../../design/codes.ts';
import { good, problem, type Result } from '../../result.ts';
import type { Piece, Plan, PlanSettings } from '../plan.ts';
import { carryLength } from '../question/carry.ts';
import type { PlanQuestion, TiedRows } from '../question/strand-choice.ts';
import { knotsOf } from '../runs.ts';

/** `rows` of `plan`, from the top, are tied. */
export interface TiedBy {
  readonly plan: Plan;
  readonly rows: number;
}

/**
 * Problems: `tied-otherwise` where a setting has changed that the tied rows depend on; `tied-rows-changed` where their
 * cells have.
 */
export function tiedRows({ plan, rows }: TiedBy, question: PlanQuestion): Result<TiedRows> {
  const upTo = rows === 1 ? 'Row 1 is' : `Rows 1 to ${rows} are`;
  if (!isTiedAlike(plan, question.settings)) {
    return problem(
      'tied-otherwise',
      `${upTo} tied with other lengths, or with carries that are now too long. Set these back, or plan from row 1.`,
    );
  }
  return readTied(plan, rows, question) ?? changed(upTo);
}

function changed(upTo: string): Result<TiedRows> {
  return problem(
    'tied-rows-changed',
    `${upTo} tied already, and the chart has changed there. Undo that change, or plan from row 1.`,
  );
}

function isTiedAlike({ settings: was }: Plan, now: PlanSettings): boolean {
  const lengths = ['pitchMm', 'rowHeightMm', 'slack', 'workingLengthMm', 'tailMm', 'reserveShare'] as const;
  if (lengths.some((each) => was[each] !== now[each])) return false;
  if (was.carryMaxCords > now.carryMaxCords || was.carryMaxRows > now.carryMaxRows) return false;
  const ids = Object.keys(now.knotMm) as (keyof typeof now.knotMm)[];
  return ids.every((id) => was.knotMm[id] === undefined || was.knotMm[id] === now.knotMm[id]);
}

/** Null where the plan's rows are not those of the chart. */
function readTied(plan: Plan, rows: number, question: PlanQuestion): Result<TiedRows> | null {
  const { runs, chart } = question;
  if (plan.columns !== chart.columns || plan.startCorner !== chart.startCorner || rows > chart.rows)
    return null;
  const starts = new Map<number, number>();
  let count = 0;
  while (count < runs.count && runs.row[count]! < rows) {
    starts.set(runs.row[count]! * chart.columns + runs.first[count]!, count);
    count++;
  }
  const previous = new Int32Array(count).fill(-1);
  const roomAfter = new Float64Array(count).fill(-1);
  const knotsTied = new Int32Array(count);
  const joins: [run: number, knots: number][] = [];
  for (const { yarn, pieces } of plan.strands) {
    let before = -1;
    for (const piece of pieces) {
      const tied = piece.stretches.filter(({ row }) => row <= rows);
      let used = 0;
      for (const [i, { row, from, to }] of tied.entries()) {
        const start = starts.get((row - 1) * chart.columns + from - 1);
        const run = start ?? (i === 0 ? before : -1);
        if (run < 0 || runs.yarn[run] !== codeOf(yarn)) return null;
        if (start === undefined) joins.push([run, knotsTied[run]!]);
        else {
          previous[run] = before;
          if (i > 0) used += carryLength(question, before, run);
        }
        const knots = Math.abs(to - from) + 1;
        used += knots * question.tenths.knot[runs.yarn[run]!]!;
        knotsTied[run] = knotsTied[run]! + knots;
        before = run;
      }
      if (before !== -1 && hangsBelow(piece, tied.length)) roomAfter[before] = question.tenths.room - used;
    }
  }
  if (knotsTied.some((knots, run) => knots !== knotsOf(runs, run))) return null;
  joins.sort(([a, m], [b, n]) => a - b || m - n);
  return good({ rows, choice: { previous, joins: joins.flat() }, roomAfter });
}

/** True where the piece ties something in the tied rows and goes on below. */
function hangsBelow({ stretches }: Piece, tied: number): boolean {
  return tied > 0 && tied < stretches.length;
}
