import { describe, expect, it } from 'vitest';
import { figuresOf } from '../../../renderer/plan/plans/figures.ts';
import { alike } from '../../../renderer/plan/what-if/alike.ts';
import { type Change, variationOf } from '../../../renderer/plan/what-if/change.ts';
import { changesWords } from '../../../renderer/plan/what-if/change-words.ts';
import { whatIfRows } from '../../../renderer/plan/what-if/figure-rows.ts';
import { newChange } from '../../../renderer/plan/what-if/new-change.ts';
import { weighable } from '../../../renderer/plan/what-if/use-weighed.ts';
import type { Weighed } from '../../../renderer/plan/what-if/weigh.worker.ts';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { apply, inverse } from '../../../shared/design/edits.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { designFromLetters, lettersOfChart } from '../../notation.ts';

const design = designFromLetters(['aabbcc', 'aabacc', 'aaaacc', 'ccaaaa']);

function varied(changes: readonly Change[], of: Design = design) {
  const made = variationOf(of, changes);
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value;
}

describe('a variant', () => {
  it('without a change, or with what the design has already, is the design', () => {
    expect(varied([])).toEqual({ edit: null, design });
    const { workingLengthMm, carryMaxCords, carryMaxRows } = design.tying;
    expect(varied([{ kind: 'working-length', mm: workingLengthMm }]).edit).toBeNull();
    expect(varied([{ kind: 'carry', cords: carryMaxCords, rows: carryMaxRows }]).edit).toBeNull();
  });

  it('has another working length and other limits for carries', () => {
    const { tying } = varied([
      { kind: 'working-length', mm: 2000 },
      { kind: 'carry', cords: 3, rows: 1 },
    ]).design;
    expect(tying).toEqual({ ...design.tying, workingLengthMm: 2000, carryMaxCords: 3, carryMaxRows: 1 });
  });

  it('has a reserve of each piece, and a wish for fewer hanging at once', () => {
    const { tying } = varied([
      { kind: 'reserve', share: 0.05 },
      { kind: 'live-wish', strands: 4 },
    ]).design;
    expect(tying).toEqual({ ...design.tying, reserveShare: 0.05, liveWish: 4 });
    // The design tells of no reserve, which is as much as none.
    expect(varied([{ kind: 'reserve', share: 0 }]).edit).toBeNull();
  });

  it('merges one yarn into another, wherever it is', () => {
    const merged = varied([{ kind: 'merge', from: 'y3', into: 'y2' }]).design;
    expect(lettersOfChart(flatten(merged))).toEqual(['aabbbb', 'aababb', 'aaaabb', 'bbaaaa']);
    expect(merged.yarns.map(({ id }) => id)).not.toContain('y3');
  });

  it('can’t merge a yarn that is gone, nor one into itself', () => {
    expect(variationOf(design, [{ kind: 'merge', from: 'y64', into: 'y2' }])).toMatchObject({
      problem: { code: 'no-such-yarn' },
    });
    expect(variationOf(design, [{ kind: 'merge', from: 'y2', into: 'y2' }])).toMatchObject({ ok: false });
  });

  it('has its lone knots tidied, by the same rule as on the Draw screen', () => {
    const speckled = designFromLetters(['aaaa', 'abaa', 'aaaa']);
    expect(lettersOfChart(flatten(varied([{ kind: 'tidy' }], speckled).design))).toEqual([
      'aaaa',
      'aaaa',
      'aaaa',
    ]);
    expect(varied([{ kind: 'tidy' }], designFromLetters(['aa', 'aa'])).edit).toBeNull();
  });

  it('has the gauge that was told, and keeps the hand whose yarn was measured', () => {
    const gauge: Change = { kind: 'gauge', knotsPer10Cm: 18, rowsPer10Cm: 21 };
    const told = gaugeOf(varied([gauge]).design);
    expect(100 / told.pitchMm).toBeCloseTo(18, 9);
    expect(100 / told.rowHeightMm).toBeCloseTo(21, 9);
    const swatch = { widthMm: 100, cords: 20, heightMm: 96, rows: 20, yarnMm: 2400, knots: 60 };
    const measured = { ...design, swatches: [swatch] };
    const after = gaugeOf(varied([gauge], measured).design);
    expect(after.yarnFactor).toBeCloseTo(gaugeOf(measured).yarnFactor, 9);
    expect(after.yarnFactorSource).toBe('measured');
  });

  it('is one edit, which makes it of the design and can be taken back', () => {
    const { edit, design: next } = varied([
      { kind: 'merge', from: 'y3', into: 'y2' },
      { kind: 'tidy' },
      { kind: 'working-length', mm: 900 },
    ]);
    expect(apply(design, edit!)).toEqual(next);
    expect(apply(next, inverse(design, edit!))).toEqual(design);
  });

  it('begins a little off from what the design has, and can be planned', () => {
    for (const kind of ['working-length', 'carry', 'reserve', 'live-wish', 'merge', 'gauge'] as const) {
      const { edit, design: next } = varied([newChange(kind, design, 3)]);
      expect(edit, kind).not.toBeNull();
      expect(planStrands(next, flatten(next)).ok, kind).toBe(true);
    }
  });
});

