import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { mothAtTheWindow } from '../../../../shared/demos/moth-at-the-window.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { type FirstTextsInput, firstTexts } from '../../../../shared/pattern/first-texts.ts';
import { staleTexts } from '../../../../shared/pattern/stale-texts.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';

function inputOf(design: Design, rest: Partial<FirstTextsInput> = {}): FirstTextsInput {
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  return { design, materials, units: 'metric', copy: { language: 'en' }, ...rest };
}

const moth = mothAtTheWindow();

/** As the designer leaves them: the first versions, with a sentence of her own in each. */
const texts = Object.fromEntries(
  Object.entries(firstTexts(inputOf(moth))).map(([name, text]) => [
    name,
    `${text}\nTake a break after each tenth row.`,
  ]),
);
const own: Design = { ...moth, pattern: { texts } };

describe('texts of the designer’s own', () => {
  it('are at ease as long as their figures are those of the design', () => {
    expect(staleTexts(inputOf(own))).toEqual([]);
  });

  it('are found where they tell the side of the other hand', () => {
    const found = staleTexts(inputOf({ ...own, startCorner: 'top-right' }));
    expect(found).toContainEqual({
      text: 'reading',
      says: 'left to right, row 2 right to left,',
      now: 'right to left, row 2 left to right,',
    });
    expect(found.map(({ text }) => text)).toContain('order');
  });

  it('are found where they tell figures of other settings, or of other units', () => {
    const longer = { ...own, tying: { ...own.tying, workingLengthMm: 2000 } };
    expect(staleTexts(inputOf(longer))).toContainEqual({ text: 'order', says: '152.4', now: '200' });
    expect(staleTexts(inputOf(own, { units: 'us' })).map(({ text }) => text)).toContain('order');
  });

  it('are left alone where they are written anew, with figures of their own', () => {
    const anew = 'Cut 30 pieces of 3 m. Row 1 goes left to right in my workshop too.';
    const design = { ...moth, pattern: { texts: { order: anew, welcome: 'Hello, 2026!' } } };
    expect(staleTexts(inputOf(design))).toEqual([]);
  });
});
