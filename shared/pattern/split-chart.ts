/**
 * How a chart is cut into pages: as few as hold cells of a readable size, then cells as large as those pages allow.
 * The sheet stays upright unless turning it saves pages. Neighbouring pages share a few rows and cords, which the
 * later page shows as already tied.
 */

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
  readonly upright: Room;
  readonly onItsSide: Room;
}

/** Cells `first` up to but not including `end`, from 0; the first `repeated` stand on the page before as well. */
export interface Stretch {
  readonly first: number;
  readonly end: number;
  readonly repeated: number;
}

export interface Split {
  readonly turned: boolean;
  readonly cellWidth: number;
  readonly cellHeight: number;
  readonly across: readonly Stretch[];
  readonly down: readonly Stretch[];
}

/**
 * Cells are never printed narrower than 4 mm, which is comfortable to read, nor lower than 2.5 mm, the least at which
 * the symbols are told apart. Larger than 12 mm they only look coarse. Two cells are repeated between pages.
 */
export const cellLimits = { minWidthMm: 4, minHeightMm: 2.5, maxWidthMm: 12, repeated: 2 } as const;

/** Throws where not even three cells fit into the room: the caller keeps it larger. */
export function splitChart(input: SplitInput): Split {
  const upright = bestSplit(input, input.upright, false);
  const onItsSide = bestSplit(input, input.onItsSide, true);
  if (!upright && !onItsSide) throw new Error('the page has no room for three cells');
  if (!upright || !onItsSide) return (upright ?? onItsSide)!;
  return pagesOf(onItsSide) < pagesOf(upright) ? onItsSide : upright;
}

export function pagesOf({ across, down }: Split): number {
  return across.length * down.length;
}

/** How many pages a side needs where each shows at most `capacity` cells; Infinity where that is not enough. */
function fewestPages(cells: number, capacity: number): number {
  if (cells <= capacity) return 1;
  const { repeated } = cellLimits;
  if (capacity <= repeated) return Number.POSITIVE_INFINITY;
  return Math.ceil((cells - repeated) / (capacity - repeated));
}

function bestSplit({ columns, rows, aspect }: SplitInput, room: Room, turned: boolean): Split | null {
  const least = Math.max(cellLimits.minWidthMm, cellLimits.minHeightMm * aspect);
  // A hair more than the room, so that a cell that fits exactly is not lost to the last bit of a fraction.
  const pages =
    fewestPages(columns, Math.floor(room.width / least + 1e-9)) *
    fewestPages(rows, Math.floor((room.height * aspect) / least + 1e-9));
  if (!Number.isFinite(pages)) return null;
  let best: Split | null = null;
  for (let across = 1; across <= pages; across++) {
    if (pages % across !== 0) continue;
    const split = splitInto({ columns, rows, aspect }, room, across, pages / across, turned);
    if (split && (!best || split.cellWidth > best.cellWidth + 1e-9)) best = split;
  }
  return best;
}

function splitInto(
  { columns, rows, aspect }: Pick<SplitInput, 'columns' | 'rows' | 'aspect'>,
  room: Room,
  acrossPages: number,
  downPages: number,
  turned: boolean,
): Split | null {
  const across = stretches(columns, acrossPages);
  const down = stretches(rows, downPages);
  if (!across || !down) return null;
  const cellWidth = Math.min(
    room.width / longest(across),
    (room.height / longest(down)) * aspect,
    cellLimits.maxWidthMm,
  );
  return { turned, cellWidth, cellHeight: cellWidth / aspect, across, down };
}

/** Null where a page would show nothing new. */
function stretches(cells: number, pages: number): Stretch[] | null {
  const { repeated } = cellLimits;
  const shown = cells + (pages - 1) * repeated;
  const each = Math.floor(shown / pages);
  if (pages > 1 && each <= repeated) return null;
  const list: Stretch[] = [];
  let first = 0;
  for (let p = 0; p < pages; p++) {
    const end = first + each + (p < shown % pages ? 1 : 0);
    list.push({ first, end, repeated: p === 0 ? 0 : repeated });
    first = end - repeated;
  }
  return list;
}

export function longest(list: readonly Stretch[]): number {
  return list.reduce((most, { first, end }) => Math.max(most, end - first), 0);
}
