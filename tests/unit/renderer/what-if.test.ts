import { describe, expect, it } from 'vitest';
import { type Change, variationOf } from '../../../renderer/plan/what-if/change.ts';
import { changesWords } from '../../../renderer/plan/what-if/change-words.ts';
import { difference } from '../../../renderer/plan/what-if/figure-rows.ts';
import { newChange } from '../../../renderer/plan/what-if/new-change.ts';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { apply, inverse } from '../../../shared/design/edits.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
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
      const { edit, design: next } = varied([newChange(kind, design)]);
      expect(edit, kind).not.toBeNull();
      expect(planStrands(next, flatten(next)).ok, kind).toBe(true);
    }
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

  it('says a difference with its sign, or that there is none', () => {
    const show = (value: number) => `${Math.round(value)} m`;
    expect(difference(4, show)).toBe('+4 m');
    expect(difference(-4, show)).toBe('−4 m');
    expect(difference(0.2, show)).toBe('same');
  });
});
