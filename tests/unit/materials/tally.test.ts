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
    expect(dowel.minLengthMm).toBe(4 * 5 + 2 * 51);
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
});
