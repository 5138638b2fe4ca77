import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { PatternPart } from '../../../../shared/design/pattern-schema.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { type Copy, copyOf } from '../../../../shared/pattern/copy.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import type { PatternInput } from '../../../../shared/pattern/pattern-input.ts';
import { preflight } from '../../../../shared/pattern/preflight/preflight.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../../notation.ts';

/** What is found of rows beside the chart. */
function found(row: string, copy: Partial<Copy>, parts: PatternPart[]) {
  const design = { ...designFromLetters([row]), pattern: { parts } };
  const chart = flatten(design);
  const plan = planStrands(design, chart, { effort: 'quick' });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  const input: PatternInput = {
    design,
    chart,
    plan: plan.value,
    materials,
    paper: 'a4',
    units: 'metric',
    copy: { ...copyOf(design), ...copy },
  };
  return preflight(input, layOutPattern(input)).filter(({ kind }) => kind === 'rows-not-beside');
}

const changing = 'ab'.repeat(20);

describe('preflight of rows beside the chart', () => {
  it.each(['en', 'de'] as const)('finds them where they are wished and have no room (%s)', (language) => {
    const copy = { rowsBeside: true, language } as const;
    const [finding] = found(changing, copy, ['chart', 'rows']);
    expect(finding).toMatchObject({ weight: 'doubt', place: { on: 'page', page: 1 } });
    expect(finding!.sentence).toContain('stand on page 2 and after');
    expect(found(changing, copy, ['chart'])[0]!.mend).toBe('Add the written rows to the parts.');
  });

  it('finds nothing where they have room, or are not wished', () => {
    expect(found('aaaabb', { rowsBeside: true }, ['chart', 'rows'])).toEqual([]);
    expect(found(changing, {}, ['chart', 'rows'])).toEqual([]);
  });
});
