import { describe, expect, it } from 'vitest';
import { cellsFromLayer } from '../../../../renderer/surface/from-layer.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { designFromLetters } from '../../../notation.ts';

function hidden(all: Design, id: string): Design {
  return {
    ...all,
    layers: all.layers.map((layer) => (layer.id === id ? { ...layer, visible: false } : layer)),
  };
}

describe('the cells that are seen of a layer', () => {
  // The lowest layer first: sheet-1, sheet-2, picture.
  const all = designFromLetters([['aaaa'], ['.bb-'], ['..c.']]);

  it('are those that it has and no layer above hides', () => {
    expect(cellsFromLayer(all, 'sheet-1', 0)).toEqual([true, false, false, false]);
    expect(cellsFromLayer(all, 'sheet-2', 0)).toEqual([false, true, false, true]);
    expect(cellsFromLayer(all, 'picture', 0)).toEqual([false, false, true, false]);
  });

  it('are more where the layer above is hidden', () => {
    expect(cellsFromLayer(hidden(all, 'picture'), 'sheet-2', 0)).toEqual([false, true, true, true]);
  });

  it('are none of a layer that is hidden itself', () => {
    expect(cellsFromLayer(hidden(all, 'sheet-2'), 'sheet-2', 0)).toEqual([false, false, false, false]);
  });
});
