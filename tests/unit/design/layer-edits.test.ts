import { describe, expect, it } from 'vitest';
import type { Design } from '../../../shared/design/design.ts';
import { apply, type Edit } from '../../../shared/design/edits.ts';
import {
  addLayer,
  duplicateLayer,
  mergeDown,
  moveContent,
  moveLayer,
  removeLayer,
  renameLayer,
} from '../../../shared/design/layer-edits.ts';
import { limits } from '../../../shared/design/limits.ts';
import { newDesign } from '../../../shared/design/new-design.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import type { Result } from '../../../shared/result.ts';
import { designFromLetters, lettersOf } from '../../notation.ts';

const three = designFromLetters([
  ['aaa', 'aaa'],
  ['.b.', '-..'],
  ['..c', '..c'],
]);

const names = (design: Design) => design.layers.map(({ name }) => name);
const done = (design: Design, edit: Result<Edit>) => {
  if (!edit.ok) throw new Error(edit.problem.sentence);
  return apply(design, edit.value);
};
const refused = (edit: Result<Edit>) =>
  edit.ok ? 'not refused' : [edit.problem.code, edit.problem.sentence];
const withFlags = (
  design: Design,
  id: string,
  flags: { locked?: boolean; visible?: boolean; name?: string },
) => ({
  ...design,
  layers: design.layers.map((layer) => (layer.id === id ? { ...layer, ...flags } : layer)),
});

describe('a new layer', () => {
  it('is empty, shown and unlocked, and lies above the one that was chosen', () => {
    const design = done(three, addLayer(three, 'sheet-1'));
    expect(names(design)).toEqual(['Sheet 1', 'Layer 4', 'Sheet 2', 'Picture']);
    expect(design.layers[1]).toMatchObject({ id: 'layer-1', visible: true, locked: false });
    expect(lettersOf(design, 1)).toEqual(['...', '...']);
  });

  it('has an id and a name that no other has', () => {
    let design: Design = three;
    for (let times = 0; times < 3; times++) design = done(design, addLayer(design, 'picture'));
    design = done(design, removeLayer(design, 'layer-2'));
    design = done(design, addLayer(design, 'picture'));
    expect(new Set(design.layers.map(({ id }) => id)).size).toBe(6);
    expect(new Set(names(design)).size).toBe(6);
  });

  it(`is the ${limits.layers}th at most`, () => {
    let design: Design = three;
    while (design.layers.length < limits.layers) design = done(design, addLayer(design, 'picture'));
    expect(refused(addLayer(design, 'picture'))).toEqual([
      'too-many-layers',
      'A design has at most 64 layers. Merge two of them to make room for another.',
    ]);
    expect(refused(duplicateLayer(design, 'picture'))).toContain('too-many-layers');
  });

  it('is refused where the chart would have too many cells', () => {
    // Eight layers of 1000 cords and 2000 rows are 16 million cells.
    let design: Design = newDesign({ title: 'Large', columns: limits.columns, rows: limits.rows });
    while (design.layers.length < 8) design = done(design, addLayer(design, 'picture'));
    expect(refused(addLayer(design, 'picture'))).toEqual([
      'too-many-layers',
      'The chart is too large for one layer more. Merge two layers to make room for another.',
    ]);
  });
});

describe('a layer that is duplicated', () => {
  it('lies above itself with the same cells', () => {
    const design = done(three, duplicateLayer(three, 'sheet-2'));
    expect(names(design)).toEqual(['Sheet 1', 'Sheet 2', 'Sheet 2 copy', 'Picture']);
    expect(lettersOf(design, 2)).toEqual(['.b.', '-..']);
  });

  it('has its long name cut between two characters, so that it can be saved', () => {
    const long = withFlags(three, 'picture', { name: '🧶'.repeat(limits.nameChars / 2) });
    const copy = done(long, duplicateLayer(long, 'picture')).layers.at(-1)!.name;
    expect(copy).toBe(`${'🧶'.repeat(97)} copy`);
    expect(copy.length).toBeLessThanOrEqual(limits.nameChars);
  });
});

