import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { priced } from '../../../shared/materials/priced.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../notation.ts';

function materialsFor(design: Design) {
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return materialsOf(design, chart, plan.value);
}

const plain = designFromLetters(['aaabbb', 'aabbbb', 'abbbba', 'aabbaa']);
const told: Design = {
  ...plain,
  yarns: plain.yarns.map((yarn, i) => ({ ...yarn, price: 4.5 + i, ownedSkeins: i })),
  money: { currency: 'EUR', cordPricePerM: 0.4, dowelPrice: 6, hourlyRate: 18, overheadShare: 0.1 },
};

describe('materials at other prices', () => {
  it('are those of the design that has these prices, to the last figure', () => {
    expect(priced(materialsFor(plain), told)).toEqual(materialsFor(told));
    expect(priced(materialsFor(told), plain)).toEqual(materialsFor(plain));
  });

  it('stay as they are at the design’s own', () => {
    const own = materialsFor(told);
    expect(priced(own, told)).toEqual(own);
  });

  it('count cord by the yard for whoever buys it so, at the same cost', () => {
    const metric = priced(materialsFor(told), told).cost.parts.cord;
    const us = priced(materialsFor(told), told, 'us').cost.parts.cord;
    // 1 yd = 0.9144 m exactly: international yard and pound agreement, 1959.
    expect(us.formula).toBe('Cord = 1.65 yd × 0.36576 EUR = 0.60 EUR');
    expect(metric.formula).toMatch(/ m × 0\.40 EUR = /);
    expect(us.amount).toBe(metric.amount);
  });

  it('count as not told what a yarn does not tell any more', () => {
    const gone = priced(materialsFor(told), { ...told, yarns: [] });
    expect(gone.yarns.every(({ ownedSkeins }) => ownedSkeins === null)).toBe(true);
    expect(gone.cost.parts.yarn).toMatchObject({ amount: 0, whole: false });
  });
});
