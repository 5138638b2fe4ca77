/**
 * The way of one strand over the chart: along the front of its runs a whole line, behind the work a broken one from
 * where to where; its pieces in two alternating tones with their numbers; signs where pieces begin, are joined and end.
 */
import { strokeTwoTones } from '../../surface/two-tones.ts';
import { arrivals } from '../plans/plan-tables.ts';
import { isLight } from './is-light.ts';
import { cellPx, middleOf, type Pen, type PlacedOverlay } from './overlay.ts';
import { drawPlate } from './plate.ts';
import { drawSign } from './signs.ts';
import { addCells, cellsOf, stretchesInSight } from './veils.ts';

/** Below this width of a cell a line through it would hide its yarn. */
const linesFromPx = 8;
/** Below this width carries are drawn whole and in one tone: broken lines by the thousand take long. */
const brokenFromPx = 3;
/** From this width on lines may be as wide as elsewhere. */
const wideLinesFromPx = 14;
/** Below this width of a cell numbers would cover more than they name. */
const numbersFromPx = 6;

export function drawStrand(pen: Pen, overlay: PlacedOverlay, strand: number): void {
  const inSight = [...stretchesInSight(overlay, strand)];
  tintPieces(pen, overlay, inSight, strand);
  if (cellPx(overlay) >= linesFromPx) drawWay(pen, overlay, inSight);
  else drawCarries(pen, overlay, inSight);
  drawSigns(pen, overlay, inSight);
}

/** Every other piece is lighter, or darker where its yarn is light. */
function tintPieces(pen: Pen, overlay: PlacedOverlay, inSight: readonly number[], strand: number): void {
  const { stretches, strands } = overlay.planned.tables;
  const first = strands.firstPiece[strand]!;
  pen.beginPath();
  for (const s of inSight)
    if ((stretches.piece[s]! - first) % 2 === 1) addCells(pen, overlay, cellsOf(stretches, s));
  pen.fillStyle = isLight(overlay.colors[strands.yarn[strand]!]!)
    ? 'rgb(38 37 34 / 32%)'
    : 'rgb(255 250 240 / 42%)';
  pen.fill();
}

function drawWay(pen: Pen, overlay: PlacedOverlay, inSight: readonly number[]): void {
  const { stretches } = overlay.planned.tables;
  const { ratio } = overlay.placed;
  pen.beginPath();
  for (const s of inSight) {
    const row = stretches.row[s]!;
    const [fromX, y] = middleOf(overlay, { row, column: stretches.from[s]! });
    const [toX] = middleOf(overlay, { row, column: stretches.to[s]! });
    pen.moveTo(fromX, y);
    pen.lineTo(toX, y);
    if (arrivals[stretches.arrival[s]!] === 'turn') lineBack(pen, overlay, s);
    if (Math.abs(toX - fromX) > 14 * ratio) addArrow(pen, toX, y, Math.sign(toX - fromX) * 5 * ratio);
  }
  strokeTwoTones(pen, { ratio, width: cellPx(overlay) < wideLinesFromPx ? 0.75 : 1.5 });
  drawCarries(pen, overlay, inSight);
}

function drawCarries(pen: Pen, overlay: PlacedOverlay, inSight: readonly number[]): void {
  const { arrival } = overlay.planned.tables.stretches;
  pen.beginPath();
  for (const s of inSight) if (arrivals[arrival[s]!] === 'carry') lineBack(pen, overlay, s);
  const { ratio } = overlay.placed;
  const px = cellPx(overlay);
  if (px >= brokenFromPx) {
    strokeTwoTones(pen, { ratio, width: px < linesFromPx ? 1.25 : 2, dash: [5, 4] });
    return;
  }
  pen.setLineDash([]);
  pen.strokeStyle = overlay.inks.ink;
  pen.lineWidth = ratio;
  pen.stroke();
}

/** From the knot before on the strand to a stretch's first. */
export function lineBack(pen: Pen, overlay: PlacedOverlay, s: number): void {
  const { row, from, to, before } = overlay.planned.tables.stretches;
  const last = before[s]!;
  pen.moveTo(...middleOf(overlay, { row: row[last]!, column: to[last]! }));
  pen.lineTo(...middleOf(overlay, { row: row[s]!, column: from[s]! }));
}

function addArrow(pen: Pen, x: number, y: number, reach: number): void {
  pen.moveTo(x - reach, y - Math.abs(reach) * 0.7);
  pen.lineTo(x, y);
  pen.lineTo(x - reach, y + Math.abs(reach) * 0.7);
}

function drawSigns(pen: Pen, overlay: PlacedOverlay, inSight: readonly number[]): void {
  const { stretches, pieces } = overlay.planned.tables;
  const { row, from, to, piece, arrival, after } = stretches;
  const { ratio } = overlay.placed;
  const px = cellPx(overlay);
  const radius = Math.min(7, Math.max(3, px * 0.36)) * ratio;
  for (const s of inSight) {
    const kind = arrivals[arrival[s]!];
    const [x, y] = middleOf(overlay, { row: row[s]!, column: from[s]! });
    const way = Math.sign(to[s]! - from[s]!) || 1;
    // A join lies between two knots.
    if (kind === 'join')
      drawSign(pen, 'join', x - (way * overlay.size.pitchMm * overlay.placed.view.scale) / 2, y, radius);
    if (kind === 'attach') drawSign(pen, 'attach', x, y, radius);
    if (after[s] === -1) drawSign(pen, 'end', ...middleOf(overlay, { row: row[s]!, column: to[s]! }), radius);
  }
  if (px < numbersFromPx) return;
  for (const s of inSight) {
    const kind = arrivals[arrival[s]!];
    if (kind !== 'attach' && kind !== 'join') continue;
    const [x, y] = middleOf(overlay, { row: row[s]!, column: from[s]! });
    drawPlate(pen, String(pieces.number[piece[s]!]!), x, y - radius - 8 * ratio, overlay);
  }
}
