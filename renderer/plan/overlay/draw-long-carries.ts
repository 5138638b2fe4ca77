import { strokeTwoTones } from '../../surface/two-tones.ts';
import { arrivals } from '../plans/plan-tables.ts';
import { lineBack } from './draw-strand.ts';
import { cellPx, middleOf, type Pen, type PlacedOverlay } from './overlay.ts';

/** Below this width of a cell lines are drawn whole and in one tone: there are many, and broken ones take long. */
const brokenFromPx = 3;

/** Carries over a length as broken lines behind the work, with a dot at each end. */
export function drawLongCarries(pen: Pen, overlay: PlacedOverlay): void {
  const { planned, inks, placed } = overlay;
  const { row, from, to, before } = planned.tables.stretches;
  const found = carriesInSight(overlay);
  pen.beginPath();
  for (const s of found) lineBack(pen, overlay, s);
  if (cellPx(overlay) < brokenFromPx) {
    pen.setLineDash([]);
    pen.strokeStyle = inks.ink;
    pen.lineWidth = placed.ratio;
    pen.stroke();
    return;
  }
  strokeTwoTones(pen, { ratio: placed.ratio, width: 2, dash: [5, 4] });
  pen.beginPath();
  const radius = 2.5 * placed.ratio;
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
  strokeTwoTones(pen, { ratio: placed.ratio, width: 2 });
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
