/** All that lies over the chart on the Plan screen, by the view that was chosen. */
import { strokeTwoTones } from '../../surface/two-tones.ts';
import { drawPins } from '../pins/draw-pins.ts';
import type { PlanView } from '../plans/plans.ts';
import { tyingPlace } from '../plans/tying-place.ts';
import { drawAllStrands } from './draw-all-strands.ts';
import { drawLive } from './draw-live.ts';
import { drawLongCarries } from './draw-long-carries.ts';
import { drawLooseEnds } from './draw-loose-ends.ts';
import { drawStrand } from './draw-strand.ts';
import { drawWorstRows } from './draw-worst-rows.ts';
import type { Pen, PlacedOverlay } from './overlay.ts';
import { addCells, veilAll, veilOthers, veilUntied } from './veils.ts';

export function drawOverlay(pen: Pen, overlay: PlacedOverlay): void {
  const { strand, tied, view } = overlay;
  // Strands that are not tied yet are faint; marks and figures are read on tied rows and on others.
  if (tied !== null && view !== 'strands') veilUntied(pen, overlay, tied);
  views[view](pen, overlay);
  if (strand !== null && view !== 'strands') drawStrand(pen, overlay, strand);
  if (tied !== null && view === 'strands') veilUntied(pen, overlay, tied);
  if (tied !== null) outlineNext(pen, overlay, tied);
  drawPins(pen, overlay);
}

const views: Readonly<Record<PlanView, (pen: Pen, overlay: PlacedOverlay) => void>> = {
  strands(pen, overlay) {
    if (overlay.strand === null) drawAllStrands(pen, overlay);
    else {
      veilOthers(pen, overlay, overlay.strand);
      drawStrand(pen, overlay, overlay.strand);
    }
  },
  live(pen, overlay) {
    veilAll(pen, overlay);
    drawLive(pen, overlay);
  },
  'loose-ends'(pen, overlay) {
    veilAll(pen, overlay);
    drawLooseEnds(pen, overlay);
  },
  'long-carries'(pen, overlay) {
    veilAll(pen, overlay);
    drawLongCarries(pen, overlay);
  },
  'worst-rows': drawWorstRows,
};

function outlineNext(pen: Pen, overlay: PlacedOverlay, knots: number): void {
  const { row, column } = tyingPlace(overlay.planned.tables, knots);
  if (column === null) return;
  pen.beginPath();
  addCells(pen, overlay, { left: column, right: column, top: row, bottom: row });
  strokeTwoTones(pen, { ratio: overlay.placed.ratio, width: 2 });
}
