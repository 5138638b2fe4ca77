/**
 * How a chart is cut into pages: as few as hold cells of a readable size, then cells as large as those pages allow.
 * The first way to use a page is taken unless another saves pages. Neighbouring pages share a few rows and cords, which the
 * later page shows as already tied.
 */
import type { PrintScale } from './print-scale.ts';

export interface Room {
  /** For the cells alone, in mm. */
  readonly width: number;
  readonly height: number;
}

export interface SplitInput {
  readonly columns: number;
  readonly rows: number;
  /** A cell's width over its height. */
  readonly aspect: number;
  readonly cell: PrintScale['cell'];
  /** The ways in which a page can be used, the one that is liked best first. */
  readonly rooms: readonly Room[];
}

/** Cells `first` up to but not including `end`, from 0; the first `repeated` stand on the page before as well. */
export interface Stretch {
  readonly first: number;
  readonly end: number;
  readonly repeated: number;
}

export interface Split {
  /** Which of the rooms is used. */
  readonly room: number;
  readonly cellWidth: number;
  readonly cellHeight: number;
  readonly across: readonly Stretch[];
  readonly down: readonly Stretch[];
}

/** Cells that neighbouring pages share. */
export const REPEATED = 2;

/** Null where no room holds even three cells. */
export function splitChart(input: SplitInput): Split | null {
  const splits = input.rooms.flatMap((room, i) => bestSplit(input, room, i) ?? []);
  if (splits.length === 0) return null;
  return splits.reduce((best, split) => (pagesOf(split) < pagesOf(best) ? split : best));
}

export function pagesOf({ across, down }: Split): number {
  return across.length * down.length;
}

/** How many pages a side needs where each shows at most `capacity` cells; Infinity where that is not enough. */
function fewestPages(cells: number, capacity: number): number {
  if (cells <= capacity) return 1;
  if (capacity <= REPEATED) return Number.POSITIVE_INFINITY;
  return Math.ceil((cells - REPEATED) / (capacity - REPEATED));
}

function bestSplit({ columns, rows, aspect, cell }: SplitInput, room: Room, at: number): Split | null {
  const least = Math.max(cell.minWidthMm, cell.minHeightMm * aspect);
  // A hair more than the room, so that a cell that fits exactly is not lost to the last bit of a fraction.
  const pages =
    fewestPages(columns, Math.floor(room.width / least + 1e-9)) *
    fewestPages(rows, Math.floor((room.height * aspect) / least + 1e-9));
  if (!Number.isFinite(pages)) return null;
  let best: Split | null = null;
  for (let across = 1; across <= pages; across++) {
    if (pages % across !== 0) continue;
    const split = splitInto({ columns, rows, aspect, cell }, { ...room, at }, across, pages / across);
    if (split && (!best || split.cellWidth > best.cellWidth + 1e-9)) best = split;
  }
  return best;
}

function splitInto(
  { columns, rows, aspect, cell }: Omit<SplitInput, 'rooms'>,
  room: Room & { readonly at: number },
  acrossPages: number,
  downPages: number,
): Split | null {
  const across = stretches(columns, acrossPages);
  const down = stretches(rows, downPages);
  if (!across || !down) return null;
  const cellWidth = Math.min(
    room.width / longest(across),
    (room.height / longest(down)) * aspect,
    cell.maxWidthMm,
  );
  return { room: room.at, cellWidth, cellHeight: cellWidth / aspect, across, down };
}

/** Null where a page would show nothing new. */
function stretches(cells: number, pages: number): Stretch[] | null {
  const shown = cells + (pages - 1) * REPEATED;
  const each = Math.floor(shown / pages);
  if (pages > 1 && each <= REPEATED) return null;
  const list: Stretch[] = [];
  let first = 0;
  for (let p = 0; p < pages; p++) {
    const end = first + each + (p < shown % pages ? 1 : 0);
    list.push({ first, end, repeated: p === 0 ? 0 : REPEATED });
    first = end - REPEATED;
  }
  return list;
}

export function longest(list: readonly Stretch[]): number {
  return list.reduce((most, { first, end }) => Math.max(most, end - first), 0);
}

/** From 1, both shown. */
export function spanOf({ first, end }: Pick<Stretch, 'first' | 'end'>): { first: number; last: number } {
  return { first: first + 1, last: end };
}
