import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { joinStrips, paintStrips, stripsOfCells } from '../../../../shared/chart/tools/strips.ts';
import { apply } from '../../../../shared/design/edits.ts';
import { designFromLetters, lettersOfChart } from '../../../notation.ts';

const design = designFromLetters(['aaaa', 'aaaa', 'aaaa']);

describe('strips', () => {
  it('become an edit sorted by row; in a row the later strip lies on top', () => {
    const drawn = joinStrips([Int32Array.of(2, 0, 4, 2, 0, 1, 3, 2), Int32Array.of(2, 1, 2, 3, 0, 0, 2, 4)]);
    const edit = paintStrips('picture', drawn, design)!;
    expect([...edit.runs]).toEqual([0, 1, 3, 2, 0, 0, 2, 4, 2, 0, 4, 2, 2, 1, 2, 3]);
    expect(lettersOfChart(flatten(apply(design, edit)))).toEqual(['ddbb', 'aaaa', 'bccb']);
  });

  it('are cut at the edges of the chart', () => {
    const drawn = Int32Array.of(-1, 0, 4, 2, 0, -2, 3, 2, 1, 3, 9, 2, 2, 4, 1, 2, 2, -3, 3, 2, 3, 0, 1, 2);
    const edit = paintStrips('picture', drawn, design)!;
    expect([...edit.runs]).toEqual([0, 0, 1, 2, 1, 3, 1, 2]);
  });

  it('are no edit where all lie outside, or have no cells', () => {
    expect(paintStrips('picture', Int32Array.of(0, 4, 2, 2, 5, 0, 1, 2), design)).toBeNull();
    expect(paintStrips('picture', Int32Array.of(0, 1, 0, 2), design)).toBeNull();
    expect(paintStrips('picture', new Int32Array(0), design)).toBeNull();
  });

  it('may be single cells, in any order', () => {
    const cells = [
      { row: 1, column: 2 },
      { row: 0, column: 3 },
    ];
    const edit = paintStrips('picture', stripsOfCells(cells, 2), design)!;
    expect(lettersOfChart(flatten(apply(design, edit)))).toEqual(['aaab', 'aaba', 'aaaa']);
  });
});
