/**
 * All strands at once, quietly: paper lies over the chart, thinner over every other strand of a yarn, so that each is
 * seen as a stretch of its own from afar; where cells are large enough, every strand's way is drawn in its yarn's colour,
 * broken where it is carried behind the work, with a small sign where it begins and where it ends.
 */
import { arrivals } from '../plans/plan-tables.ts';
import { lineBack } from './draw-strand.ts';
import { isLight } from './is-light.ts';
import { cellPx, middleOf, type Pen, type PlacedOverlay } from './overlay.ts';
import { drawSign } from './signs.ts';
import { strandVeil } from './strand-veil.ts';
import { boxOf } from './veils.ts';

/** Below this width of a cell a line would hide the cell. */
const linesFromPx = 5;
const signsFromPx = 8;
/** Below this width carries are drawn whole: broken lines by the thousand take long. */
const brokenFromPx = 9;
/** Carries in one path, and strands' ends in sight that are shown. */
const inPath = 200;
const mostEnds = 700;
/** Lines have a thin edge, so that each shows on its own yarn: dark on light paper, light on dark paper. */
const edges = { dark: 'rgb(38 37 34 / 55%)', light: 'rgb(255 250 240 / 45%)' };

export function drawAllStrands(pen: Pen, overlay: PlacedOverlay): void {
  // While the tying order is followed, paper lies over what is not tied yet instead.
  if (overlay.tied === null) quieten(pen, overlay);
  if (cellPx(overlay) < linesFromPx) return;
  for (const [yarn, stretches] of stretchesByYarn(overlay))
    drawWays(pen, overlay, stretches, overlay.colors[yarn]!);
  if (cellPx(overlay) >= signsFromPx) drawEnds(pen, overlay);
}

function quieten(pen: Pen, overlay: PlacedOverlay): void {
  const { tables } = overlay.planned;
  const whole = { left: 0, right: tables.columns - 1, top: 0, bottom: tables.rows - 1 };
  pen.imageSmoothingEnabled = false;
  pen.drawImage(strandVeil(tables, overlay.inks.paper), ...boxOf(overlay, whole));
}

/** The way of one yarn's strands. Bars one by one: a path of thousands of lines takes ten times as long. */
function drawWays(pen: Pen, overlay: PlacedOverlay, own: readonly number[], color: string): void {
  const { arrival } = overlay.planned.tables.stretches;
  const { ratio } = overlay.placed;
  const widthPx = Math.round(Math.min(5, Math.max(1.5, cellPx(overlay) * 0.3)) * ratio);
  const edgePx = Math.max(1, Math.round(0.75 * ratio));
  const bars = own.flatMap((s) => barsOf(overlay, s, widthPx));
  pen.fillStyle = edgeOf(overlay);
  for (const [x, y, width, height] of bars)
    pen.fillRect(x - edgePx, y - edgePx, width + 2 * edgePx, height + 2 * edgePx);
  pen.fillStyle = color;
  for (const bar of bars) pen.fillRect(...bar);
  const carries = own.filter((s) => arrivals[arrival[s]!] === 'carry');
  for (let first = 0; first < carries.length; first += inPath)
    drawCarries(pen, overlay, carries.slice(first, first + inPath), { color, widthPx: widthPx * 0.7 });
}

function edgeOf({ inks }: PlacedOverlay): string {
  return isLight(inks.paper) ? edges.dark : edges.light;
}

type Bar = readonly [x: number, y: number, width: number, height: number];

/** Along the front of a stretch, and down the turn that leads to it: device pixels. */
function barsOf(overlay: PlacedOverlay, s: number, widthPx: number): Bar[] {
  const { row, from, to, arrival, before } = overlay.planned.tables.stretches;
  const corner = (r: number, column: number) =>
    middleOf(overlay, { row: r, column }).map((at) => Math.round(at - widthPx / 2)) as [number, number];
  const [fromX, y] = corner(row[s]!, from[s]!);
  const [toX] = corner(row[s]!, to[s]!);
  const front: Bar = [Math.min(fromX, toX), y, Math.abs(toX - fromX) + widthPx, widthPx];
  if (arrivals[arrival[s]!] !== 'turn') return [front];
  const [x, top] = corner(row[before[s]!]!, to[before[s]!]!);
  return [front, [x, top, widthPx, y - top + widthPx]];
}

function drawCarries(
  pen: Pen,
  overlay: PlacedOverlay,
  carries: readonly number[],
  { color, widthPx }: { readonly color: string; readonly widthPx: number },
): void {
  const { ratio } = overlay.placed;
  const dash = cellPx(overlay) >= brokenFromPx ? [4 * ratio, 3 * ratio] : [];
  pen.beginPath();
  for (const s of carries) lineBack(pen, overlay, s);
  pen.lineCap = 'butt';
  pen.setLineDash(dash);
  pen.strokeStyle = edgeOf(overlay);
  pen.lineWidth = widthPx + 1.5 * ratio;
  pen.stroke();
  pen.strokeStyle = color;
  pen.lineWidth = widthPx;
  pen.stroke();
  pen.setLineDash([]);
}

/** Where strands begin and end, unless those are so many that nothing else would be seen. */
function drawEnds(pen: Pen, overlay: PlacedOverlay): void {
  const { row, from, to, before, after } = overlay.planned.tables.stretches;
  const radius = Math.min(4.5, cellPx(overlay) * 0.2) * overlay.placed.ratio;
  const ends = [...rowsInSight(overlay)].filter((s) => before[s] === -1 || after[s] === -1);
  if (ends.length > mostEnds) return;
  for (const s of ends) {
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
