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
 * first one, up to what is drawn on any shown layer; see `undrawnCells`.
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
  const undrawn = scope === 'to-boundary' ? undrawnCells(design) : null;
  if (undrawn?.[place] === 1) return markedStrips(touchingCells(undrawn, chart, start), 1, chart, code);
  const seen = chart.cells[place]!;
  if (seen === code) return noStrips;
  if (scope === 'everywhere') return markedStrips(chart.cells, seen, chart, code);
  return markedStrips(touchingCells(chart.cells, chart, start), 1, chart, code);
}

/**
 * Marks with 1 the cells on which nothing is drawn: every shown layer is empty there but the lowest, which is looked
 * through, since it holds the background with whatever pattern it has. Null where only one layer is shown: its yarns
 * are then the boundaries, as they are for a fill that is pressed on something drawn.
 */
function undrawnCells({ columns, rows, layers }: Design): Uint8Array | null {
  const drawn = layers.filter((layer) => layer.visible).slice(1);
  if (drawn.length === 0) return null;
  const undrawn = new Uint8Array(columns * rows).fill(1);
  for (const layer of drawn) {
    for (const [r, row] of layer.rows.entries()) {
      for (let c = 0; c < columns; c++) if (row[c] !== EMPTY) undrawn[r * columns + c] = 0;
    }
  }
  return undrawn;
}
