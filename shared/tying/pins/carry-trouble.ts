/**
 * Pins a carry from one run to another, where a plan can have it: within the maker's limits, not behind bare cells, and
 * with pieces that hold it. What it costs does not matter: the maker wants it.
 */
import { BARE } from '../../design/codes.ts';
import { counted } from '../../units/counted.ts';
import { hanging, yarnToTie } from '../pieces/best-pieces.ts';
import { beginPieces, noPieces, type OpenPieces, tieOpenPieces } from '../pieces/open-pieces.ts';
import { carryLength } from '../question/carry.ts';
import type { PlanQuestion } from '../question/strand-choice.ts';
import { knotsOf } from '../runs.ts';
import type { PinnedRuns } from './pinned-runs.ts';

/** Null where the carry is pinned now; else why it can't be, and what to do. `to` is not tied yet. */
export function carryTrouble(
  question: PlanQuestion,
  pinned: PinnedRuns,
  from: number,
  to: number,
): string | null {
  const trouble = troubleOfRuns(question, from, to) ?? troubleOfPins(pinned, from, to);
  if (trouble !== null) return trouble;
  pinned.carry(from, to);
  if (piecesHold(question, pinned, to)) return null;
  pinned.undoCarry(from, to);
  return 'no piece would hold this carry with a knot on either side. Make the working length longer, or remove the pin.';
}

function troubleOfRuns(question: PlanQuestion, from: number, to: number): string | null {
  const { runs, settings, chart, tied } = question;
  if (runs.yarn[from] !== runs.yarn[to])
    return 'these are two yarns, and a strand is of one. Remove the pin.';
  if (to <= from) return 'the second is tied before the first. Remove the pin.';
  const tiedCount = tied?.choice.previous.length ?? 0;
  if (from < tiedCount && tied!.roomAfter[from] === -1)
    return 'no strand hangs there any more, in the rows that are tied already. Remove the pin.';
  const cords = Math.abs(runs.first[to]! - runs.last[from]!);
  const rows = runs.row[to]! - runs.row[from]!;
  if (cords > settings.carryMaxCords)
    return `that is ${counted(cords, 'cord')}, and you carry over at most ${settings.carryMaxCords}. Allow longer carries, or remove the pin.`;
  if (rows > settings.carryMaxRows)
    return `that is ${counted(rows, 'row')}, and you carry over at most ${settings.carryMaxRows}. Allow longer carries, or remove the pin.`;
  const [low, high] = [runs.first[to]!, runs.last[from]!].sort((a, b) => a - b) as [number, number];
  const row = runs.row[to]! * chart.columns;
  return chart.cells.subarray(row + low, row + high + 1).includes(BARE)
    ? `it would lie behind bare cells of row ${runs.row[to]! + 1}, where it shows. Remove the pin.`
    : null;
}

function troubleOfPins(pinned: PinnedRuns, from: number, to: number): string | null {
  if (pinned.mustEnd(from)) return 'another pin cuts the strand there. Remove one of the two.';
  if (pinned.after[from] !== -1)
    return 'another pin carries the strand of the first to other knots. Remove one of the two.';
  if (pinned.before[to] !== -1) return 'another pin carries a strand to the second. Remove one of the two.';
  if (pinned.passesClosed(from, to))
    return 'another pin lets no carry pass on its way. Remove one of the two.';
  return null;
}

/**
 * Whether the pinned carries that lead to and from `to` can be tied in a row. Nothing leaves more room for them than
 * a fresh piece at their first run, so that is tried; or what is left where their strand hangs below tied rows.
 */
function piecesHold(question: PlanQuestion, pinned: PinnedRuns, to: number): boolean {
  const { runs, tied } = question;
  let first = to;
  while (pinned.before[first] !== -1) first = pinned.before[first]!;
  const yarn = yarnToTie(question, runs.yarn[first]!);
  let open: OpenPieces = noPieces();
  if (tied && first < tied.choice.previous.length) open = hanging(question, first)!;
  else beginPieces(open, knotsOf(runs, first), yarn, pinned.held(first));
  let before = first;
  for (let run = pinned.after[first]!; run !== -1; run = pinned.after[run]!) {
    const into = noPieces();
    const carry = carryLength(question, before, run);
    tieOpenPieces(into, open, carry, carry, knotsOf(runs, run), yarn, pinned.held(run));
    if (into.size === 0) return false;
    open = into;
    before = run;
  }
  return true;
}
