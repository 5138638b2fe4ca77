import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { planNeverCarrying } from '../../../../shared/tying/careful-person/plan-never-carrying.ts';
import { settlePlan } from '../../../../shared/tying/kept/settled-plan.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../../notation.ts';

const design = designFromLetters(['aabb', 'abab', 'aabb', 'a-bb']);

function totalsOf(of: Design) {
  const plan = planStrands(of, flatten(of));
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value.totals;
}

/** Settled on what an older planner might have given: here on one that never carries, which takes more pieces. */
const older = planNeverCarrying(design, flatten(design));
if (!older.ok) throw new Error(older.problem.sentence);
const settled: Design = {
  ...design,
  bundles: { plan: settlePlan(design, flatten(design), older.value)! },
};

describe('a plan that labels were printed for', () => {
  it('stays in use, though today’s planner gives another one', () => {
    expect(totalsOf(design).pieces).toBeLessThan(older.value.totals.pieces);
    expect(totalsOf(settled)).toEqual(older.value.totals);
  });

  it('stays so whatever is changed that no plan hangs on: names, colours, a yarn that ties nothing, prices', () => {
    const [first, ...others] = settled.yarns;
    const spare = { ...first!, id: 'y9' as const, symbol: 'z', name: 'Spare' };
    const renamed = {
      ...settled,
      title: 'Another name',
      money: { hourlyRate: 20 },
      yarns: [...others, { ...first!, name: 'Dusk', color: '#123456' }, spare],
    };
    expect(totalsOf(renamed)).toEqual(older.value.totals);
  });

  it.each<[string, (of: Design) => Design]>([
    ['a cell', (of) => ({ ...of, layers: designFromLetters(['aabb', 'abab', 'aaab', 'a-bb']).layers })],
    ['a setting', (of) => ({ ...of, tying: { ...of.tying, carryMaxCords: 2 } })],
    ['the wish for few hanging strands', (of) => ({ ...of, tying: { ...of.tying, liveWish: 2 } })],
    ['the gauge', (of) => ({ ...of, swatches: [{ widthMm: 100, cords: 22, heightMm: 100, rows: 21 }] })],
    ['a pin', (of) => ({ ...of, pins: [{ kind: 'cut', row: 1, cord: 2 }] })],
    ['the start corner', (of) => ({ ...of, startCorner: 'top-right' })],
  ])('gives way where %s is another', (_, change) => {
    expect(totalsOf(change(settled))).toEqual(totalsOf(change(design)));
  });

  it('that does not fit its chart after all is passed over', () => {
    const plan = { ...settled.bundles!.plan!, rows: ['-'] };
    expect(totalsOf({ ...settled, bundles: { plan } })).toEqual(totalsOf(design));
  });

  it('is left aside where a plan is asked for with other wishes than the design’s', () => {
    const plan = planStrands(settled, flatten(settled), { liveWish: 9 });
    expect(plan.ok && plan.value.totals.pieces).toBe(totalsOf(design).pieces);
  });
});
