/**
 * A thousand simulated makers: each ties at a tension of their own, which the studio doesn't know, and measures swatches
 * that scatter by 1.5 %. What the studio then states as the 95 % interval is held against what each maker needs: what
 * that very plan takes of the maker's own hand, and the figures of a plan that is made for the maker's true gauge.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../shared/chart/chart.ts';
import type { Design } from '../../shared/design/design.ts';
import type { Swatch } from '../../shared/design/schema.ts';
import { cutList } from '../../shared/gauge/cords.ts';
import { fitSwatches } from '../../shared/gauge/fit-swatches.ts';
import { type Gauge, gaugeOf, knotMm, sizeOf } from '../../shared/gauge/gauge.ts';
import { gaugeSpread, spreadOf } from '../../shared/gauge/gauge-spread.ts';
import { planByHand } from '../../shared/materials/plan-by-hand.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import type { Uncertain } from '../../shared/units/uncertain.ts';
import { designFromLetters } from '../notation.ts';
import { arbitraryChart } from './arbitrary-chart.ts';
import { arbitraryDesign } from './arbitrary-design.ts';
import { type Random, seeded } from './random-edit.ts';

fc.configureGlobal({ seed: 31_000 });

const makers = 1000;
/** A round moon of a second yarn on 24 x 30 cells. */
const moon = designFromLetters(
  Array.from({ length: 30 }, (_, r) =>
    Array.from({ length: 24 }, (_, c) => ((c - 11.5) ** 2 + (r - 14.5) ** 2 < 60 ? 'b' : 'a')).join(''),
  ),
);
const chart = flatten(moon);
const unmeasured = gaugeOf(moon);

describe('a thousand makers whose swatches scatter by 1.5 %', () => {
  const rows = [1, 2, 3, 5].map((swatches) => ({ swatches, ...simulated(swatches, 0.015) }));

  it.each(rows)(
    'of $swatches swatches find their yarn need within the stated interval in 93 to 97 % of all cases',
    ({ used, tied, knot, width, leg }) => {
      for (const covered of [used, tied, knot, width, leg]) {
        expect(covered).toBeGreaterThanOrEqual(0.93);
        expect(covered).toBeLessThanOrEqual(0.97);
      }
    },
  );

  it('know their yarn need to 5 % or better with three swatches, at the median', () => {
    expect(rows[2]!.medianShare).toBeLessThanOrEqual(0.05);
    expect(rows[2]!.medianShare).toBeGreaterThan(0.01);
  });

  it('know it better with each further swatch, on average', () => {
    const means = rows.map(({ meanShare }) => meanShare);
    expect(means).toEqual(means.toSorted((a, b) => b - a));
  });
});

describe('makers whose swatches scatter otherwise than by 1.5 %', () => {
  it('are found out by their residuals: with five swatches the interval holds, and follows the scatter', () => {
    const steady = simulated(5, 0.0075);
    const wild = simulated(5, 0.03);
    expect(steady.used).toBeGreaterThanOrEqual(0.93);
    expect(wild.used).toBeGreaterThanOrEqual(0.9);
    expect(wild.medianShare).toBeGreaterThan(2 * steady.medianShare);
  });
});

