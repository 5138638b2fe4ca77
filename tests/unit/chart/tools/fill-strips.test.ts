import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Cell } from '../../../../shared/chart/tools/cell.ts';
import { type FillScope, fillStrips } from '../../../../shared/chart/tools/fill-strips.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { designFromLetters } from '../../../notation.ts';
import { lettersOfStrips } from '../strips-letters.ts';

const cell = (row: number, column: number): Cell => ({ row, column });

function filled(design: Design, start: Cell, scope: FillScope, code = 3): string[] {
  return lettersOfStrips(fillStrips(design, flatten(design), start, code, scope), design);
}

describe('a fill of what touches', () => {
  it('takes all that is alike and touches by its sides, not by corners', () => {
    const design = designFromLetters(['aabaa', 'abbba', 'bbabb', 'abbba']);
    expect(filled(design, cell(0, 2), 'touching')).toEqual(['..c..', '.ccc.', 'cc.cc', '.ccc.']);
    expect(filled(design, cell(2, 2), 'touching')).toEqual(['.....', '.....', '..c..', '.....']);
  });

  it('goes around corners, up and down again', () => {
    const design = designFromLetters(['bbbbb', 'baaab', 'babab', 'babaa', 'bbbbb']);
    expect(filled(design, cell(3, 1), 'touching')).toEqual(['.....', '.ccc.', '.c.c.', '.c.cc', '.....']);
  });

  it('goes by what is seen, whatever layer it comes from', () => {
    const design = designFromLetters([
      ['aaaa', 'baaa'],
      ['.b..', '.b..'],
    ]);
    expect(filled(design, cell(0, 1), 'touching')).toEqual(['.c..', 'cc..']);
  });

  it('takes bare cells like a yarn', () => {
    expect(filled(designFromLetters(['--a-']), cell(0, 0), 'touching')).toEqual(['cc..']);
  });

  it('does nothing where all shows that yarn already, or outside the chart', () => {
    const design = designFromLetters(['aab']);
    expect(filled(design, cell(0, 0), 'touching', 1)).toEqual(['...']);
    expect(filled(design, cell(0, 3), 'touching')).toEqual(['...']);
    expect(filled(design, cell(-1, 0), 'everywhere')).toEqual(['...']);
  });
});

describe('a fill everywhere', () => {
  it('takes all cells that show the yarn, touching or not', () => {
    const design = designFromLetters(['aba', 'bab']);
    expect(filled(design, cell(0, 0), 'everywhere')).toEqual(['c.c', '.c.']);
  });
});

describe('a fill to a boundary', () => {
  const striped = ['abababab', 'abababab', 'abababab', 'abababab'];

  it('goes across the pattern of the lowest layer, up to what is drawn above it', () => {
    const design = designFromLetters([striped, ['.ddddd..', '.d...d..', '.d...d..', '.ddddd..']]);
    expect(filled(design, cell(1, 2), 'to-boundary')).toEqual([
      '........',
      '..ccc...',
      '..ccc...',
      '........',
    ]);
    expect(filled(design, cell(0, 7), 'to-boundary')).toEqual([
      '......cc',
      '......cc',
      '......cc',
      '......cc',
    ]);
  });

  it('stops at a boundary on any shown layer, also where the yarn is that of the ground', () => {
    const lines = ['...a....', '...a....', '...-....', '...a....'];
    const design = designFromLetters([striped, lines, ['.....d..', '.....d..', '.....d..', '.....d..']]);
    expect(filled(design, cell(0, 4), 'to-boundary')).toEqual(Array(4).fill('....c...'));
  });

  it('looks through layers that are hidden', () => {
    const design = designFromLetters([striped, ['...d....', '...d....', '...d....', '...d....']]);
    const layers = design.layers.map((layer, i) => ({ ...layer, visible: i === 0 }));
    const above = {
      ...design.layers[1]!,
      id: 'above',
      rows: design.layers[1]!.rows.map((row) => row.slice().fill(0)),
    };
    expect(filled({ ...design, layers: [...layers, above] }, cell(0, 0), 'to-boundary')).toEqual(
      Array(4).fill('cccccccc'),
    );
  });

  it('pressed on something drawn fills what touches', () => {
    const design = designFromLetters([striped, ['.ddd....', '.d......', '........', '...d....']]);
    expect(filled(design, cell(0, 1), 'to-boundary')).toEqual([
      '.ccc....',
      '.c......',
      '........',
      '........',
    ]);
  });

  it('fills what touches where only one layer is shown', () => {
    expect(filled(designFromLetters(['aabb', 'baab']), cell(0, 0), 'to-boundary')).toEqual(['cc..', '.cc.']);
  });
});
