import { describe, expect, it } from 'vitest';
import { lastFigures } from '../../../../renderer/plan/plans/last-figures.ts';
import { type Planned, planned } from '../../../../renderer/plan/plans/planned.ts';
import { plannedAlike } from '../../../../renderer/plan/plans/planned-alike.ts';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../../notation.ts';

const design = designFromLetters(['aabba', 'aabba']);
const source = (change: Partial<Design> = {}, letters?: string[]) => ({
  design: { ...design, ...change, layers: [] },
  chart: flatten(letters ? designFromLetters(letters) : design),
});
const short = source({ tying: { ...design.tying, workingLengthMm: 300 } });

function quickPlan(): Planned {
  const chart = flatten(design);
  const plan = planStrands(design, chart, { effort: 'quick' });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return planned(design, chart, { plan: plan.value }).planned;
}

const quick = quickPlan();
const settled = { quick, full: null, last: null, settled: true };

describe('what a change of a setting is compared with', () => {
  it('is what the hanging took before it', () => {
    const change = { before: source(), now: short, wasTried: false };
    expect(lastFigures(settled, change)).toEqual({ quick: quick.figures, full: null });
  });

  it('is what it took without a pin that was set, and with one that was removed', () => {
    const pinned = source({ pins: [{ kind: 'cut', row: 1, cord: 2 }] });
    const told = { quick: quick.figures, full: null };
    for (const [before, now] of [
      [source(), pinned],
      [pinned, source()],
    ] as const) {
      expect(plannedAlike(before, now)).toBe(false);
      expect(lastFigures(settled, { before, now, wasTried: false })).toEqual(told);
    }
  });

  it('stays while other settings are tried, and while no plan has come yet', () => {
    const last = { quick: { ...quick.figures, pieces: 99 }, full: null };
    const change = { before: source(), now: short, wasTried: true };
    expect(lastFigures({ ...settled, last }, change)).toBe(last);
    expect(lastFigures({ ...settled, last, settled: false }, { ...change, wasTried: false })).toBe(last);
  });

  it('is nothing where the picture or a yarn is another', () => {
    const other = { before: source(), wasTried: false };
    expect(lastFigures(settled, { ...other, now: source({}, ['aabba', 'aabbb']) })).toBeNull();
    expect(
      lastFigures(settled, {
        ...other,
        now: source({ yarns: design.yarns.map((yarn) => ({ ...yarn, diameterMm: 3 })) }),
      }),
    ).toBeNull();
  });
});

describe('a plan', () => {
  it('need not be made again for the same cells, yarns and settings', () => {
    expect(plannedAlike(source(), source())).toBe(true);
    expect(plannedAlike(source(), short)).toBe(false);
    expect(plannedAlike(source(), source({}, ['aabba', 'aabbb']))).toBe(false);
    expect(plannedAlike(source(), source({}, ['aabbaa', 'aabbaa']))).toBe(false);
  });

  it('serves a design of the same figures, though its parts were made anew', () => {
    expect(plannedAlike(source(), source({ yarns: design.yarns.map((yarn) => ({ ...yarn })) }))).toBe(true);
  });
});
