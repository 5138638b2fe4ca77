import { describe, expect, it } from 'vitest';
import { flatten, goesRight, reflatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { apply } from '../../../shared/design/edits.ts';
import { designFromLetters, lettersOfChart } from '../../notation.ts';

const flat = (design: Design) => lettersOfChart(flatten(design));

describe('the flat chart', () => {
  const layers = [
    ['aaa.', 'aaa.'],
    ['b-..', '....'],
    ['.c..', 'c...'],
  ];

  it('shows the topmost cell that is not empty; bare hides what lies below, and all empty is bare', () => {
    expect(flat(designFromLetters(layers))).toEqual(['bca-', 'caa-']);
    expect(flat(designFromLetters(layers.slice(0, 2)))).toEqual(['b-a-', 'aaa-']);
  });

  it('looks through hidden layers, and is bare where every layer is hidden', () => {
    const design = designFromLetters(layers);
    const without = (hidden: number[]) =>
      flat({
        ...design,
        layers: design.layers.map((layer, i) => ({ ...layer, visible: !hidden.includes(i) })),
      });
    expect(without([2])).toEqual(['b-a-', 'aaa-']);
    expect(without([0])).toEqual(['bc--', 'c---']);
    expect(without([0, 1, 2])).toEqual(['----', '----']);
  });

  it('made anew in the rows of an edit is the chart of the edited design, and leaves the old one alone', () => {
    const design = designFromLetters(layers);
    const chart = flatten(design);
    const edited = apply(design, { kind: 'paint', layer: 'picture', runs: Uint16Array.of(1, 1, 2, 4) });
    expect(lettersOfChart(reflatten(chart, edited, [1]))).toEqual(['bca-', 'cdd-']);
    expect(lettersOfChart(chart)).toEqual(['bca-', 'caa-']);
  });
});

describe('the direction of a row', () => {
  it('alternates from the start corner', () => {
    expect([0, 1, 2, 7].map((row) => goesRight('top-left', row))).toEqual([true, false, true, false]);
    expect([0, 1, 2, 7].map((row) => goesRight('top-right', row))).toEqual([false, true, false, true]);
  });
});
