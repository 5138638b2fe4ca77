/**
 * A plan as columns of numbers: what the chart is drawn from and the panels read. Objects of a large plan would take
 * too long on their way from the worker, and to draw; typed arrays are handed over whole.
 *
 * Stretches stand in tying order, pieces in the order of the plan's strands. Everything counts from 0 but numbers that
 * a person reads: those of strands and pieces count from 1 among those of their yarn, in the order of use.
 */
import { type Chart, goesRight } from '../../../shared/chart/chart.ts';
import { codeOf } from '../../../shared/design/codes.ts';
import type { StartCorner } from '../../../shared/design/schema.ts';
import type { PlacedStretch, TyingOrder } from '../../../shared/tying/steps/tying-order.ts';
import { fromTenths, tenthsOf } from '../../../shared/tying/tenths.ts';

/** How a strand gets to a stretch. */
export const arrivals = ['attach', 'join', 'carry', 'turn'] as const;

export interface PlanTables {
  readonly columns: number;
  readonly rows: number;
  readonly startCorner: StartCorner;
  /** No carry goes further down. */
  readonly carryMaxRows: number;
  readonly stretches: {
    readonly count: number;
    readonly row: Uint16Array;
    /** First and last column that it ties, in the row's direction. */
    readonly from: Uint16Array;
    readonly to: Uint16Array;
    readonly piece: Uint32Array;
    /** Its neighbours on the strand, or -1. */
    readonly before: Int32Array;
    readonly after: Int32Array;
    /** Index in `arrivals`. */
    readonly arrival: Uint8Array;
    /** Length of the carry or turn that leads here, slack included; 0 where none does. */
    readonly carryMm: Float64Array;
    /** Knots of the hanging that are tied before it; one more at the end, all of them. */
    readonly knotsBefore: Uint32Array;
    /** Strands that hang when so many stretches are tied; one more than there are stretches. */
    readonly live: Uint32Array;
  };
  readonly pieces: {
    readonly count: number;
    readonly strand: Uint32Array;
    readonly number: Uint32Array;
    /** Its first stretch and its last. */
    readonly first: Uint32Array;
    readonly last: Uint32Array;
    readonly knots: Uint32Array;
    readonly usedMm: Float64Array;
    readonly leftOverMm: Float64Array;
  };
  readonly strands: {
    readonly count: number;
    /** The yarn's code. */
    readonly yarn: Uint8Array;
    readonly number: Uint32Array;
    /** Its first piece; one more at the end, the number of pieces. */
    readonly firstPiece: Uint32Array;
  };
  /** Where each row's stretches begin; one more at the end. */
  readonly rowStart: Uint32Array;
  /** The stretch that ties each cell, or -1. */
  readonly stretchAt: Int32Array;
}

export function planTables(order: TyingOrder): PlanTables {
  const { chart, plan, rows } = order;
  const placed = rows.flat();
  const stretches = stretchColumns(placed, order);
  const { pieces, strands } = pieceColumns(placed, order, stretches.piece);
  const rowStart = new Uint32Array(chart.rows + 1);
  rows.forEach((row, r) => {
    rowStart[r + 1] = rowStart[r]! + row.length;
  });
  return {
    columns: plan.columns,
    rows: plan.rows,
    startCorner: plan.startCorner,
    carryMaxRows: plan.settings.carryMaxRows,
    stretches,
    pieces,
    strands,
    rowStart,
    stretchAt: stretchAtCells(chart, stretches),
  };
}

/** The buffers that are handed over. */
export function buffersOf({ stretches, pieces, strands, rowStart, stretchAt }: PlanTables): ArrayBuffer[] {
  const columns = [...Object.values(stretches), ...Object.values(pieces), ...Object.values(strands)];
  return [...columns, rowStart, stretchAt].flatMap((column) =>
    typeof column === 'number' ? [] : [column.buffer as ArrayBuffer],
  );
}