describe('what is told of a figure', () => {
  it('always holds the figure, is finite, and never below nothing, however odd the swatches are', () => {
    fc.assert(
      fc.property(arbitraryDesign(), (design) => {
        const spread = gaugeSpread(design);
        const figures = [
          (gauge: Gauge) => gauge.pitchMm,
          (gauge: Gauge) => gauge.rowHeightMm,
          (gauge: Gauge) => gauge.yarnFactor,
          (gauge: Gauge) => gauge.takeUp,
          (gauge: Gauge) => knotMm(design, design.yarns[0]!, gauge),
          (gauge: Gauge) => sizeOf(design, gauge).widthMm,
          (gauge: Gauge) => cutList(design, gauge).totalMm,
        ];
        for (const figure of figures) expectSound(spreadOf(spread, figure));
      }),
      { numRuns: 400 },
    );
  });

  it('holds it in every part of the materials, and parts add up to the whole', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart: own }) => {
        const { finished, dowel, cords, yarns, totals, gauge } = materialsOf(
          design,
          own,
          planned(design, own),
        );
        const told = [finished, dowel, cords, totals, gauge, ...yarns].flatMap(({ uncertain }) =>
          Object.values(uncertain as Record<string, Uncertain>),
        );
        for (const each of told) expectSound(each);
        expect(finished.uncertain.widthMm.value).toBe(finished.widthMm);
        expect(cords.uncertain.totalMm.value).toBe(cords.totalMm);
        expect(totals.uncertain.yarnCutMm.value).toBeCloseTo(totals.yarnCutMm, 6);
        expect(totals.uncertain.massG.value).toBeCloseTo(totals.massG, 9);
        // One hand ties all yarns: intervals add up, they don't average out.
        expect(
          sum(yarns.map(({ uncertain }) => uncertain.usedMm.share * uncertain.usedMm.value)),
        ).toBeLessThan(1.2 * totals.uncertain.yarnUsedMm.share * totals.uncertain.yarnUsedMm.value + 1);
        for (const { pieces, ifLoose } of yarns) expect(ifLoose.pieces).toBeGreaterThanOrEqual(pieces);
      }),
      { numRuns: 200 },
    );
  });

  it('grows in all lengths as the hanging does, and its shares stay', () => {
    fc.assert(
      fc.property(arbitrarySwatches, fc.constantFrom(10, 100), (swatches, times) => {
        const small = gaugeSpread({ ...moon, swatches });
        const large = gaugeSpread(magnified({ ...moon, swatches }, times));
        const pitch = spreadOf(small, ({ pitchMm }) => pitchMm);
        const wide = spreadOf(large, ({ pitchMm }) => pitchMm);
        expect(wide.value / pitch.value).toBeCloseTo(times, 9);
        expect(wide.share).toBeCloseTo(pitch.share, 9);
        expect(large.gauge.yarnFactor).toBeCloseTo(small.gauge.yarnFactor, 9);
      }),
      { numRuns: 100 },
    );
  });

  it('is more yarn where a knot takes more', () => {
    fc.assert(
      fc.property(fc.double({ min: 12_000, max: 24_000, noNaN: true }), (yarnMm) => {
        const needs = [yarnMm, yarnMm * 1.05].map((each) => {
          const swatches = [{ widthMm: 100, cords: 20, heightMm: 96, rows: 20, yarnMm: each, knots: 400 }];
          const design = { ...moon, swatches };
          return materialsOf(design, chart, planned(design)).totals.uncertain.yarnUsedMm;
        });
        for (const end of ['low', 'value', 'high'] as const) {
          expect(needs[1]![end]).toBeGreaterThan(needs[0]![end]);
        }
      }),
      { numRuns: 30 },
    );
  });
});

/** What a maker's hand is like; the studio knows nothing of it. */
interface Maker {
  readonly pitchMm: number;
  readonly rowHeightMm: number;
  readonly yarnFactor: number;
  readonly takeUp: number;
}

function simulated(swatches: number, scatter: number) {
  const random = seeded(1000 * swatches + scatter * 1e6);
  const hits = { used: 0, tied: 0, knot: 0, width: 0, leg: 0 };
  const shares: number[] = [];
  for (let i = 0; i < makers; i++) {
    const maker = randomMaker(random);
    const truth: Gauge = { ...unmeasured, ...maker };
    const design = {
      ...moon,
      swatches: Array.from({ length: swatches }, () => measured(maker, scatter, random)),
    };
    const plan = planned(design);
    const { totals, finished, gauge } = materialsOf(design, chart, plan);
    const need = planned(moon, chart, truth).totals.usedMm;
    const { takeUp } = fitSwatches(design);
    if (holds(totals.uncertain.yarnUsedMm, need)) hits.used++;
    if (holds(totals.uncertain.yarnUsedMm, tiedMm(plan, truth))) hits.tied++;
    if (holds(gauge.uncertain.knotMm, knotMm(moon, moon.yarns[0]!, truth))) hits.knot++;
    if (holds(finished.uncertain.widthMm, sizeOf(moon, truth).widthMm)) hits.width++;
    if (holds(takeUp, maker.takeUp)) hits.leg++;
    shares.push(totals.uncertain.yarnUsedMm.share);
  }
  shares.sort((a, b) => a - b);
  return {
    used: hits.used / makers,
    tied: hits.tied / makers,
    knot: hits.knot / makers,
    width: hits.width / makers,
    leg: hits.leg / makers,
    medianShare: shares[makers / 2]!,
    meanShare: sum(shares) / makers,
  };
}