describe('a layer that is removed', () => {
  it('is gone', () => {
    expect(names(done(three, removeLayer(three, 'sheet-2')))).toEqual(['Sheet 1', 'Picture']);
  });

  it('is neither the only one nor locked', () => {
    expect(refused(removeLayer(designFromLetters(['a']), 'picture'))).toEqual([
      'last-layer',
      '“Picture” is the only layer. Add another before you remove it.',
    ]);
    expect(refused(removeLayer(withFlags(three, 'sheet-1', { locked: true }), 'sheet-1'))).toEqual([
      'locked-layer',
      '“Sheet 1” is locked. Unlock it before you remove it.',
    ]);
  });

  it('that the design does not have is a fault of ours', () => {
    expect(() => removeLayer(three, 'nowhere')).toThrow('no layer nowhere');
  });
});

describe('a layer’s name', () => {
  it('is written without spaces around it', () => {
    expect(names(done(three, renameLayer(three, 'picture', '  Tower ')))).toEqual([
      'Sheet 1',
      'Sheet 2',
      'Tower',
    ]);
  });

  it('is neither empty, nor too long, nor the one it has', () => {
    expect(refused(renameLayer(three, 'picture', '  '))).toContain('no-name');
    expect(refused(renameLayer(three, 'picture', ' Picture'))).toContain('same-name');
    expect(renameLayer(three, 'picture', 'x'.repeat(limits.nameChars)).ok).toBe(true);
    expect(refused(renameLayer(three, 'picture', 'x'.repeat(limits.nameChars + 1)))).toContain('long-name');
  });
});

describe('a layer that is moved in the list', () => {
  it('has the place it was moved to', () => {
    expect(names(done(three, moveLayer(three, 'sheet-1', 1)))).toEqual(['Sheet 2', 'Sheet 1', 'Picture']);
    expect(names(done(three, moveLayer(three, 'sheet-1', 2)))).toEqual(['Sheet 2', 'Picture', 'Sheet 1']);
    expect(names(done(three, moveLayer(three, 'picture', 0)))).toEqual(['Picture', 'Sheet 1', 'Sheet 2']);
  });

  it('goes neither above the top nor below the ground', () => {
    expect(refused(moveLayer(three, 'picture', 3))).toEqual([
      'top-layer',
      '“Picture” is the top layer already.',
    ]);
    expect(refused(moveLayer(three, 'sheet-1', -1))).toEqual([
      'lowest-layer',
      '“Sheet 1” is the lowest layer already.',
    ]);
  });

  it('and back again leaves the same bytes', () => {
    const up = done(three, moveLayer(three, 'sheet-1', 1));
    expect(writeDesign(done(up, moveLayer(up, 'sheet-1', 0)))).toBe(writeDesign(three));
  });
});

describe('a layer that is merged down', () => {
  it('is drawn on the one below it, bare cells too, and is gone', () => {
    const design = done(three, mergeDown(three, 'sheet-2'));
    expect(names(design)).toEqual(['Sheet 1', 'Picture']);
    expect(lettersOf(design, 0)).toEqual(['aba', '-aa']);
  });

  it('has one below it, and both are shown and unlocked', () => {
    expect(refused(mergeDown(three, 'sheet-1'))).toContain('lowest-layer');
    for (const id of ['sheet-2', 'picture']) {
      expect(refused(mergeDown(withFlags(three, id, { locked: true }), 'picture'))).toContain('locked-layer');
      expect(refused(mergeDown(withFlags(three, id, { visible: false }), 'picture'))).toContain(
        'hidden-layer',
      );
    }
  });
});

describe('a layer’s content', () => {
  const moved = (columnsBy: number, rowsBy: number) => {
    const edit = moveContent(three, 'sheet-2', columnsBy, rowsBy);
    return edit ? lettersOf(apply(three, edit), 1) : null;
  };

  it('moves by cords and rows, and what leaves the chart is gone', () => {
    expect(moved(1, 0)).toEqual(['..b', '.-.']);
    expect(moved(-1, 0)).toEqual(['b..', '...']);
    expect(moved(0, 1)).toEqual(['...', '.b.']);
    expect(moved(1, -1)).toEqual(['.-.', '...']);
    expect(moved(9, 9)).toEqual(['...', '...']);
  });

  it('stays where it is without an edit', () => {
    expect(moved(0, 0)).toBeNull();
  });
});
