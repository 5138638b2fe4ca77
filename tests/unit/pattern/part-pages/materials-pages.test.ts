import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { mothAtTheWindow } from '../../../../shared/demos/moth-at-the-window.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import { plainItems } from '../../../../shared/pattern/page/plain-items.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';

/** The text of the materials page, lines joined by spaces. */
function materialsText(units: 'metric' | 'us', change: Partial<Design> = {}): string {
  const design = { ...mothAtTheWindow(), ...change };
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  const { pages } = layOutPattern({ design, chart, plan: plan.value, materials, paper: 'a4', units });
  const page = pages.find(({ title }) => title.startsWith('Materials'))!;
  return plainItems(page.items)
    .flatMap((item) => (item.kind === 'text' ? [item.text] : []))
    .join(' ');
}

describe('the materials page', () => {
  it('gives the gauge over 10 cm, and over 4 in (101.6 mm exactly) in a US pattern', () => {
    // A pitch of 5.0 and rows of 4.8 mm, as in the craft's defaults: 20 and 20.8 in 100 mm.
    expect(materialsText('metric')).toContain('20 cords across and 20.8 rows down to 10 cm');
    expect(materialsText('us')).toContain('20.3 cords across and 21.2 rows down to 4 in');
  });

  it('never tells to cut a piece or a tail shorter than the plan has it', () => {
    // 1524 and 65 mm (common practice: an arm span of 60 in, tails of 5 to 8 cm); rounded towards enough.
    expect(materialsText('metric')).toMatch(/Pieces are cut 152\.4 cm long, with a tail of 6\.5 cm/);
    expect(materialsText('us')).toMatch(/Pieces are cut 60 in long, with a tail of 2 3\/4 in/);
  });

  it('counts pieces that are cut to measure as they are cut', () => {
    const whole = materialsText('metric');
    const fitted = materialsText('metric', { bundles: { fitted: true } });
    expect(whole).toContain('pieces of 152');
    expect(fitted).not.toContain('pieces of 152');
    expect(fitted).toMatch(
      /Each piece is cut as long as it is used, with something to spare, 152\.\d cm at most, with a tail/,
    );
    const metres = (text: string) => Number(/Together [\d,]+ knots, ([\d.]+) m/.exec(text)?.[1]);
    expect(metres(fitted)).toBeLessThan(metres(whole));
  });
});
