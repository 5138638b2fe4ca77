import { describe, expect, it } from 'vitest';
import { pairsBySight } from '../../../../renderer/draw/yarns/touching/pairs-by-sight.ts';
import { flatten } from '../../../../shared/chart/chart.ts';
import { alikePairs } from '../../../../shared/yarn/alike-pairs.ts';
import { designFromLetters } from '../../../notation.ts';

describe('what touches what', () => {
  it('lists a pair in each sight in which it looks alike, and in no other', () => {
    const design = designFromLetters(['aabb', 'ccbb']);
    const colors = ['#808080', '#828282', '#204060'];
    const yarns = design.yarns.map((yarn, i) => ({ ...yarn, color: colors[i] ?? yarn.color }));
    const bySight = pairsBySight(alikePairs(flatten(design), yarns));
    for (const sight of ['normal', 'protan', 'deutan', 'tritan', 'grey'] as const)
      expect(bySight.get(sight)!.map(({ a, b, count }) => [a, b, count])).toEqual([[1, 2, 1]]);
    expect([...pairsBySight([]).values()]).toEqual([[], [], [], [], []]);
  });

  it('finds yarns that only a greyscale print confuses', () => {
    const design = designFromLetters(['ab']);
    // Two colours of nearly the same luminance and opposite hues.
    const yarns = design.yarns.map((yarn, i) => ({
      ...yarn,
      color: ['#c05050', '#4080a0'][i] ?? yarn.color,
    }));
    const bySight = pairsBySight(alikePairs(flatten(design), yarns));
    expect(bySight.get('grey')).toHaveLength(1);
    expect(bySight.get('normal')).toEqual([]);
  });
});
