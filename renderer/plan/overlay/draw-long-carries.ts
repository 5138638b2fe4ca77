/**
 * Carries over a length as broken lines behind the work, with a dot at each end. Where cells are small the lines are
 * thin; where they would run into one another, their number in each part of the chart stands for them.
 */
import { strokeTwoTones } from '../../surface/two-tones.ts';
import { longCarries } from '../plans/long-carries.ts';
import { arrivals } from '../plans/plan-tables.ts';
import { drawCounts } from './draw-counts.ts';
import { lineBack } from './draw-strand.ts';
import { cellPx, middleOf, type Pen, type PlacedOverlay } from './overlay.ts';

/** Below this width of a cell lines are drawn whole and in one tone: broken ones take long. */
const brokenFromPx = 3;
/** Below this width of a cell dots at the ends would run into one another. */
const dotsFromPx = 7;
/** Of the chart's area in CSS pixels, what each line needs so that it can be told from its neighbours. */
const roomPx = 480;

export function drawLongCarries(pen: Pen, overlay: PlacedOverlay): void {
  const { row, from } = overlay.planned.tables.stretches;
  const places = () =>
    longCarries(overlay.planned.tables, overlay.overMm).map(({ stretch }) => ({
      row: row[stretch]!,
      column: from[stretch]!,
    }));
  const far = cellPx(overlay) < dotsFromPx ? places() : [];
  if (isCrowded(overlay, far.length)) drawCounts(pen, overlay, far);
  else drawLines(pen, overlay);
}

function drawLines(pen: Pen, overlay: PlacedOverlay): void {
  const px = cellPx(overlay);
  const { row, from, to, before } = overlay.planned.tables.stretches;
  const { ratio } = overlay.placed;
  const found = carriesInSight(overlay);
  pen.beginPath();
  for (const s of found) lineBack(pen, overlay, s);
  if (px < brokenFromPx) {
    pen.setLineDash([]);
    pen.strokeStyle = overlay.inks.ink;
    pen.lineWidth = 0.8 * ratio;
    pen.stroke();
    return;
  }
  if (px < dotsFromPx) {
    strokeTwoTones(pen, { ratio, width: 1.25, halo: 1, dash: [3, 2] });
    return;
  }
  strokeTwoTones(pen, { ratio, width: 2, dash: [5, 4] });
  pen.beginPath();
  const radius = 2.5 * ratio;
  for (const s of found) {
    const ends = [
      { row: row[before[s]!]!, column: to[before[s]!]! },
      { row: row[s]!, column: from[s]! },
    ];
    for (const end of ends) {
      const [x, y] = middleOf(overlay, end);
      pen.moveTo(x + radius, y);
      pen.arc(x, y, radius, 0, 2 * Math.PI);
    }
  }
  strokeTwoTones(pen, { ratio, width: 2 });
}

/** True where so many lines on the whole chart would run into one another. */
function isCrowded(
  { planned: { tables }, placed: { view, ratio }, size }: PlacedOverlay,
  lines: number,
): boolean {
  const widthPx = (tables.columns * size.pitchMm * view.scale) / ratio;
  const heightPx = (tables.rows * size.rowHeightMm * view.scale) / ratio;
  return lines * roomPx > widthPx * heightPx;
}

/** Those of which a row is in sight, by the stretch that they lead to. */
function carriesInSight({ planned, inSight, overMm }: PlacedOverlay): number[] {
  const { stretches, rowStart, carryMaxRows, rows } = planned.tables;
  const { row, before, arrival, carryMm } = stretches;
  const carry = arrivals.indexOf('carry');
  const found: number[] = [];
  const beyond = rowStart[Math.min(rows, inSight.bottom + carryMaxRows + 1)]!;
  for (let s = rowStart[inSight.top]!; s < beyond; s++) {
    if (arrival[s] !== carry || carryMm[s]! <= overMm) continue;
    if (row[before[s]!]! <= inSight.bottom) found.push(s);
  }
  return found;
}
