/**
 * Edits are data. `apply` makes the next design, `inverse` the edit that takes it back. Undo, redo and every list of
 * changes use these and nothing else. One pointer stroke is one edit.
 *
 * Painted cells are runs of four numbers, `row, column, count, code` (from 0), packed in a Uint16Array: a stroke of
 * 200 cells is 1.6 KB, and its inverse about the same.
 */
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
  | 'rates'
  | 'yarnMargin'
  | 'ground'
  | 'yarns';

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

export type Edit = SetField | Paint | Together;

/** The next design; it shares every row and every layer that the edit does not touch. Throws on an unknown layer. */
export function apply(design: Design, edit: Edit): Design {
  switch (edit.kind) {
    case 'set':
      return { ...design, [edit.field]: edit.value };
    case 'paint': {
      const old = layerOf(design, edit.layer);
      const next = painted(old, edit.runs);
      return { ...design, layers: design.layers.map((layer) => (layer === old ? next : layer)) };
    }
    case 'together':
      return edit.edits.reduce((next, each) => apply(next, each), design);
  }
}

/** The edit that takes `apply(before, edit)` back to `before`. */
export function inverse(before: Design, edit: Edit): Edit {
  switch (edit.kind) {
    case 'set':
      return { kind: 'set', field: edit.field, value: before[edit.field] } as SetField;
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

/** The rows an edit touches, first and last (from 0), or 'all' where it changes more than cells. */
export function rowsTouched(edit: Edit): { first: number; last: number } | 'all' | null {
  switch (edit.kind) {
    case 'set':
      return 'all';
    case 'paint': {
      if (edit.runs.length === 0) return null;
      let first = Number.POSITIVE_INFINITY;
      let last = 0;
      for (let i = 0; i < edit.runs.length; i += 4) {
        first = Math.min(first, edit.runs[i]!);
        last = Math.max(last, edit.runs[i]!);
      }
      return { first, last };
    }
    case 'together':
      return edit.edits.map(rowsTouched).reduce((a, b) => {
        if (a === 'all' || b === 'all') return 'all';
        if (!a || !b) return a ?? b;
        return { first: Math.min(a.first, b.first), last: Math.max(a.last, b.last) };
      }, null);
  }
}

/** Memory that an edit holds, in bytes, roughly. */
export function sizeOf(edit: Edit): number {
  switch (edit.kind) {
    case 'set':
      return 200 + (typeof edit.value === 'object' ? JSON.stringify(edit.value).length * 2 : 0);
    case 'paint':
      return 200 + edit.runs.byteLength;
    case 'together':
      return edit.edits.reduce((sum, each) => sum + sizeOf(each), 100);
  }
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