/** All but the piece, which `pieceColumns` fills in. */
function stretchColumns(placed: readonly PlacedStretch[], { plan }: TyingOrder): PlanTables['stretches'] {
  const count = placed.length;
  const columns = {
    count,
    row: new Uint16Array(count),
    from: new Uint16Array(count),
    to: new Uint16Array(count),
    piece: new Uint32Array(count),
    before: new Int32Array(count).fill(-1),
    after: new Int32Array(count).fill(-1),
    arrival: new Uint8Array(count),
    carryMm: new Float64Array(count),
    knotsBefore: new Uint32Array(count + 1),
    live: new Uint32Array(count + 1),
  };
  const { carry } = tenthsOf(plan.settings);
  placed.forEach(({ stretch, before, after, arrival }, s) => {
    columns.row[s] = stretch.row - 1;
    columns.from[s] = stretch.from - 1;
    columns.to[s] = stretch.to - 1;
    columns.arrival[s] = arrivals.indexOf(arrival);
    if (before) columns.before[s] = before.at;
    if (after) columns.after[s] = after.at;
    if (before && (arrival === 'carry' || arrival === 'turn')) {
      const last = before.stretch;
      columns.carryMm[s] = fromTenths(carry(Math.abs(stretch.from - last.to), stretch.row - last.row));
    }
    columns.knotsBefore[s + 1] = columns.knotsBefore[s]! + Math.abs(stretch.to - stretch.from) + 1;
    columns.live[s + 1] = columns.live[s]! + (before ? 0 : 1) - (after ? 0 : 1);
  });
  return columns;
}

function pieceColumns(
  placed: readonly PlacedStretch[],
  { plan }: TyingOrder,
  pieceOfStretch: Uint32Array,
): Pick<PlanTables, 'pieces' | 'strands'> {
  const count = plan.totals.pieces;
  const pieces = {
    count,
    strand: new Uint32Array(count),
    number: new Uint32Array(count),
    first: new Uint32Array(count),
    last: new Uint32Array(count),
    knots: new Uint32Array(count),
    usedMm: new Float64Array(count),
    leftOverMm: new Float64Array(count),
  };
  const strands = {
    count: plan.strands.length,
    yarn: new Uint8Array(plan.strands.length),
    number: new Uint32Array(plan.strands.length),
    firstPiece: new Uint32Array(plan.strands.length + 1),
  };
  const ofYarn = new Map<string, number>();
  plan.strands.forEach((strand, s) => {
    const number = (ofYarn.get(strand.yarn) ?? 0) + 1;
    ofYarn.set(strand.yarn, number);
    const first = strands.firstPiece[s]!;
    strands.yarn[s] = codeOf(strand.yarn);
    strands.number[s] = number;
    strands.firstPiece[s + 1] = first + strand.pieces.length;
    strand.pieces.forEach(({ knots, usedMm, leftOverMm }, p) => {
      pieces.strand[first + p] = s;
      pieces.knots[first + p] = knots;
      pieces.usedMm[first + p] = usedMm;
      pieces.leftOverMm[first + p] = leftOverMm;
    });
  });
  // A strand's stretches come in tying order, so the piece in use is the one begun last.
  const inUse = Uint32Array.from(strands.firstPiece);
  placed.forEach(({ strand, pieceNumber, arrival }, s) => {
    if (arrival === 'join') inUse[strand]!++;
    const piece = inUse[strand]!;
    pieceOfStretch[s] = piece;
    if (arrival === 'attach' || arrival === 'join') {
      pieces.first[piece] = s;
      pieces.number[piece] = pieceNumber;
    }
    pieces.last[piece] = s;
  });
  return { pieces, strands };
}

function stretchAtCells(
  { columns, rows, startCorner }: Chart,
  { count, row, from, to }: PlanTables['stretches'],
): Int32Array {
  const cells = new Int32Array(columns * rows).fill(-1);
  for (let s = 0; s < count; s++) {
    const right = goesRight(startCorner, row[s]!);
    const left = row[s]! * columns + (right ? from[s]! : to[s]!);
    cells.fill(s, left, left + Math.abs(to[s]! - from[s]!) + 1);
  }
  return cells;
}
