import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { LivePlans } from '../../../../shared/tying/repair/live-plans.ts';
import { designFromLetters } from '../../../notation.ts';

function quick(design: Design) {
  const plan = planStrands(design, flatten(design), { effort: 'quick' });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const { chartHash: _, ...plain } = plan.value;
  return plain;
}

describe('live plans', () => {
  const rows = ['abacca', 'bbacba', 'aabbca'];

  it('are the quick plan without its hash, after each change of a cell or a pin', () => {
    const live = new LivePlans();
    const changed = ['abacca', 'bbabba', 'aabbca'];
    const designs = [
      designFromLetters(rows),
      designFromLetters(changed),
      designFromLetters(changed, { pins: [{ kind: 'cut', row: 1, cord: 1 }] }),
      designFromLetters(rows, { pins: [{ kind: 'cut', row: 1, cord: 1 }] }),
      designFromLetters(rows),
    ];
    for (const design of designs)
      expect(live.plan(design, flatten(design))).toEqual({ ok: true, value: quick(design) });
    expect(live.plan(designs[2]!, flatten(designs[2]!))).toMatchObject({
      value: { pins: [{ kind: 'cut', row: 1, cord: 1 }] },
    });
  });

  it('can not be made where a piece is too short for one knot', () => {
    const design = designFromLetters(rows);
    const short = { ...design, tying: { ...design.tying, workingLengthMm: 10 } };
    expect(new LivePlans().plan(short, flatten(short))).toMatchObject({
      ok: false,
      problem: { code: 'piece-too-short' },
    });
  });
});
