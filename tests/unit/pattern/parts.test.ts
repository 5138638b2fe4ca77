import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { layOutPattern } from '../../../shared/pattern/lay-out-pattern.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../notation.ts';

function partsPrinted(design: Design): (string | undefined)[] {
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  const document = layOutPattern({
    design,
    chart,
    plan: plan.value,
    materials,
    paper: 'a4',
    units: 'metric',
  });
  return [...new Set(document.pages.map(({ part }) => part))];
}

describe('a pattern is composed', () => {
  const design = designFromLetters(['aab', 'bba']);

  it('of the usual parts where the design does not say', () => {
    expect(partsPrinted(design)).toEqual(
      expect.arrayContaining(['cover', 'materials', 'chart', 'rows', 'care']),
    );
  });

  it('of the parts that the design names, in its order', () => {
    expect(partsPrinted({ ...design, pattern: { parts: ['rows', 'chart', 'cover'] } })).toEqual([
      'rows',
      'chart',
      'cover',
    ]);
  });
});
