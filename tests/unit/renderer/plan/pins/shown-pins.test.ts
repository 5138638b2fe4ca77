import { describe, expect, it } from 'vitest';
import { pinWords } from '../../../../../renderer/plan/pins/pin-words.ts';
import { shownPins } from '../../../../../renderer/plan/pins/shown-pins.ts';
import { planned } from '../../../../../renderer/plan/plans/planned.ts';
import { flatten } from '../../../../../shared/chart/chart.ts';
import type { Pin } from '../../../../../shared/design/schema.ts';
import { planStrands } from '../../../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../../../notation.ts';

const cut: Pin = { kind: 'cut', row: 1, cord: 2 };
const carry: Pin = { kind: 'carry', row: 1, cord: 2, toRow: 1, toCord: 5 };
const closed: Pin = { kind: 'no-carry', row: 2, cord: 3 };

function shownOf(pins: readonly Pin[]) {
  const design = designFromLetters(['aabba', 'aabba'], { pins: [...pins] });
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return shownPins(pins, structuredClone(planned(design, chart, { plan: plan.value }).planned));
}

describe('the list of pins', () => {
  it('says what each decides, and where', () => {
    expect([cut, carry, closed].map(pinWords)).toEqual([
      'Cut after row 1, cord 2',
      'Carry from row 1, cord 2 to row 1, cord 5',
      'Never carry across row 2, cord 3',
    ]);
  });

  it('says of those that contradict one before them why they are not obeyed', () => {
    expect(shownOf([cut, closed, carry]).map(({ fault }) => fault)).toEqual([
      '',
      '',
      'Row 1, cord 2 to row 1, cord 5: another pin cuts the strand there. Remove one of the two.',
    ]);
  });

  it('has no fault where no plan has come yet, and nothing where nothing is pinned', () => {
    expect(shownPins([cut], null)).toMatchObject([{ pin: cut, fault: '' }]);
    expect(shownPins(undefined, null)).toEqual([]);
  });
});
