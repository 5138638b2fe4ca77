import { describe, expect, it } from 'vitest';
import { maskOfRectangle } from '../../../../shared/chart/patch/mask-of-cells.ts';
import { type ReplaceScope, replaceYarnIn } from '../../../../shared/chart/tools/replace-yarn.ts';
import { BARE } from '../../../../shared/design/codes.ts';
import { apply } from '../../../../shared/design/edits.ts';
import { designFromLetters, lettersOf } from '../../../notation.ts';

const plain = designFromLetters([
  ['aabb', 'ab-b'],
  ['.a.b', 'a..b'],
]);
const design = { ...plain, layers: plain.layers.map((layer, i) => ({ ...layer, visible: i === 1 })) };

function replaced(scope: ReplaceScope, from = 1, to = 3): string[][] {
  const next = apply(design, replaceYarnIn(design, from, to, scope));
  return [lettersOf(next, 0), lettersOf(next, 1)];
}

describe('a yarn', () => {
  it('is replaced in all layers of the chart, hidden ones too', () => {
    expect(replaced({ kind: 'chart' })).toEqual([
      ['ccbb', 'cb-b'],
      ['.c.b', 'c..b'],
    ]);
  });

  it('is replaced in one layer', () => {
    expect(replaced({ kind: 'layer', layer: 'sheet-1' }, 2)).toEqual([
      ['aacc', 'ac-c'],
      ['.a.b', 'a..b'],
    ]);
  });

  it('is replaced in a patch of one layer', () => {
    const mask = maskOfRectangle({ row: 0, column: 1 }, { row: 1, column: 2 }, design);
    expect(replaced({ kind: 'patch', layer: 'sheet-1', mask })).toEqual([
      ['acbb', 'ab-b'],
      ['.a.b', 'a..b'],
    ]);
  });

  it('may take the place of bare cells', () => {
    expect(replaced({ kind: 'chart' }, BARE, 3)[0]).toEqual(['aabb', 'abcb']);
  });

  it('that is in no cell, or replaced by itself, changes nothing', () => {
    const none = { kind: 'together', edits: [] };
    expect(replaceYarnIn(design, 7, 1, { kind: 'chart' })).toEqual(none);
    expect(replaceYarnIn(design, 1, 1, { kind: 'layer', layer: 'picture' })).toEqual(none);
    expect(() => replaceYarnIn(design, 1, 2, { kind: 'layer', layer: 'nowhere' })).toThrow('nowhere');
  });
});
