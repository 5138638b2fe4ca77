/**
 * The steps of one row, made when they are asked for: a chart of many rows is followed a row at a time.
 *
 * A yarn stays in hand from one run to the next where nothing else is tied between: it turns or is carried without
 * having been left. Tails lie behind the work: a piece's first one points back to where the row came from, its last
 * one onward (practice).
 */
import { type Chart, goesRight } from '../../chart/chart.ts';
import { fromTenths, tenthsOf } from '../tenths.ts';
import { passedBehind } from './passed-behind.ts';
import type { Place, Side, Step } from './step.ts';
import { knotsIn, type PlacedStretch, type TyingOrder } from './tying-order.ts';

/** `row` counts from 1. The first step is always the row's own. */
export function stepsOfRow(order: TyingOrder, row: number): readonly Step[] {
  const { chart, rows, knotsBefore } = order;
  const stretches = rows[row - 1];
  if (!stretches) throw new Error(`there is no row ${row}`);
  const before = knotsBefore[row - 1]!;
  const right = goesRight(chart.startCorner, row - 1);
  const lifts = liftsOf(stretches, right ? 1 : chart.columns);
  const knots = knotsBefore[row]! - before;
  const steps: Step[] = [{ kind: 'row', row, index: 0, knotsBefore: before, goesRight: right, lifts, knots }];
  let done = before;
  const add = (step: Unplaced | null) => {
    if (step) steps.push({ ...step, row, index: steps.length, knotsBefore: done });
  };
  const way = wayOf(order, right);
  for (const placed of stretches) {
    add(arriving(placed, way));
    const { from, to } = placed.stretch;
    const count = knotsIn(placed.stretch);
    add({ kind: 'knots', ...pieceOf(placed), count, from, to });
    done += count;
    add(leaving(placed, way));
  }
  return steps;
}

/** The first cord of each run but the one that begins at the row's edge; see `written-rows.ts`. */
function liftsOf(stretches: readonly PlacedStretch[], edge: number): number[] {
  return stretches.flatMap(({ arrival, stretch: { from } }) =>
    arrival === 'join' || from === edge ? [] : [from],
  );
}

interface RowWay {
  readonly onward: Side;
  readonly back: Side;
  readonly chart: Chart;
  readonly tailMm: number;
  carryMm(cords: number, rows: number): number;
}

function wayOf({ chart, plan: { settings } }: TyingOrder, right: boolean): RowWay {
  const tenths = tenthsOf(settings);
  return {
    onward: right ? 'right' : 'left',
    back: right ? 'left' : 'right',
    chart,
    tailMm: settings.tailMm,
    carryMm: (cords, rows) => fromTenths(tenths.carry(cords, rows)),
  };
}

/** A step before it has its place in the row. */
type Unplaced = Step extends infer Each
  ? Each extends Step
    ? Omit<Each, 'row' | 'index' | 'knotsBefore'>
    : never
  : never;

/** How the yarn gets to a stretch. */
function arriving(placed: PlacedStretch, { onward, back, chart, tailMm, carryMm }: RowWay): Unplaced {
  const { arrival, before, stretch } = placed;
  const piece = pieceOf(placed);
  const cord = stretch.from;
  if (before === null || arrival === 'attach')
    return { kind: 'attach', ...piece, cord, tailSide: back, tailMm };
  if (arrival === 'join') {
    return {
      kind: 'join',
      ...piece,
      oldPiece: before.pieceNumber,
      after: before.stretch.to,
      cord,
      oldTailSide: onward,
      tailSide: back,
      tailMm,
    };
  }
  const from = endOf(before);
  const to = startOf(placed);
  const cords = Math.abs(to.cord - from.cord);
  const rows = to.row - from.row;
  const lengthMm = carryMm(cords, rows);
  const inHand = isNext(before, placed);
  // The row above went the other way, so it went on to where this one comes from.
  if (arrival === 'turn') return { kind: 'turn', ...piece, from, to, side: back, lengthMm, inHand };
  const behind = passedBehind(chart, from, to);
  // Where the strand hangs ahead of its run, it comes back behind what the row has not reached yet.
  const ahead = behind.length > 0 && to.cord < from.cord === (onward === 'right');
  return { kind: 'carry', ...piece, from, to, cords, rows, lengthMm, behind, ahead, inHand };
}

/** What becomes of the yarn after a stretch; null where it stays in hand, or is joined, which is a step of its own. */
function leaving(placed: PlacedStretch, { onward, tailMm }: RowWay): Unplaced | null {
  const { after, stretch } = placed;
  const piece = pieceOf(placed);
  if (after === null) return { kind: 'end', ...piece, cord: stretch.to, tailSide: onward, tailMm };
  if (isNext(placed, after)) return null;
  return { kind: 'leave', ...piece, cord: stretch.to, until: startOf(after) };
}

function isNext(first: PlacedStretch, second: PlacedStretch): boolean {
  return second.at === first.at + 1;
}

function pieceOf({ yarn, strand, pieceNumber }: PlacedStretch) {
  return { yarn, strand: strand + 1, piece: pieceNumber };
}

function startOf({ stretch }: PlacedStretch): Place {
  return { row: stretch.row, cord: stretch.from };
}

function endOf({ stretch }: PlacedStretch): Place {
  return { row: stretch.row, cord: stretch.to };
}
