/** Paper over what does not count at the moment: still to be told apart below it, but quiet. */
import { goesRight } from '../../../shared/chart/chart.ts';
import type { CellBlock } from '../../surface/chart-bitmap.ts';
import { columnEdge, rowEdge } from '../../surface/view.ts';
import { stretchesOf } from '../plans/strand-facts.ts';
import { tyingPlace } from '../plans/tying-place.ts';
import { isLight } from './is-light.ts';
import type { Pen, PlacedOverlay } from './overlay.ts';

/** How much of what lies below is covered. Dark paper swallows more than light paper, so there is less of it. */
const cover = {
  light: { others: 0.66, untied: 0.74, all: 0.6 },
  dark: { others: 0.6, untied: 0.58, all: 0.52 },
};

/** Over all but the cells of the chosen strand, row by row: a shape with thousands of holes would take long to fill. */
export function veilOthers(pen: Pen, overlay: PlacedOverlay, strand: number): void {
  const { stretches } = overlay.planned.tables;
  const { left, right, top, bottom } = overlay.inSight;
  const own = [...stretchesInSight(overlay, strand)].filter((s) => stretches.row[s]! >= top);
  let next = 0;
  pen.beginPath();
  for (let row = top; row <= bottom; row++) {
    const holes: CellBlock[] = [];
    for (; next < own.length && stretches.row[own[next]!] === row; next++)
      holes.push(cellsOf(stretches, own[next]!));
    // A row's stretches come in its direction.
    if (holes.length > 1 && holes[0]!.left > holes[1]!.left) holes.reverse();
    let from = left;
    for (const hole of holes) {
      if (hole.left > from)
        addCells(pen, overlay, { left: from, right: hole.left - 1, top: row, bottom: row });
      from = Math.max(from, hole.right + 1);
    }
    if (from <= right) addCells(pen, overlay, { left: from, right, top: row, bottom: row });
  }
  fillPaper(pen, overlay, coverOf(overlay).others);
}

/** Over the whole chart, so that what is drawn on it stands out. */
export function veilAll(pen: Pen, overlay: PlacedOverlay): void {
  pen.beginPath();
  addCells(pen, overlay, overlay.inSight);
  fillPaper(pen, overlay, coverOf(overlay).all);
}

/** Over all rows but some (from 0). */
export function veilOtherRows(pen: Pen, overlay: PlacedOverlay, rows: readonly number[]): void {
  const { left, right } = overlay.inSight;
  pen.beginPath();
  addCells(pen, overlay, overlay.inSight);
  for (const row of rows) addCells(pen, overlay, { left, right, top: row, bottom: row });
  fillPaper(pen, overlay, coverOf(overlay).others);
}

/** Over what is not tied yet. */
export function veilUntied(pen: Pen, overlay: PlacedOverlay, knots: number): void {
  const { tables } = overlay.planned;
  const { row, column } = tyingPlace(tables, knots);
  if (column === null) return;
  const { columns, rows, startCorner } = tables;
  const isRight = goesRight(startCorner, row);
  pen.beginPath();
  addCells(pen, overlay, {
    left: isRight ? column : 0,
    right: isRight ? columns - 1 : column,
    top: row,
    bottom: row,
  });
  if (row + 1 < rows) addCells(pen, overlay, { left: 0, right: columns - 1, top: row + 1, bottom: rows - 1 });
  fillPaper(pen, overlay, coverOf(overlay).untied);
}

/** The strand's stretches in rows that are in sight, and its neighbours just outside. */
export function* stretchesInSight(overlay: PlacedOverlay, strand: number): Generator<number> {
  const { tables } = overlay.planned;
  const { row, after } = tables.stretches;
  const { top, bottom } = overlay.inSight;
  for (const s of stretchesOf(tables, strand)) {
    if (row[s]! > bottom) return;
    const next = after[s]!;
    if (row[s]! >= top || (next !== -1 && row[next]! >= top)) yield s;
  }
}

/** The cells that a stretch ties. */
export function cellsOf(
  { row, from, to }: PlacedOverlay['planned']['tables']['stretches'],
  s: number,
): CellBlock {
  return {
    left: Math.min(from[s]!, to[s]!),
    right: Math.max(from[s]!, to[s]!),
    top: row[s]!,
    bottom: row[s]!,
  };
}

export function addCells(pen: Pen, overlay: PlacedOverlay, block: CellBlock): void {
  pen.rect(...boxOf(overlay, block));
}

/** Where a block of cells lies, in device pixels. */
export function boxOf(
  { placed: { view }, size }: PlacedOverlay,
  { left, top, right, bottom }: CellBlock,
): [x: number, y: number, width: number, height: number] {
  const [x, y] = [columnEdge(view, size, left), rowEdge(view, size, top)];
  return [x, y, columnEdge(view, size, right + 1) - x, rowEdge(view, size, bottom + 1) - y];
}

function coverOf({ inks }: PlacedOverlay): (typeof cover)['light'] {
  return isLight(inks.paper) ? cover.light : cover.dark;
}

/** Fills the pen's path with paper; where parts of it overlap, they stay free. */
function fillPaper(pen: Pen, { inks }: PlacedOverlay, alpha: number): void {
  pen.globalAlpha = alpha;
  pen.fillStyle = inks.paper;
  pen.fill('evenodd');
  pen.globalAlpha = 1;
}
