import { type Design, type Layer, layerOf } from '../../design/design.ts';
import type { Edit, Paint } from '../../design/edits.ts';
import type { Mask } from '../patch/mask.ts';
import { paintStrips, type Strips } from './strips.ts';

/** Where a yarn is replaced: in every layer, hidden and locked ones too; in one layer; in a patch of one layer. */
export type ReplaceScope =
  | { readonly kind: 'chart' }
  | { readonly kind: 'layer'; readonly layer: string }
  | { readonly kind: 'patch'; readonly layer: string; readonly mask: Mask };

/**
 * The edit that gives every cell of code `from` the code `to`; bare cells are replaced like a yarn. An edit of no parts
 * where nothing changes. Throws on an unknown layer.
 */
export function replaceYarnIn(design: Design, from: number, to: number, scope: ReplaceScope): Edit {
  const edits = layersIn(design, scope)
    .map((layer) => replacing(design, layer, from, to, scope.kind === 'patch' ? scope.mask : null))
    .filter((paint) => paint !== null);
  return edits.length === 1 ? edits[0]! : { kind: 'together', edits };
}

function layersIn(design: Design, scope: ReplaceScope): readonly Layer[] {
  return scope.kind === 'chart' ? design.layers : [layerOf(design, scope.layer)];
}

function replacing(design: Design, layer: Layer, from: number, to: number, mask: Mask | null): Paint | null {
  return from === to ? null : paintStrips(layer.id, replaceStrips(layer.rows, from, to, mask), design);
}

/** The cells of code `from` as strips of code `to`: in all of a layer's rows, or under a mask. */
function replaceStrips(rows: readonly Uint8Array[], from: number, to: number, mask: Mask | null): Strips {
  const strips: number[] = [];
  for (const [r, row] of rows.entries()) {
    const isMeant = (c: number) => row[c] === from && (!mask || mask.chosen[r * row.length + c] === 1);
    for (let c = row.indexOf(from); c >= 0; c = row.indexOf(from, c + 1)) {
      const start = c;
      while (isMeant(c)) c++;
      if (c > start) strips.push(r, start, c - start, to);
    }
  }
  return new Int32Array(strips);
}
