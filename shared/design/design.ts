/**
 * The design in memory: the file's value with each layer's rows as bytes, one a cell (see `codes.ts`).
 * It is never changed in place; `edits.ts` makes the next value and shares every row that an edit did not touch.
 */
import type { DesignFile } from './schema.ts';

type LayerFile = DesignFile['layers'][number];

/** A sheet of cells over others. `rows[r]` holds one code for each cord, left to right. */
export type Layer = Readonly<Omit<LayerFile, 'rows'> & { rows: readonly Uint8Array[] }>;

export type Design = Readonly<
  Omit<DesignFile, 'format' | 'version' | 'layers'> & { layers: readonly Layer[] }
>;

export function layerOf(design: Design, id: string): Layer {
  const layer = design.layers.find((each) => each.id === id);
  if (!layer) throw new Error(`the design has no layer ${id}`);
  return layer;
}
