import { EMPTY } from '../../design/codes.ts';
import type { Design } from '../../design/design.ts';
import type { Chart } from '../chart.ts';
import { type Cell, isInside } from './cell.ts';
import { markedStrips } from './marked-strips.ts';
import { noStrips, type Strips } from './strips.ts';
import { touchingCells } from './touching-cells.ts';

/**
 * How far a fill goes. `touching`: the cells that show the yarn of the first one and touch it by their sides.
 * `everywhere`: all cells of the chart that show it. `to-boundary`: whatever yarn they show, the cells that touch the
 * first one, up to what is drawn on any shown layer; see `drawnCells`.
 */
export type FillScope = 'touching' | 'everywhere' | 'to-boundary';

/**
 * The cells that a fill pressed at `start` gives a code. It goes by what is seen, whatever layer that comes from;
 * `chart` is the design's own, flattened. None where `start` lies outside, or where all shows the code already.
 */
export function fillStrips(
  design: Design,
  chart: Chart,
  start: Cell,
  code: number,
  scope: FillScope,
): Strips {
  if (!isInside(start, chart)) return noStrips;
  const place = start.row * chart.columns + start.column;
  const drawn = scope === 'to-boundary' ? drawnCells(design) : null;
  if (drawn?.[place] === EMPTY) return markedStrips(touchingCells(drawn, chart, start), 1, chart, code);
  const seen = chart.cells[place]!;
  if (seen === code) return noStrips;
  if (scope === 'everywhere') return markedStrips(chart.cells, seen, chart, code);
  return markedStrips(touchingCells(chart.cells, chart, start), 1, chart, code);
}

/**
 * Marks the cells on which something is drawn, with any number but EMPTY: some shown layer holds something there. The
 * lowest shown layer does not count, since it holds the background with whatever pattern it has. Null where only one
 * layer is shown: its yarns are then the boundaries, as they are for a fill that is pressed on something drawn.
 */
function drawnCells({ columns, rows, layers }: Design): Uint8Array | null {
  const above = layers.filter((layer) => layer.visible).slice(1);
  if (above.length === 0) return null;
  const drawn = new Uint8Array(columns * rows).fill(EMPTY);
  for (const layer of above) {
    for (const [r, row] of layer.rows.entries()) {
      // EMPTY is 0, so that any code leaves a mark; without a branch this is several times as fast.
      for (let c = 0; c < columns; c++) drawn[r * columns + c]! |= row[c]!;
    }
  }
  return drawn;
}
