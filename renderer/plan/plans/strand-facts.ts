/** What there is to say of one strand, read from the plan's tables. */
import { arrivals, type PlanTables } from './plan-tables.ts';

export interface StrandFacts {
  readonly strand: number;
  /** The yarn's code. */
  readonly yarn: number;
  /** Among the strands of its yarn, from 1. */
  readonly number: number;
  /** Numbers of its pieces, in order. */
  readonly pieces: readonly number[];
  /** First and last knot: rows and cords from 1. */
  readonly start: { readonly row: number; readonly cord: number };
  readonly end: { readonly row: number; readonly cord: number };
  readonly knots: number;
  /** Its tails among it. */
  readonly usedMm: number;
  readonly carries: number;
  readonly turns: number;
  /** Of its carries, turns left out: the most cords, and the most rows. 0 where it is never carried. */
  readonly longestCords: number;
  readonly longestRows: number;
}

export function strandFacts(tables: PlanTables, strand: number): StrandFacts {
  const { stretches, pieces, strands } = tables;
  const [first, beyond] = [strands.firstPiece[strand]!, strands.firstPiece[strand + 1]!];
  const ownPieces = Array.from({ length: beyond - first }, (_, p) => first + p);
  const sum = (of: Uint32Array | Float64Array) => ownPieces.reduce((total, p) => total + of[p]!, 0);
  const begins = pieces.first[first]!;
  const ends = pieces.last[beyond - 1]!;
  let [carries, turns, longestCords, longestRows] = [0, 0, 0, 0];
  for (const s of stretchesOf(tables, strand)) {
    const arrival = arrivals[stretches.arrival[s]!];
    if (arrival === 'turn') turns++;
    if (arrival !== 'carry') continue;
    carries++;
    const { cords, rows } = carryTo(tables, s);
    longestCords = Math.max(longestCords, cords);
    longestRows = Math.max(longestRows, rows);
  }
  return {
    strand,
    yarn: strands.yarn[strand]!,
    number: strands.number[strand]!,
    pieces: ownPieces.map((p) => pieces.number[p]!),
    start: { row: stretches.row[begins]! + 1, cord: stretches.from[begins]! + 1 },
    end: { row: stretches.row[ends]! + 1, cord: stretches.to[ends]! + 1 },
    knots: sum(pieces.knots),
    usedMm: sum(pieces.usedMm),
    carries,
    turns,
    longestCords,
    longestRows,
  };
}

/** Its stretches in the order in which they are tied. */
export function* stretchesOf({ stretches, pieces, strands }: PlanTables, strand: number): Generator<number> {
  for (let s = pieces.first[strands.firstPiece[strand]!]!; s !== -1; s = stretches.after[s]!) yield s;
}

/** Cords across and rows down of the carry or turn that leads to a stretch. */
export function carryTo({ stretches }: PlanTables, stretch: number): { cords: number; rows: number } {
  const { row, from, to, before } = stretches;
  const last = before[stretch]!;
  return { cords: Math.abs(from[stretch]! - to[last]!), rows: row[stretch]! - row[last]! };
}

/** The strand that ties a cell (from 0), or null where it is bare. */
export function strandAt(
  { columns, stretches, pieces, stretchAt }: PlanTables,
  cell: { readonly row: number; readonly column: number },
): number | null {
  const s = stretchAt[cell.row * columns + cell.column] ?? -1;
  return s === -1 ? null : pieces.strand[stretches.piece[s]!]!;
}

/** The strand of the same yarn that is attached next, or before; round and round. */
export function strandBeside({ strands }: PlanTables, strand: number, by: 1 | -1): number {
  const { count, yarn } = strands;
  let other = strand;
  do other = (other + by + count) % count;
  while (yarn[other] !== yarn[strand]);
  return other;
}
