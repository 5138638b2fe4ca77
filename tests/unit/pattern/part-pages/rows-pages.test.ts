/** Written rows on their pages: where their lines break. */
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import { plainItems } from '../../../../shared/pattern/page/plain-items.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../../notation.ts';

/** The lines in which a row's words stand, each by its height on the page. */
function linesOf(letters: string): string[] {
  const design = { ...designFromLetters([letters]), pattern: { parts: ['rows' as const] } };
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const { pages } = layOutPattern({
    design,
    chart,
    plan: plan.value,
    materials: materialsOf(design, chart, plan.value),
    paper: 'a4',
    units: 'metric',
  });
  const lines = new Map<number, string>();
  for (const item of plainItems(pages[0]!.items)) {
    if (item.kind === 'text') lines.set(item.y, `${lines.get(item.y) ?? ''}${item.text}`);
  }
  const texts = [...lines.values()];
  const first = texts.findIndex((text) => text.startsWith('Row 1,'));
  return texts.slice(first).filter((text) => !/page \d/.test(text));
}

const blocks = (lengths: readonly number[]) =>
  lengths.map((length, i) => (i % 2 === 0 ? 'a' : 'b').repeat(length)).join('');

describe('a written row', () => {
  it('keeps a few cords to lift together on a line', () => {
    for (const count of [4, 5, 6, 7, 8, 9]) {
      const lines = linesOf(blocks(Array.from({ length: count }, () => 12)));
      const lifts = lines.filter((line) => /lift|^\d+(, \d+)*$/.test(line));
      expect(lifts).toHaveLength(1);
      expect(lifts[0]).toMatch(
        new RegExp(`lift ${Array.from({ length: count - 1 }, (_, i) => 13 + 12 * i).join(', ')}$`),
      );
    }
  });

  it('runs on with many of them', () => {
    const lines = linesOf(blocks(Array.from({ length: 60 }, () => 2)));
    expect(lines.filter((line) => /^[\d, ]+$/.test(line)).length).toBeGreaterThan(0);
    expect(lines.join(' ')).toContain('lift 3, 5, 7,');
  });
});
