/**
 * From the maker's pins to what they demand of a chart's runs. Pins are taken in the order of the design's list; one
 * that does not fit the chart, or that can't be obeyed beside those before it, is passed over, with a sentence that
 * says why and what to do.
 */
import type { Pin } from '../../design/schema.ts';
import { Crowd } from '../improve/crowd.ts';
import type { PlanQuestion } from '../question/strand-choice.ts';
import { carryTrouble } from './carry-trouble.ts';
import { PinnedRuns } from './pinned-runs.ts';

/** Why a pin is not obeyed, and what to do. */
export interface PinFault {
  readonly pin: Pin;
  readonly sentence: string;
}

export interface ReadPins {
  /** Absent where no pin is obeyed. */
  readonly pinned?: PinnedRuns;
  readonly faults: readonly PinFault[];
}

/** `liveWish`: no more carries are pinned across any boundary than so many strands may hang there. */
export function readPins(question: PlanQuestion, pins: readonly Pin[], liveWish?: number): ReadPins {
  if (pins.length === 0) return { faults: [] };
  const pinned = new PinnedRuns(question);
  const faults: PinFault[] = [];
  const board = boardOf(question, pinned, liveWish);
  for (const pin of pins) {
    const trouble = takers[pin.kind](pin, board);
    if (trouble === null) pinned.obeyed.push(pin);
    else faults.push({ pin, sentence: `${placeOf(pin)}: ${trouble}` });
  }
  return pinned.obeyed.length === 0 ? { faults } : { pinned, faults };
}

/** What a pin is held against. */
interface Board {
  readonly question: PlanQuestion;
  readonly pinned: PinnedRuns;
  /** The runs by the cell that they end with, and by the one that they begin with. */
  readonly endAt: ReadonlyMap<number, number>;
  readonly startAt: ReadonlyMap<number, number>;
  /** For each run of the rows that are tied, the next one on its strand there; -1 where there is none. */
  readonly tiedAfter: Int32Array;
  /** The carries that can't be cut: those that are tied, and those that are pinned. Null where nothing is wished. */
  readonly crowd: Crowd | null;
}

function boardOf(question: PlanQuestion, pinned: PinnedRuns, liveWish: number | undefined): Board {
  const { runs, chart, tied } = question;
  const endAt = new Map<number, number>();
  const startAt = new Map<number, number>();
  for (let run = 0; run < runs.count; run++) {
    const row = runs.row[run]! * chart.columns;
    endAt.set(row + runs.last[run]!, run);
    startAt.set(row + runs.first[run]!, run);
  }
  const before = tied?.choice.previous ?? new Int32Array(0);
  const tiedAfter = new Int32Array(before.length).fill(-1);
  before.forEach((run, to) => {
    if (run !== -1) tiedAfter[run] = to;
  });
  const crowd = liveWish === undefined ? null : new Crowd(question, before, liveWish);
  return { question, pinned, endAt, startAt, tiedAfter, crowd };
}

/** Each makes its pin hold, or gives the reason why it can't. */
const takers: Readonly<Record<Pin['kind'], (pin: Pin, board: Board) => string | null>> = {
  cut(pin, { question, pinned, endAt, tiedAfter }) {
    const run = runAt(endAt, pin.row, pin.cord, question);
    if (run === -1) return `no run ends there now, so nothing can be cut. ${removeIt}`;
    if ((tiedAfter[run] ?? -1) !== -1) return `that is tied already, and its strand goes on. ${removeIt}`;
    if (pinned.after[run] !== -1) return `another pin carries this strand on. ${removeOne}`;
    pinned.end(run);
    return null;
  },

  'no-carry'(pin, { question, pinned, tiedAfter }) {
    const { columns, rows } = question.chart;
    if (pin.row > rows || pin.cord > columns) return `the chart does not reach so far. ${removeIt}`;
    pinned.close(pin.row - 1, pin.cord - 1);
    const passes = (to: number, from: number) => to !== -1 && pinned.passesClosed(from, to);
    const isTied = tiedAfter.some(passes);
    if (!isTied && !pinned.after.some(passes)) return null;
    pinned.open(pin.row - 1, pin.cord - 1);
    return isTied
      ? `a carry passes there in rows that are tied already. ${removeIt}`
      : `another pin carries a strand across it. ${removeOne}`;
  },

  carry(pin, board) {
    const { question, pinned, endAt, startAt, tiedAfter, crowd } = board;
    const from = runAt(endAt, pin.row, pin.cord, question);
    const to = runAt(startAt, pin.toRow ?? 0, pin.toCord ?? 0, question);
    if (from === -1) return `no run ends with the first of these knots now. ${removeIt}`;
    if (to === -1) return `no run begins with the second of these knots now. ${removeIt}`;
    if (pinned.after[from] === to || tiedAfter[from] === to) return null;
    if (to < tiedAfter.length) return `that is tied already, and otherwise. ${removeIt}`;
    const trouble = carryTrouble(question, pinned, from, to);
    if (trouble !== null) return trouble;
    if (crowd && crowd.link(from, to) > 0) {
      crowd.cut(from, to);
      pinned.undoCarry(from, to);
      return 'more strands would hang at once than you wish for. Wish for more, or remove the pin.';
    }
    return null;
  },
};

const removeIt = 'Remove the pin, or set it anew.';
const removeOne = 'Remove one of the two.';

/** -1 where the cell is none of them. Row and cord from 1. */
function runAt(
  runs: ReadonlyMap<number, number>,
  row: number,
  cord: number,
  { chart }: PlanQuestion,
): number {
  if (row < 1 || row > chart.rows || cord < 1 || cord > chart.columns) return -1;
  return runs.get((row - 1) * chart.columns + cord - 1) ?? -1;
}

function placeOf({ kind, row, cord, toRow, toCord }: Pin): string {
  const from = `Row ${row}, cord ${cord}`;
  return kind === 'carry' ? `${from} to row ${toRow}, cord ${toCord}` : from;
}
