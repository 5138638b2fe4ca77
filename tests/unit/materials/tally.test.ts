import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../notation.ts';

function materials(letters: string[], change: Partial<Design> = {}) {
  const design = designFromLetters(letters, change);
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return materialsOf(design, chart, plan.value);
}

describe('materials', () => {
  it('buy what is cut, with a margin, in whole skeins', () => {
    // 12 knots, one piece of 1524 mm; 200 m in 100 g, skeins of 50 g.
    const [linen, ...others] = materials(['aaaa', 'aaaa', 'aaaa']).yarns;
    expect(others).toEqual([]);
    expect(linen).toMatchObject({
      id: 'y1',
      name: 'Linen',
      symbol: 'a',
      color: '#e6ddc9',
      pieces: 1,
      skeins: 1,
    });
    expect(linen!.cutMm).toBe(1524);
    expect(linen!.withMarginMm).toBeCloseTo(1676.4, 9);
    expect(linen!.massG).toBeCloseTo(0.762, 9);
    expect(linen!.skeinMm).toBe(100_000);
  });

  it('count cells, strands and loose ends, and name no yarn that is not used', () => {
    const { yarns, totals } = materials(['a-c', '---']);
    expect(yarns.map(({ id }) => id)).toEqual(['y1', 'y3']);
    expect(totals).toMatchObject({ knots: 2, bareCells: 4, strands: 2, pieces: 2, looseEnds: 4, liveMax: 0 });
  });

  it('add up the hours at the rates of the maker, rows without a knot left out', () => {
    const rates = {
      secondsPerKnot: 1,
      secondsPerPiece: 100,
      secondsPerRow: 1000,
      secondsPerMount: 10_000,
      secondsPerLooseEnd: 100_000,
      secondsToFinish: 1_000_000,
    };
    // 7 knots, 2 pieces, 2 rows with knots, 2 cut cords, 4 loose ends.
    const { totals } = materials(['aab-', '----', 'aaab'], { rates });
    expect(totals.pieces).toBe(2);
    expect(totals.seconds).toBe(7 + 200 + 2000 + 20_000 + 400_000 + 1_000_000);
  });

  it('weigh yarn, cord and dowel together', () => {
    const { totals, cords, yarns, dowel } = materials(['aabb', 'bbaa']);
    const yarnG = yarns.reduce((sum, { massG }) => sum + massG, 0);
    const dowelG = ((Math.PI * 36 * dowel.minLengthMm) / 1000) * 0.7;
    expect(totals.massG).toBeCloseTo(yarnG + cords.massG + dowelG, 9);
    // Two lark's heads, each four cords of 3 mm wide, are wider than four cords at 5 mm.
    expect(dowel.minLengthMm).toBe(2 * 12 + 2 * 51);
  });

  it('say whether the gauge is measured, in knots and rows per 10 cm', () => {
    expect(materials(['ab']).gauge).toMatchObject({ source: 'estimate', knotsPer10Cm: 20 });
    const swatches = [{ widthMm: 125, cords: 26, heightMm: 100, rows: 25 }];
    const { gauge, finished } = materials(['ab'], { swatches });
    expect(gauge.source).toBe('measured');
    expect(gauge.knotsPer10Cm).toBeCloseTo(20.8, 9);
    expect(gauge.rowsPer10Cm).toBe(25);
    expect(finished.knottedHeightMm).toBe(4);
    expect(finished.heightWithFringeMm).toBe(154);
  });

  it('name a spare leg where the cords are odd', () => {
    expect(materials(['aba']).cords).toMatchObject({ cutCords: 2, spareLegs: 1 });
  });

  it('say how sure each length is, and what the gauge rests on', () => {
    const swatches = [{ widthMm: 100, cords: 20, heightMm: 96, rows: 20, yarnMm: 16_000, knots: 400 }];
    const { gauge, finished, yarns, totals } = materials(['aaab', 'aabb', 'abbb'], { swatches });
    expect(gauge.knotMm).toBeCloseTo(40, 9);
    expect(gauge.uncertain.knotMm.share).toBeCloseTo(0.0294, 3);
    expect(gauge.basis.yarn).toMatchObject({
      from: 'swatches',
      swatches: 1,
      scatterShare: 0.015,
      scatterFrom: 'prior',
    });
    expect(gauge.basis.cord.from).toBe('estimate');
    expect(finished.uncertain.widthMm).toMatchObject({ value: 20 });
    // 6 knots of 40 mm are known to 2.94 %; the piece is cut as it is, and it holds a looser hand too.
    const { usedMm, cutMm, massG } = yarns[0]!.uncertain;
    expect(usedMm.high - usedMm.value).toBeCloseTo(6 * 40 * 0.0298, 0);
    expect(usedMm.value - usedMm.low).toBeCloseTo(6 * 40 * 0.0289, 0);
    expect([cutMm.low, cutMm.high]).toEqual([1524, 1524]);
    expect(yarns[0]!.ifLoose.usedMm).toBe(usedMm.high);
    expect([usedMm.value, cutMm.value]).toEqual([yarns[0]!.usedMm, yarns[0]!.cutMm]);
    expect(massG.value).toBeCloseTo(yarns[0]!.massG, 9);
    expect(totals.uncertain.yarnUsedMm.value).toBeCloseTo(yarns[0]!.usedMm + yarns[1]!.usedMm, 6);
    expect(yarns[0]!.ifLoose).toMatchObject({ pieces: 1, cutMm: 1524, skeins: 1 });
  });

  it('compare what is owned with the need, and price it', () => {
    const { yarns, cost } = materials(['aa'], {
      yarns: designFromLetters(['a']).yarns.map((yarn) => ({ ...yarn, price: 5, ownedSkeins: 1 })),
      money: { dowelPrice: 3 },
    });
    expect(yarns[0]).toMatchObject({ skeins: 1, ownedSkeins: 1, toBuySkeins: 0, oneLotSkeins: 0 });
    expect([cost.parts.yarn.amount, cost.parts.dowel.amount, cost.yarnToBuy.amount]).toEqual([5, 3, 0]);
    expect(cost.missing).toContain('the price of a metre of cord');
  });
});
