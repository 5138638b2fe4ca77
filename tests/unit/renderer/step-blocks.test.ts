import { describe, expect, it } from 'vitest';
import { blocksOf, nextOf } from '../../../renderer/plan/steps/step-blocks.ts';
import { flatten } from '../../../shared/chart/chart.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { stepsOfRow } from '../../../shared/tying/steps/steps-of-row.ts';
import { tyingOrder } from '../../../shared/tying/steps/tying-order.ts';
import { designFromLetters } from '../../notation.ts';

function stepsIn(letters: readonly string[], row: number) {
  const design = designFromLetters(letters);
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return stepsOfRow(tyingOrder(chart, plan.value), row);
}

describe('the steps of a row on the screen', () => {
  it('stand in blocks that hold each of them once, in order', () => {
    const steps = stepsIn(['ab'.repeat(60)], 1);
    const blocks = blocksOf(steps);
    expect(blocks.length).toBeGreaterThan(2);
    expect(blocks.flatMap((block) => block.steps)).toEqual(steps);
    for (const { first, steps: some } of blocks) expect(some[0]).toBe(steps[first]);
    expect(blocksOf([])).toEqual([]);
  });

  it('begin with the row itself while no knot of it is tied', () => {
    const steps = stepsIn(['aab', 'abb'], 2);
    expect(nextOf(steps, 3)).toBe(0);
  });

  it('go on within the run that is tied in part', () => {
    const steps = stepsIn(['aaabb'], 1);
    const next = steps[nextOf(steps, 2)]!;
    expect(next).toMatchObject({ kind: 'knots', count: 3, knotsBefore: 0 });
  });

  it('leave to be done what comes right after the last knot that is tied', () => {
    const steps = stepsIn(['aaabb'], 1);
    expect(steps[nextOf(steps, 3)]).toMatchObject({ kind: 'end', cord: 3 });
  });

  it('are all done where the next row has begun', () => {
    const steps = stepsIn(['aab', 'abb'], 1);
    expect(nextOf(steps, 4)).toBe(steps.length);
  });
});