describe('what a change begins with', () => {
  it('is one strand fewer than hang at once, or than are wished for', () => {
    const wished = (liveWish: number): Design => ({ ...design, tying: { ...design.tying, liveWish } });
    expect(newChange('live-wish', design, 6)).toEqual({ kind: 'live-wish', strands: 5 });
    expect(newChange('live-wish', wished(4), 6)).toEqual({ kind: 'live-wish', strands: 3 });
    expect(newChange('live-wish', wished(4), 2)).toEqual({ kind: 'live-wish', strands: 1 });
    expect(newChange('live-wish', design, 1)).toEqual({ kind: 'live-wish', strands: 1 });
  });

  it('is the yarn of fewer knots merged into the one that looks most like it, of those that are tied', () => {
    const colours = ['#f5f5f0', '#203040', '#f0f0ea', '#213141'];
    const drawn = designFromLetters(['aaab', 'aacc', 'accc']);
    const yarns = drawn.yarns.map((yarn, i) => ({ ...yarn, color: colours[i] ?? yarn.color }));
    expect(newChange('merge', { ...drawn, yarns }, null)).toEqual({ kind: 'merge', from: 'y3', into: 'y1' });
  });
});

describe('a variant in words', () => {
  it('says each change, and nothing changed as it is', () => {
    const say = (changes: readonly Change[]) => changesWords(changes, design, 'metric');
    const [, second, third] = design.yarns;
    expect(say([])).toBe('as it is');
    expect(say([{ kind: 'working-length', mm: 2000 }, { kind: 'tidy' }])).toBe(
      'pieces of 200 cm, lone knots tidied',
    );
    expect(say([{ kind: 'carry', cords: 1, rows: 4 }])).toBe('carried 1 cord and 4 rows at most');
    expect(say([{ kind: 'carry', cords: 0, rows: 0 }])).toBe('nothing carried');
    expect(say([{ kind: 'reserve', share: 0.05 }])).toBe('5 % of each piece in reserve');
    expect(say([{ kind: 'reserve', share: 0 }])).toBe('pieces without reserve');
    expect(say([{ kind: 'live-wish', strands: 1 }])).toBe('1 strand hanging at once at most');
    expect(say([{ kind: 'merge', from: 'y3', into: 'y2' }])).toBe(
      `${third!.name} merged into ${second!.name}`,
    );
  });

  it('tells a gauge over 4 inches to whoever measures in inches', () => {
    // 4 in = 101.6 mm exactly: international yard and pound agreement, 1959.
    const gauge: Change = { kind: 'gauge', knotsPer10Cm: 20, rowsPer10Cm: 25 };
    expect(changesWords([gauge], design, 'metric')).toBe('20 knots and 25 rows per 10 cm');
    expect(changesWords([gauge], design, 'us')).toBe('20.3 knots and 25.4 rows per 4 in');
  });
});

describe('variants side by side', () => {
  const weighed = (of: Design): Weighed => {
    const chart = flatten(of);
    const plan = planStrands(of, chart);
    if (!plan.ok) throw new Error(plan.problem.sentence);
    const materials = materialsOf(of, chart, plan.value);
    return { effort: 'full', materials, figures: figuresOf(materials, plan.value) };
  };
  const cost = whatIfRows.find(({ name }) => name === 'Cost of materials')!;
  const priced: Design = {
    ...design,
    yarns: design.yarns.map((yarn) => ({ ...yarn, price: 4.5 })),
    money: { currency: 'EUR', cordPricePerM: 0.4 },
  };

  it('say that a cost of which nothing was told is not told yet, and give no difference', () => {
    const [first, one] = [weighed(design), weighed({ ...design, rows: design.rows })];
    expect(cost.shown(one, 'metric')).toBe('not told yet');
    expect(cost.differs(first, one, 'metric')).toBe('');
  });

  it('tell a cost that leaves out the dowel as at least so much, and its difference all the same', () => {
    const gauge = varied([{ kind: 'gauge', knotsPer10Cm: 10, rowsPer10Cm: 10 }], priced).design;
    const [first, one] = [weighed(priced), weighed(gauge)];
    expect(cost.shown(first, 'metric')).toMatch(/^at least [\d.]+ EUR$/);
    const figure = (of: Weighed) => Number(/[\d.]+/.exec(cost.shown(of, 'metric'))![0]);
    const by = figure(one) - figure(first);
    expect(by).toBeGreaterThan(0);
    expect(cost.differs(first, one, 'metric')).toBe(`+${by.toFixed(2)} EUR`);
    const noCord = weighed({ ...priced, money: { currency: 'EUR' } });
    expect(cost.differs(noCord, noCord, 'metric')).toBe('');
  });

  it('differ by what is shown', () => {
    const yarn = whatIfRows.find(({ name }) => name === 'Carries and turns')!;
    const with_ = (carriedMm: number): Weighed => {
      const one = weighed(design);
      return { ...one, figures: { ...one.figures, carriedMm } };
    };
    // 1.0 m and 1.1 m are shown, though there are only 20 mm between them.
    expect(yarn.differs(with_(1040), with_(1060), 'metric')).toBe('+0.1 m');
    expect(yarn.differs(with_(1060), with_(1140), 'metric')).toBe('same');
  });

  it('that come to the same are found, whatever changes lead there', () => {
    const longer: Change = { kind: 'working-length', mm: 2000 };
    const found = (of: Design, ...lists: readonly (readonly Change[])[]) =>
      alike(
        [[], ...lists].map((changes, i) => {
          const made = varied(changes, of).design;
          return weighable(`v${i}`, made, flatten(made));
        }),
      );
    // There is no lone knot to tidy here, and one there.
    expect(
      found(designFromLetters(['aabb', 'aabb']), [{ kind: 'tidy' }], [longer], [{ kind: 'tidy' }, longer]),
    ).toEqual({ v1: 'v0', v3: 'v2' });
    const speckled = designFromLetters(['aaaa', 'abaa', 'aaaa']);
    expect(
      found(speckled, [{ kind: 'tidy' }], [longer], [longer, { kind: 'tidy' }], [{ kind: 'tidy' }, longer]),
    ).toEqual({ v4: 'v3' });
  });
});
