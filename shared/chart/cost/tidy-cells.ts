/**
 * Tidying a design: which layer gets each cell, so that the chart really loses its lone knots. A lone knot is painted
 * over on the layer that shows it. Where that one is locked, the cell is painted on the top one of the unlocked layers
 * above it, which lets it show as yet; where there is none, the knot stays.
 */
import { EMPTY } from '../../design/codes.ts';
import type { Design } from '../../design/design.ts';
import type { Edit } from '../../design/edits.ts';
import type { Chart } from '../chart.ts';
import { paintStrips } from '../tools/strips.ts';
import { tidied } from './tidied.ts';

export interface TidyCells {
  /** Null where nothing changes. */
  readonly edit: Edit | null;
  /** How many cells of the chart change. */
  readonly changed: number;
  /** Lone knots that stay, most often because their layer is locked. */
  readonly left: number;
}

/** `chart` is the design's own. Hidden layers are left as they are. */
export function tidyCells(design: Design, chart: Chart): TidyCells {
  const { columns } = design;
  const layerAt = (cell: number) => layerToPaint(design, Math.floor(cell / columns), cell % columns);
  const { strips, changed, left } = tidied(chart, design.yarns, {
    mayChange: (cell) => layerAt(cell) !== null,
  });
  const stripsOf = new Map<string, number[]>();
  for (let i = 0; i < strips.length; i += 4) {
    const [row, from, count, code] = strips.subarray(i, i + 4) as unknown as [number, number, number, number];
    for (let column = from; column < from + count; column++) {
      const layer = layerToPaint(design, row, column)!;
      const list = stripsOf.get(layer) ?? [];
      list.push(row, column, 1, code);
      stripsOf.set(layer, list);
    }
  }
  const paints = [...stripsOf].map(([layer, list]) => paintStrips(layer, Int32Array.from(list), design)!);
  const edit = paints.length > 1 ? { kind: 'together' as const, edits: paints } : (paints[0] ?? null);
  return { edit, changed, left };
}

/** The id of the layer on which paint replaces what the cell shows; null where locked layers forbid it. */
function layerToPaint({ layers }: Design, row: number, column: number): string | null {
  let top: string | null = null;
  for (let at = layers.length - 1; at >= 0; at--) {
    const { id, visible, locked, rows } = layers[at]!;
    if (!visible) continue;
    const shows = rows[row]![column] !== EMPTY;
    if (shows) return locked ? top : id;
    if (!locked) top ??= id;
  }
  return null;
}
