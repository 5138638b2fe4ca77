/**
 * Edits are data. `apply` makes the next design, `inverse` the edit that takes it back. Undo, redo and every list of
 * changes use these and nothing else. One pointer stroke is one edit.
 *
 * Painted cells are runs of four numbers, `row, column, count, code` (from 0), packed in a Uint16Array: a stroke of
 * 200 cells is 1.6 KB, and its inverse about the same.
 */
import { applyToBundles, inverseForBundles, type SetBundles, type SetCut } from './bundle-edits.ts';
import type { Design, Layer } from './design.ts';
import { layerOf } from './design.ts';

/** The fields that one edit may replace as a whole. */
export type Field =
  | 'title'
  | 'designer'
  | 'notes'
  | 'startCorner'
  | 'cord'
  | 'dowel'
  | 'fringe'
  | 'swatches'
  | 'tying'
  | 'pins'
  | 'rates'
  | 'yarnMargin'
  | 'money'
  | 'pattern'
  | 'editions'
  | 'ground'
  | 'yarns'
  | 'reference';

export type SetField = {
  [F in Field]: { readonly kind: 'set'; readonly field: F; readonly value: Design[F] };
}[Field];

/**
 * `runs` holds `row, column, count, code` again and again, rows never decreasing. Cells outside the chart are passed
 * over, so that a shape may reach beyond it.
 */
export interface Paint {
  readonly kind: 'paint';
  readonly layer: string;
  readonly runs: Uint16Array;
}

/** Several edits as one, applied in order. */
export interface Together {
  readonly kind: 'together';
  readonly edits: readonly Edit[];
}

/** A layer put in at a place of the list, counted from 0 at the bottom. */
export interface AddLayer {
  readonly kind: 'add-layer';
  readonly at: number;
  readonly layer: Layer;
}

export interface RemoveLayer {
  readonly kind: 'remove-layer';
  readonly layer: string;
}

/** A layer taken to another place of the list: the one that it has afterwards, from 0 at the bottom. */
export interface MoveLayer {
  readonly kind: 'move-layer';
  readonly layer: string;
  readonly to: number;
}

/** The fields of a layer that one edit may replace. */
export type LayerField = 'name' | 'visible' | 'locked';

export type SetLayer = {
  [F in LayerField]: {
    readonly kind: 'set-layer';
    readonly layer: string;
    readonly field: F;
    readonly value: Layer[F];
  };
}[LayerField];

/** Another size, with all cells of all layers: `sheets` holds each layer's rows by its id. */
export interface Resize {
  readonly kind: 'resize';
  readonly columns: number;
  readonly rows: number;
  readonly sheets: Readonly<Record<string, readonly Uint8Array[]>>;
}

export type Edit =
  | SetField
  | SetBundles
  | SetCut
  | Paint
  | Together
  | AddLayer
  | RemoveLayer
  | MoveLayer
  | SetLayer
  | Resize;

/** The next design; it shares every row and every layer that the edit does not touch. Throws on an unknown layer. */
export function apply(design: Design, edit: Edit): Design {
  switch (edit.kind) {
    case 'set':
      return { ...design, [edit.field]: edit.value };
    case 'set-bundles':
    case 'set-cut':
      return applyToBundles(design, edit);
    case 'paint': {
      const old = layerOf(design, edit.layer);
      const next = painted(old, edit.runs);
      return { ...design, layers: design.layers.map((layer) => (layer === old ? next : layer)) };
    }
    case 'together':
      return edit.edits.reduce((next, each) => apply(next, each), design);
    case 'add-layer':
      return { ...design, layers: design.layers.toSpliced(edit.at, 0, edit.layer) };
    case 'remove-layer': {
      const old = layerOf(design, edit.layer);
      return { ...design, layers: design.layers.filter((layer) => layer !== old) };
    }
    case 'move-layer': {
      const old = layerOf(design, edit.layer);
      const others = design.layers.filter((layer) => layer !== old);
      return { ...design, layers: others.toSpliced(edit.to, 0, old) };
    }
    case 'set-layer': {
      const old = layerOf(design, edit.layer);
      const next = { ...old, [edit.field]: edit.value };
      return { ...design, layers: design.layers.map((layer) => (layer === old ? next : layer)) };
    }
    case 'resize': {
      const { columns, rows, sheets } = edit;
      const layers = design.layers.map((layer) => ({ ...layer, rows: sheetOf(sheets, layer.id) }));
      return { ...design, columns, rows, layers };
    }
  }
}

