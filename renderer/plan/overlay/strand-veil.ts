/**
 * A veil of paper over all strands, a pixel a cell, thinner over every other strand of a yarn. A large chart has a hundred
 * thousand stretches in sight: one picture of them is stretched over the chart in a moment.
 */
import type { PlanTables } from '../plans/plan-tables.ts';

/** Of 255: how much covers the strands with odd numbers, and the others. */
const quiet = { odd: 148, even: 76 };

/** The last of each plan; a plan is forgotten with its veil. */
const made = new WeakMap<PlanTables, { readonly paper: string; readonly veil: HTMLCanvasElement }>();

/** `paper` as #rrggbb. The same plan and paper give the same canvas. */
export function strandVeil(tables: PlanTables, paper: string): HTMLCanvasElement {
  const before = made.get(tables);
  if (before?.paper === paper) return before.veil;
  const veil = document.createElement('canvas');
  veil.width = tables.columns;
  veil.height = tables.rows;
  const pen = veil.getContext('2d')!;
  const pixels = pen.createImageData(tables.columns, tables.rows);
  const words = new Uint32Array(pixels.data.buffer);
  const rgb = Number.parseInt(paper.slice(1), 16);
  const swapped = ((rgb & 255) << 16) | (rgb & 0xff00) | (rgb >> 16);
  const { stretches, pieces, strands, stretchAt } = tables;
  stretchAt.forEach((s, cell) => {
    if (s === -1) return;
    const number = strands.number[pieces.strand[stretches.piece[s]!]!]!;
    words[cell] = (((number % 2 === 1 ? quiet.odd : quiet.even) << 24) | swapped) >>> 0;
  });
  pen.putImageData(pixels, 0, 0);
  made.set(tables, { paper, veil });
  return veil;
}
