/**
 * Edits of the list of layers. The list is counted from 0 at the bottom, as in the file; a panel shows it from the top.
 * What a person can't do is told in a sentence; a layer that the design does not have is a fault of ours, and throws.
 */
import { good, problem, type Result } from '../result.ts';
import { EMPTY } from './codes.ts';
import { type Design, type Layer, layerOf } from './design.ts';
import { type AddLayer, type Edit, paintBetween } from './edits.ts';
import { limits } from './limits.ts';
import { quoted } from './schema-fault.ts';
import { sizeFault } from './size-fault.ts';

/** An empty layer above `below`. Problem: `too-many-layers`. */
export function addLayer(design: Design, below: string): Result<AddLayer> {
  const { columns, rows } = design;
  const empty = Array.from({ length: rows }, () => new Uint8Array(columns).fill(EMPTY));
  return withLayer(design, below, freeName(design, 'Layer'), empty);
}

/** A layer with the same cells, above the layer itself. Problem: `too-many-layers`. */
export function duplicateLayer(design: Design, id: string): Result<AddLayer> {
  const layer = layerOf(design, id);
  return withLayer(design, id, shortened(`${layer.name} copy`), layer.rows);
}

/** Problem: `last-layer`. */
export function removeLayer(design: Design, id: string): Result<Edit> {
  const { name } = layerOf(design, id);
  if (design.layers.length > 1) return good({ kind: 'remove-layer', layer: id });
  return problem('last-layer', `${quoted(name)} is the only layer. Add another before you remove it.`);
}

/**
 * The layer's cells drawn on the one below, and the layer gone; what shows in the chart stays as it is where both are
 * shown. Problems: `lowest-layer`, `locked-layer`, `hidden-layer`.
 */
export function mergeDown(design: Design, id: string): Result<Edit> {
  const upper = layerOf(design, id);
  const lower = design.layers[design.layers.indexOf(upper) - 1];
  if (!lower) {
    return problem('lowest-layer', `${quoted(upper.name)} is the lowest layer: nothing lies below it.`);
  }
  for (const layer of [upper, lower]) {
    if (layer.locked) {
      return problem('locked-layer', `${quoted(layer.name)} is locked. Unlock it, then merge.`);
    }
    if (!layer.visible) {
      return problem('hidden-layer', `${quoted(layer.name)} is hidden. Show it, then merge.`);
    }
  }
  const merged = lower.rows.map((row, r) => overlaid(row, upper.rows[r]!));
  const paint = paintBetween(lower, { ...lower, rows: merged });
  const gone: Edit = { kind: 'remove-layer', layer: id };
  return good(paint ? { kind: 'together', edits: [paint, gone] } : gone);
}

/**
 * The layer's cells moved by so many cords and rows. What moves beyond the chart's edge is gone; empty cells come in
 * at the other side. Null where nothing changes.
 */
export function moveContent(design: Design, id: string, columnsBy: number, rowsBy: number): Edit | null {
  const layer = layerOf(design, id);
  const rows = layer.rows.map((_, r) => {
    const from = layer.rows[r - rowsBy];
    const row = new Uint8Array(design.columns).fill(EMPTY);
    if (!from) return row;
    const start = Math.max(0, -columnsBy);
    const end = Math.min(design.columns, design.columns - columnsBy);
    if (end > start) row.set(from.subarray(start, end), start + columnsBy);
    return row;
  });
  return paintBetween(layer, { ...layer, rows });
}

function withLayer(
  design: Design,
  below: string,
  name: string,
  rows: readonly Uint8Array[],
): Result<AddLayer> {
  const count = design.layers.length + 1;
  if (count > limits.layers) {
    return problem(
      'too-many-layers',
      `A design has at most ${limits.layers} layers. Merge two of them to make room for another.`,
    );
  }
  const fault = sizeFault(design.columns, design.rows, count);
  if (fault) {
    return problem(
      'too-many-layers',
      'The chart is too large for one layer more. Merge two layers to make room for another.',
    );
  }
  const layer: Layer = { id: freeId(design), name, visible: true, locked: false, rows };
  return good({ kind: 'add-layer', at: design.layers.indexOf(layerOf(design, below)) + 1, layer });
}

function overlaid(lower: Uint8Array, upper: Uint8Array): Uint8Array {
  if (upper.every((code) => code === EMPTY)) return lower;
  return lower.map((code, c) => (upper[c] === EMPTY ? code : upper[c]!));
}

function freeId({ layers }: Design): string {
  let n = 1;
  while (layers.some((layer) => layer.id === `layer-${n}`)) n++;
  return `layer-${n}`;
}

function freeName({ layers }: Design, word: string): string {
  let n = layers.length + 1;
  while (layers.some((layer) => layer.name === `${word} ${n}`)) n++;
  return `${word} ${n}`;
}

function shortened(name: string): string {
  return name.slice(0, limits.nameChars);
}
