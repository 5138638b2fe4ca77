/**
 * All strands at once, quietly: paper lies over the chart, thinner over every other strand of a yarn, so that each is
 * seen as a stretch of its own from afar; where cells are large enough, every strand's way is drawn in its yarn's colour,
 * broken where it is carried behind the work, with a small sign where it begins and where it ends.
 */
import { arrivals } from '../plans/plan-tables.ts';
import { lineBack } from './draw-strand.ts';
import { cellPx, middleOf, type Pen, type PlacedOverlay } from './overlay.ts';
import { drawSign } from './signs.ts';
import { addCells, cellsOf, fillPaper } from './veils.ts';

/** How much paper lies over the strands with odd numbers, and over the others. */
const quiet = { odd: 0.58, even: 0.3 };
/** Below this width of a cell a line would hide the cell. */
const linesFromPx = 5;
const signsFromPx = 8;

export function drawAllStrands(pen: Pen, overlay: PlacedOverlay): void {
  // While the tying order is followed, paper lies over what is not tied yet instead.
  if (overlay.tied === null) quieten(pen, overlay);
  if (cellPx(overlay) < linesFromPx) return;
  for (const [yarn, stretches] of stretchesByYarn(overlay))
    drawWays(pen, overlay, stretches, overlay.colors[yarn]!);
  if (cellPx(overlay) >= signsFromPx) drawEnds(pen, overlay);
}

function quieten(pen: Pen, overlay: PlacedOverlay): void {
  const { stretches, strands, pieces } = overlay.planned.tables;
  for (const [parity, alpha] of [
    [1, quiet.odd],
    [0, quiet.even],
  ] as const) {
    pen.beginPath();
    for (const s of rowsInSight(overlay))
      if (strands.number[pieces.strand[stretches.piece[s]!]!]! % 2 === parity)
        addCells(pen, overlay, cellsOf(stretches, s));
    fillPaper(pen, overlay, alpha);
  }
}

function drawWays(pen: Pen, overlay: PlacedOverlay, own: readonly number[], color: string): void {
  const { stretches } = overlay.planned.tables;
  const { ratio } = overlay.placed;
  const width = Math.min(5, Math.max(1.5, cellPx(overlay) * 0.3)) * ratio;
  pen.beginPath();
  for (const s of own) {
    const row = stretches.row[s]!;
    const [fromX, y] = middleOf(overlay, { row, column: stretches.from[s]! });
    const [toX] = middleOf(overlay, { row, column: stretches.to[s]! });
    // One knot alone is a dot.
    pen.moveTo(fromX === toX ? fromX - width / 2 : fromX, y);
    pen.lineTo(fromX === toX ? fromX + width / 2 : toX, y);
    if (arrivals[stretches.arrival[s]!] === 'turn') lineBack(pen, overlay, s);
  }
  strokeEdged(pen, overlay, { color, width, dash: [] });
  pen.beginPath();
  for (const s of own) if (arrivals[stretches.arrival[s]!] === 'carry') lineBack(pen, overlay, s);
  strokeEdged(pen, overlay, { color, width: width * 0.7, dash: [4 * ratio, 3 * ratio] });
}

interface Way {
  readonly color: string;
  /** Device pixels, as are those of `dash`. */
  readonly width: number;
  readonly dash: readonly number[];
}

/** In the yarn's colour with a thin dark edge, so that it shows on every yarn. */
function strokeEdged(pen: Pen, { placed: { ratio } }: PlacedOverlay, { color, width, dash }: Way): void {
  pen.lineJoin = 'round';
  pen.lineCap = 'butt';
  pen.setLineDash([...dash]);
  pen.strokeStyle = 'rgb(38 37 34 / 55%)';
  pen.lineWidth = width + 1.5 * ratio;
  pen.stroke();
  pen.strokeStyle = color;
  pen.lineWidth = width;
  pen.stroke();
  pen.setLineDash([]);
}

function drawEnds(pen: Pen, overlay: PlacedOverlay): void {
  const { row, from, to, before, after } = overlay.planned.tables.stretches;
  const radius = Math.min(4.5, cellPx(overlay) * 0.2) * overlay.placed.ratio;
  for (const s of rowsInSight(overlay)) {
    if (before[s] === -1)
      drawSign(pen, 'attach', ...middleOf(overlay, { row: row[s]!, column: from[s]! }), radius);
    if (after[s] === -1) drawSign(pen, 'end', ...middleOf(overlay, { row: row[s]!, column: to[s]! }), radius);
  }
}

/** By the yarn's code. Strands that only pass the sight are left out: each of its rows shows its own. */
function stretchesByYarn(overlay: PlacedOverlay): Map<number, number[]> {
  const { stretches, strands, pieces } = overlay.planned.tables;
  const byYarn = new Map<number, number[]>();
  for (const s of rowsInSight(overlay)) {
    const yarn = strands.yarn[pieces.strand[stretches.piece[s]!]!]!;
    const own = byYarn.get(yarn);
    if (own) own.push(s);
    else byYarn.set(yarn, [s]);
  }
  return byYarn;
}

/** The stretches of the rows in sight. */
function* rowsInSight({ planned, inSight: { top, bottom } }: PlacedOverlay): Generator<number> {
  const { rowStart } = planned.tables;
  for (let s = rowStart[top]!; s < rowStart[bottom + 1]!; s++) yield s;
}
