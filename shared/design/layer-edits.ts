/**
 * Edits of the list of layers. The list is counted from 0 at the bottom, as in the file; a panel shows it from the top.
 * What a person can't do is told in a sentence; a layer that the design does not have is a fault of ours, and throws.
 */
import { good, problem, type Result } from '../result.ts';
import { EMPTY } from './codes.ts';
import { type Design, type Layer, layerOf } from './design.ts';
import { type AddLayer, type Edit, type MoveLayer, paintBetween, type SetLayer } from './edits.ts';
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
  return withLayer(design, id, copyName(layer.name), layer.rows);
}

/** Problems: `locked-layer`, `last-layer`. */
export function removeLayer(design: Design, id: string): Result<Edit> {
  const { name, locked } = layerOf(design, id);
  if (design.layers.length === 1)
    return problem('last-layer', `${quoted(name)} is the only layer. Add another before you remove it.`);
  if (locked) return problem('locked-layer', `${quoted(name)} is locked. Unlock it before you remove it.`);
  return good({ kind: 'remove-layer', layer: id });
}

/** Without spaces around it. Problems: `no-name`, `long-name`, `same-name`. */
export function renameLayer(design: Design, id: string, name: string): Result<SetLayer> {
  const value = name.trim();
  if (value === '') return problem('no-name', 'A layer needs a name. Write one.');
  if (value.length > limits.nameChars)
    return problem('long-name', `A layer’s name has at most ${limits.nameChars} characters. Shorten it.`);
  if (value === layerOf(design, id).name)
    return problem('same-name', `The layer is called ${quoted(value)} already. Write another name.`);
  return good({ kind: 'set-layer', layer: id, field: 'name', value });
}

/** The layer at the place `to` of the list, from 0 at the bottom. Problems: `top-layer`, `lowest-layer`. */
export function moveLayer(design: Design, id: string, to: number): Result<MoveLayer> {
  const { name } = layerOf(design, id);
  if (to < 0) return problem('lowest-layer', `${quoted(name)} is the lowest layer already.`);
  if (to >= design.layers.length) return problem('top-layer', `${quoted(name)} is the top layer already.`);
  return good({ kind: 'move-layer', layer: id, to });
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

/** A long name is cut short so that ' copy' still fits, never inside a character. */
function copyName(name: string): string {
  const characters = [...name];
  while (characters.join('').length > limits.nameChars - ' copy'.length) characters.pop();
  return `${characters.join('')} copy`;
}