/** What the maker uses who follows the very plan that the swatches gave, knot by knot. */
function tiedMm(plan: Plan, truth: Gauge): number {
  const { slack, knotMm: reckoned, pitchMm, rowHeightMm } = plan.settings;
  const times = Object.fromEntries(
    moon.yarns.flatMap((yarn) => {
      const mm = reckoned[yarn.id];
      return mm === undefined ? [] : [[yarn.id, knotMm(moon, yarn, truth) / mm]];
    }),
  );
  const pieces = sum(Object.values(planByHand(plan, times)).map(({ pieces }) => pieces));
  const knotted = sum(moon.yarns.map(({ id }) => (plan.perYarn[id]?.knottedMm ?? 0) * (times[id] ?? 0)));
  let cords = 0;
  let rows = 0;
  for (const { stretches } of plan.strands.flatMap(({ pieces: each }) => each)) {
    for (const [i, { from, row }] of stretches.entries()) {
      const before = stretches[i - 1];
      if (!before) continue;
      cords += Math.abs(from - before.to);
      rows += row - before.row;
    }
  }
  expect(slack * (cords * pitchMm + rows * rowHeightMm)).toBeCloseTo(plan.totals.carriedMm, -1);
  const carried = slack * (cords * truth.pitchMm + rows * truth.rowHeightMm);
  return knotted + carried + 2 * plan.settings.tailMm * pieces;
}

/** Around the defaults: pitch and row height by 6 %, yarn per knot by 10 % (standard deviations). */
function randomMaker(random: Random): Maker {
  return {
    pitchMm: unmeasured.pitchMm * around1(0.06, random),
    rowHeightMm: unmeasured.rowHeightMm * around1(0.06, random),
    yarnFactor: around1(0.1, random),
    // So much that no swatch has less than none.
    takeUp: 0.15,
  };
}

/** A swatch of 20 cords and 20 rows as that maker ties and measures it; all four readings scatter by themselves. */
function measured(maker: Maker, scatter: number, random: Random): Swatch {
  const oneKnotMm = knotMm(moon, moon.yarns[0]!, { ...unmeasured, ...maker });
  return {
    widthMm: 20 * maker.pitchMm * around1(scatter, random),
    cords: 20,
    heightMm: 20 * maker.rowHeightMm * around1(scatter, random),
    rows: 20,
    yarnMm: 400 * oneKnotMm * around1(scatter, random),
    knots: 400,
    cordBeforeMm: 80 * (1 + maker.takeUp) * around1(scatter, random),
    cordAfterMm: 80,
  };
}

/** Normal, around 1 (Box and Muller 1958). */
function around1(sd: number, random: Random): number {
  return 1 + sd * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

function planned(design: Design, own = chart, gauge: Gauge = gaugeOf(design)): Plan {
  const plan = planStrands(design, own, { effort: 'quick', gauge });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}

function holds({ low, high }: Pick<Uncertain, 'low' | 'high'>, truth: number): boolean {
  return low <= truth && truth <= high;
}

function expectSound({ value, low, high, share }: Uncertain): void {
  for (const each of [value, low, high, share]) expect(Number.isFinite(each)).toBe(true);
  expect(low).toBeGreaterThanOrEqual(0);
  expect(low).toBeLessThanOrEqual(value);
  expect(high).toBeGreaterThanOrEqual(value);
  expect(share).toBeGreaterThanOrEqual(0);
}

const arbitrarySwatches: fc.Arbitrary<Swatch[]> = fc.array(
  fc.record({
    widthMm: fc.integer({ min: 80, max: 120 }),
    cords: fc.integer({ min: 15, max: 25 }),
    heightMm: fc.integer({ min: 80, max: 120 }),
    rows: fc.integer({ min: 15, max: 25 }),
    yarnMm: fc.integer({ min: 12_000, max: 16_000 }),
    knots: fc.constant(400),
  }),
  { maxLength: 4 },
);

/** All lengths of what is tied with, and of its swatches. */
function magnified(design: Design, times: number): Design {
  return {
    ...design,
    cord: { ...design.cord, diameterMm: design.cord.diameterMm * times },
    yarns: design.yarns.map((yarn) => ({ ...yarn, diameterMm: yarn.diameterMm * times })),
    swatches: design.swatches.map((swatch) => ({
      ...swatch,
      widthMm: swatch.widthMm * times,
      heightMm: swatch.heightMm * times,
      yarnMm: swatch.yarnMm! * times,
    })),
  };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((a, b) => a + b, 0);
}
