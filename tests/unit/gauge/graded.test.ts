import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { apply, inverse } from '../../../shared/design/edits.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import { type Grade, graded, gradeEdit } from '../../../shared/gauge/graded.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../notation.ts';

const design = designFromLetters(['aabb', 'abba'], {
  swatches: [{ widthMm: 110, cords: 20, heightMm: 96, rows: 20, yarnMm: 16_000, knots: 400 }],
  money: { cordPricePerM: 0.4, hourlyRate: 15 },
});

function gradedTo(grade: Grade, from: Design = design): Design {
  const answer = graded(from, grade);
  if (!answer.ok) throw new Error(answer.problem.sentence);
  return answer.value;
}

function materials(of: Design) {
  const chart = flatten(of);
  const plan = planStrands(of, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return materialsOf(of, chart, plan.value);
}

describe('grading', () => {
  const thicker = gradedTo({ cordDiameterMm: 6, yarnDiameterMm: 4 });

  it('keeps the cells, and the maker’s tension: all is twice as large where all is twice as thick', () => {
    expect(flatten(thicker)).toEqual(flatten(design));
    const [before, after] = [gaugeOf(design), gaugeOf(thicker)];
    expect(after.pitchMm).toBeCloseTo(2 * before.pitchMm, 9);
    expect(after.rowHeightMm).toBeCloseTo(2 * before.rowHeightMm, 9);
    expect(after.yarnFactor).toBeCloseTo(before.yarnFactor, 9);
    expect([before.source, after.source]).toEqual(['measured', 'estimate']);
  });

  it('computes size, lengths and need anew', () => {
    const [before, after] = [materials(design), materials(thicker)];
    expect(after.finished.widthMm).toBeCloseTo(2 * before.finished.widthMm, 9);
    expect(after.yarns[0]!.knottedMm).toBeCloseTo(2 * before.yarns[0]!.knottedMm, 0);
    expect(after.gauge.uncertain.pitchMm.share).toBeGreaterThan(before.gauge.uncertain.pitchMm.share);
  });

  it('weighs a metre by the square of its thickness, and forgets what was told of the old', () => {
    expect(thicker.cord.gPerM).toBe(4 * design.cord.gPerM);
    expect(thicker.yarns[1]!.metresPer100G).toBe(design.yarns[1]!.metresPer100G / 4);
    expect(thicker.money).toEqual({ hourlyRate: 15 });
    const priced = { ...design, yarns: design.yarns.map((yarn) => ({ ...yarn, price: 4, ownedSkeins: 2 })) };
    const again = gradedTo({ cordDiameterMm: 3, yarnDiameterMm: 3 }, priced);
    for (const yarn of again.yarns) {
      expect(yarn).not.toHaveProperty('price');
      expect(yarn).not.toHaveProperty('ownedSkeins');
    }
    expect(again.money).toEqual(design.money);
  });

  it('makes other yarns thicker in proportion to the ground', () => {
    const yarns = design.yarns.map((yarn, i) => ({ ...yarn, diameterMm: i === 1 ? 3 : 2 }));
    const again = gradedTo({ cordDiameterMm: 3, yarnDiameterMm: 2.5 }, { ...design, yarns });
    expect(again.yarns.slice(0, 2).map(({ diameterMm }) => diameterMm)).toEqual([2.5, 3.75]);
  });

  it('to the same thickness changes no figure, and back again gives the measured gauge', () => {
    expect(gaugeOf(gradedTo({ cordDiameterMm: 3, yarnDiameterMm: 2 }))).toEqual(gaugeOf(design));
    const back = gradedTo({ cordDiameterMm: 3, yarnDiameterMm: 2 }, thicker);
    expect(gaugeOf(back)).toEqual(gaugeOf(design));
  });

  it('is one edit that can be taken back', () => {
    const edit = gradeEdit(design, { cordDiameterMm: 4, yarnDiameterMm: 2 });
    if (!edit.ok) throw new Error(edit.problem.sentence);
    const back = apply(apply(design, edit.value), inverse(design, edit.value));
    expect(writeDesign(back)).toBe(writeDesign(design));
  });

  it('refuses what no design can hold', () => {
    for (const cordDiameterMm of [0, -1, 200_000, Number.NaN]) {
      const answer = graded(design, { cordDiameterMm, yarnDiameterMm: 2 });
      expect(answer).toMatchObject({ ok: false, problem: { code: 'out-of-range' } });
    }
  });
});