/** The edit that takes `apply(before, edit)` back to `before`. */
export function inverse(before: Design, edit: Edit): Edit {
  switch (edit.kind) {
    case 'set':
      return { kind: 'set', field: edit.field, value: before[edit.field] } as SetField;
    case 'set-bundles':
    case 'set-cut':
      return inverseForBundles(before, edit);
    case 'paint':
      return { kind: 'paint', layer: edit.layer, runs: cellsUnder(layerOf(before, edit.layer), edit.runs) };
    case 'together': {
      const inverses: Edit[] = [];
      let design = before;
      for (const each of edit.edits) {
        inverses.push(inverse(design, each));
        design = apply(design, each);
      }
      return { kind: 'together', edits: inverses.reverse() };
    }
    case 'add-layer':
      return { kind: 'remove-layer', layer: edit.layer.id };
    case 'remove-layer': {
      const layer = layerOf(before, edit.layer);
      return { kind: 'add-layer', at: before.layers.indexOf(layer), layer };
    }
    case 'move-layer': {
      const to = before.layers.indexOf(layerOf(before, edit.layer));
      return { kind: 'move-layer', layer: edit.layer, to };
    }
    case 'set-layer': {
      const value = layerOf(before, edit.layer)[edit.field];
      return { kind: 'set-layer', layer: edit.layer, field: edit.field, value } as SetLayer;
    }
    case 'resize': {
      const { columns, rows, layers } = before;
      return {
        kind: 'resize',
        columns,
        rows,
        sheets: Object.fromEntries(layers.map((layer) => [layer.id, layer.rows])),
      };
    }
  }
}

/** The edit that turns `before`'s layer into `after`'s; null where they are alike. Rows shared by both cost nothing. */
export function paintBetween(before: Layer, after: Layer): Paint | null {
  const runs: number[] = [];
  after.rows.forEach((row, r) => {
    const old = before.rows[r];
    if (row === old || !old) return;
    for (let c = 0; c < row.length; c++) {
      if (row[c] === old[c]) continue;
      const from = c;
      const code = row[c]!;
      while (c + 1 < row.length && row[c + 1] === code && old[c + 1] !== code) c++;
      runs.push(r, from, c + 1 - from, code);
    }
  });
  return runs.length === 0 ? null : { kind: 'paint', layer: after.id, runs: Uint16Array.from(runs) };
}

/**
 * The rows whose cells an edit touches, from 0, each once and in order; 'all' where it changes more than cells; null
 * where the chart stays as it is.
 */
export function rowsTouched(edit: Edit): readonly number[] | 'all' | null {
  switch (edit.kind) {
    case 'set':
    case 'add-layer':
    case 'remove-layer':
    case 'move-layer':
    case 'resize':
      return 'all';
    case 'set-layer':
      return edit.field === 'visible' ? 'all' : null;
    case 'set-bundles':
    case 'set-cut':
      return null;
    case 'paint': {
      const rows: number[] = [];
      for (let i = 0; i < edit.runs.length; i += 4)
        if (edit.runs[i] !== rows.at(-1)) rows.push(edit.runs[i]!);
      return rows.length === 0 ? null : rows;
    }
    case 'together': {
      const parts = edit.edits.map(rowsTouched).filter((part) => part !== null);
      if (parts.includes('all')) return 'all';
      const rows = new Set(parts.flatMap((part) => (part === 'all' ? [] : part)));
      return rows.size === 0 ? null : [...rows].sort((a, b) => a - b);
    }
  }
}

