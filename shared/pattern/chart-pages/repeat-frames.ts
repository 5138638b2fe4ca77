/**
 * The frame around the first repeat of a band of rows: a double line, so that neither colour nor width alone tells it from the
 * rules after every tenth row and cord. Where a page ends within the repeat, the frame is open and goes on on the next one.
 */
import type { Repeat } from '../../chart/repeats.ts';
import type { PathItem, PathStep } from '../page/page.ts';
import { inks } from '../page/style.ts';
import type { Stretch } from './split-chart.ts';

export interface FramedCells {
  /** Top left corner of the cells. */
  readonly x: number;
  readonly y: number;
  readonly cellWidth: number;
  readonly cellHeight: number;
  readonly across: Pick<Stretch, 'first' | 'end'>;
  readonly down: Pick<Stretch, 'first' | 'end'>;
  readonly repeats: readonly Repeat[];
}

export function repeatFrames({ repeats, cellWidth, cellHeight, ...place }: FramedCells): PathItem[] {
  const steps = repeats.flatMap((repeat) => frameSteps(repeat, { cellWidth, cellHeight, ...place }));
  return doubleLine(steps, Math.min(cellWidth, cellHeight));
}

/** `size`: the lesser side of a cell beside it. */
export function doubleLine(steps: readonly PathStep[], size: number): PathItem[] {
  if (steps.length === 0) return [];
  const fine = Math.min(1, size / 3);
  const line = { kind: 'path', steps } as const;
  return [
    { ...line, stroke: inks.text, strokeMm: 1.35 * fine },
    { ...line, stroke: inks.paper, strokeMm: 0.5 * fine },
  ];
}

/** None of the frame where a page shows none of its cells. */
function frameSteps(
  { fromRow, toRow, fromColumn, columns }: Repeat,
  { x, y, cellWidth, cellHeight, across, down }: Omit<FramedCells, 'repeats'>,
): PathStep[] {
  const first = Math.max(fromColumn, across.first);
  const end = Math.min(fromColumn + columns, across.end);
  const top = Math.max(fromRow, down.first);
  const below = Math.min(toRow + 1, down.end);
  if (first >= end || top >= below) return [];
  const atX = (column: number) => x + (column - across.first) * cellWidth;
  const atY = (row: number) => y + (row - down.first) * cellHeight;
  const corners = [
    [atX(first), atY(top)],
    [atX(end), atY(top)],
    [atX(end), atY(below)],
    [atX(first), atY(below)],
  ] as const;
  // In the order of the corners, each the side from one to the next.
  const isClosed = [top === fromRow, end === fromColumn + columns, below === toRow + 1, first === fromColumn];
  return aroundCorners(corners, isClosed);
}

/** One line as far as sides follow each other, so that its corners are whole; it begins behind a side that is open. */
function aroundCorners(
  corners: readonly (readonly [x: number, y: number])[],
  isClosed: readonly boolean[],
): PathStep[] {
  const open = isClosed.indexOf(false);
  const steps: PathStep[] = [];
  for (let i = 1; i <= corners.length; i++) {
    const side = (open + i) % corners.length;
    if (!isClosed[side]) continue;
    const follows = i > 1 && isClosed[(side + corners.length - 1) % corners.length];
    if (!follows) steps.push(['M', ...corners[side]!]);
    steps.push(['L', ...corners[(side + 1) % corners.length]!]);
  }
  return open === -1 ? [...steps.slice(0, -1), ['Z']] : steps;
}
