import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { demoDesigns } from '../../../shared/demos/demo-designs.ts';
import { codeOf } from '../../../shared/design/codes.ts';
import { readDesign } from '../../../shared/design/read-design.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { planFaults } from '../../../shared/tying/laws/check-plan.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { lookAlike } from '../../../shared/yarn/colour-difference.ts';

const demos = demoDesigns.map(({ fileName, make }) => ({ fileName, design: make() }));

describe('the demo designs', () => {
  it('come in three sizes', () => {
    expect(demos.map(({ design }) => [design.columns, design.rows])).toEqual([
      [30, 36],
      [60, 72],
      [150, 200],
    ]);
  });

  it.each(demos)('$fileName is saved and opened like any design', ({ design }) => {
    const text = writeDesign(design);
    const read = readDesign(text);
    expect(read.ok && writeDesign(read.value)).toBe(text);
  });

  it.each(demos)('$fileName uses each of its yarns, and no two look alike', ({ design }) => {
    const used = new Set(flatten(design).cells);
    for (const yarn of design.yarns) expect(used.has(codeOf(yarn.id)), yarn.name).toBe(true);
    for (const a of design.yarns)
      for (const b of design.yarns)
        expect(a === b || !lookAlike(a.color, b.color), `${a.name}, ${b.name}`).toBe(true);
  });

  it.each(demos)('$fileName can be tied as planned', ({ design }) => {
    const chart = flatten(design);
    const plan = planStrands(design, chart);
    expect(plan.ok && planFaults(plan.value, chart)).toEqual([]);
  });
});