/** Memory that an edit holds, in bytes, roughly. */
export function sizeOf(edit: Edit): number {
  switch (edit.kind) {
    case 'set':
      if (typeof edit.value !== 'object') return 200;
      return 200 + JSON.stringify(edit.value, withoutPictures).length * 2 + bytesOfPictures(picturesOf(edit));
    case 'paint':
      return 200 + edit.runs.byteLength;
    case 'together':
      return edit.edits.reduce((sum, each) => sum + sizeOf(each), 100);
    case 'add-layer':
      return 200 + bytesOf(edit.layer.rows);
    case 'remove-layer':
    case 'move-layer':
    case 'set-layer':
      return 200;
    case 'set-bundles':
      return 200 + (typeof edit.value === 'object' ? JSON.stringify(edit.value).length * 2 : 0);
    case 'set-cut':
      return 200 + 100 * edit.entries.length;
    case 'resize':
      return Object.values(edit.sheets).reduce((sum, rows) => sum + bytesOf(rows), 200);
  }
}

/**
 * Memory of a step and its inverse, in bytes, roughly. A picture that the step leaves as it is, while something beside it changes,
 * is held by the design anyway.
 */
export function sizeOfStep(edit: Edit, back: Edit): number {
  const size = sizeOf(edit) + sizeOf(back);
  if (edit.kind !== 'set' || back.kind !== 'set') return size;
  const before = new Set(picturesOf(back));
  return size - 2 * bytesOfPictures(picturesOf(edit).filter((picture) => before.has(picture)));
}

/** Lines of base64. */
type PictureLines = readonly string[];

/** The pictures that a field holds. */
function picturesOf(edit: SetField): PictureLines[] {
  switch (edit.field) {
    case 'reference':
      return edit.value ? [edit.value.picture] : [];
    case 'pattern':
      return edit.value?.cover ? [edit.value.cover.picture] : [];
    case 'editions':
      return (edit.value ?? []).flatMap(({ made }) =>
        made.pattern?.cover ? [made.pattern.cover.picture] : [],
      );
    default:
      return [];
  }
}

function withoutPictures(key: string, value: unknown): unknown {
  return key === 'picture' ? undefined : value;
}

/** A character of base64 takes a byte. */
function bytesOfPictures(pictures: readonly PictureLines[]): number {
  return pictures.flat().reduce((sum, line) => sum + line.length, 0);
}

function bytesOf(rows: readonly Uint8Array[]): number {
  return rows.reduce((sum, row) => sum + row.length + 64, 0);
}

function sheetOf(sheets: Resize['sheets'], id: string): readonly Uint8Array[] {
  const rows = sheets[id];
  if (!rows) throw new Error(`the new size has no cells for the layer ${id}`);
  return rows;
}

function painted(layer: Layer, runs: Uint16Array): Layer {
  const rows = layer.rows.slice();
  let copied = -1;
  for (let i = 0; i < runs.length; i += 4) {
    const r = runs[i]!;
    const row = rows[r];
    if (!row) continue;
    // Rows never decrease, so one remembered index tells whether this row is already our own copy.
    const own = r === copied ? row : row.slice();
    rows[r] = own;
    copied = r;
    own.fill(runs[i + 3]!, runs[i + 1]!, runs[i + 1]! + runs[i + 2]!);
  }
  return { ...layer, rows };
}

function cellsUnder(layer: Layer, runs: Uint16Array): Uint16Array {
  const before: number[] = [];
  for (let i = 0; i < runs.length; i += 4) {
    const r = runs[i]!;
    const row = layer.rows[r];
    if (!row) continue;
    const end = Math.min(runs[i + 1]! + runs[i + 2]!, row.length);
    for (let c = runs[i + 1]!; c < end; c++) {
      const from = c;
      const code = row[c]!;
      while (c + 1 < end && row[c + 1] === code) c++;
      before.push(r, from, c + 1 - from, code);
    }
  }
  return Uint16Array.from(before);
}
