import type { Design } from '../../../shared/design/design.ts';
import { newDesign } from '../../../shared/design/new-design.ts';

/**
 * A design as hard to plan as a photograph: two cells of three go on with the yarn of the cell before, every third
 * takes any of the design's yarns. The same cells each time.
 */
export function mottledDesign(columns: number, rows: number): Design {
  const design = newDesign({ title: 'Mottled', columns, rows });
  let state = 20;
  const below = (limit: number) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * limit);
  };
  const cells = Array.from({ length: rows }, () => {
    const row = new Uint8Array(columns);
    for (let column = 0; column < columns; column++) {
      const goesOn = column > 0 && below(3) > 0;
      row[column] = goesOn ? row[column - 1]! : 1 + below(design.yarns.length);
    }
    return row;
  });
  return { ...design, layers: [{ ...design.layers[0]!, rows: cells }] };
}
