import { BARE } from '../../design/codes.ts';
import type { Chart } from '../chart.ts';

/**
 * 1 for each knot that is a run by itself, with another yarn, a bare cell or the edge on either side of it in its row:
 * a run shorter than two. 0 for all other cells. Every lone knot is one of these.
 */
export function shortRuns({ cells, columns, rows }: Chart): Uint8Array {
  const mask = new Uint8Array(cells.length);
  for (let row = 0, cell = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++, cell++) {
      const code = cells[cell]!;
      const left = column > 0 ? cells[cell - 1]! : BARE;
      const right = column < columns - 1 ? cells[cell + 1]! : BARE;
      // Without branches, as in `isLoneKnot`.
      const alikeOrBare = ((left ^ code) - 1) | ((right ^ code) - 1) | ((code ^ BARE) - 1);
      mask[cell] = alikeOrBare >= 0 ? 1 : 0;
    }
  }
  return mask;
}
