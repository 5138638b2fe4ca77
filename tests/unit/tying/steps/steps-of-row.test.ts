import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { planCarefully } from '../../../../shared/tying/careful-person/plan-carefully.ts';
import { rowTallies } from '../../../../shared/tying/steps/row-tallies.ts';
import { stepAt } from '../../../../shared/tying/steps/step-at.ts';
import { stepsOfRow } from '../../../../shared/tying/steps/steps-of-row.ts';
import { type TyingOrder, tyingOrder } from '../../../../shared/tying/steps/tying-order.ts';
import { designFromLetters } from '../../../notation.ts';

function orderOf(letters: string[]): TyingOrder {
  const design = designFromLetters(letters);
  const chart = flatten(design);
  const plan = planCarefully(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return tyingOrder(chart, plan.value);
}

describe('a step', () => {
  it('knows its row, its index and the knots before it', () => {
    const steps = stepsOfRow(orderOf(['abb', 'bba']), 2);
    expect(steps.map(({ row, index, kind, knotsBefore }) => [row, index, kind, knotsBefore])).toEqual([
      [2, 0, 'row', 3],
      // Bark lies two cords to the left of Moss's cord 3, and hangs ahead of it.
      [2, 1, 'carry', 3],
      [2, 2, 'knots', 3],
      [2, 3, 'end', 4],
      [2, 4, 'carry', 4],
      [2, 5, 'knots', 4],
      [2, 6, 'end', 6],
    ]);
  });

  it('counts pieces within their yarn, in the order in which they are attached', () => {
    // Two strands of Linen: between their cords the work is bare.
    const steps = stepsOfRow(orderOf(['a-a-b']), 1);
    const attached = steps.flatMap((step) =>
      step.kind === 'attach' ? [[step.yarn, step.piece, step.strand]] : [],
    );
    expect(attached).toEqual([
      ['y1', 1, 1],
      ['y1', 2, 2],
      ['y2', 1, 3],
    ]);
  });

  it('of a carry names what it lies behind, in the order of its way', () => {
    const carry = stepsOfRow(orderOf(['abbca']), 1).find(({ kind }) => kind === 'carry');
    expect(carry).toMatchObject({
      from: { row: 1, cord: 1 },
      to: { row: 1, cord: 5 },
      cords: 4,
      rows: 0,
      // 1.05 x 4 x 5 mm.
      lengthMm: 21,
      behind: [
        { yarn: 'y2', count: 2, from: 2, to: 3 },
        { yarn: 'y3', count: 1, from: 4, to: 4 },
      ],
      ahead: false,
      inHand: false,
    });
  });

  it('is looked for in a row that the chart has', () => {
    expect(() => stepsOfRow(orderOf(['ab']), 2)).toThrow('there is no row 2');
  });

  it('is not told of a plan of another chart', () => {
    const { plan } = orderOf(['ab']);
    const other = flatten(designFromLetters(['abc']));
    expect(() => tyingOrder(other, plan)).toThrow('the plan is of another chart');
  });
});

describe('the step of a knot', () => {
  it('is found through rows and runs, bare rows passed over', () => {
    const order = orderOf(['ab', '--', 'bb']);
    const found = [0, 1, 2, 3].map((knots) => stepAt(order, knots)!);
    expect(found.map(({ step, done }) => [step.row, step.yarn, done])).toEqual([
      [1, 'y1', 0],
      [1, 'y2', 0],
      [3, 'y2', 0],
      [3, 'y2', 1],
    ]);
    expect(stepAt(order, 4)).toBeNull();
  });
});

describe('what a row takes', () => {
  it('is its knots, pieces, loose ends and the strands that hang on after it', () => {
    expect(rowTallies(orderOf(['aab', '---', 'aaa']))).toEqual([
      { row: 1, knots: 3, attached: 2, joined: 0, looseEnds: 3, carries: 0, turns: 0, liveAfter: 1 },
      { row: 2, knots: 0, attached: 0, joined: 0, looseEnds: 0, carries: 0, turns: 0, liveAfter: 1 },
      { row: 3, knots: 3, attached: 0, joined: 0, looseEnds: 1, carries: 1, turns: 0, liveAfter: 0 },
    ]);
  });
});
