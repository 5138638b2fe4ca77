/** The materials fit their page, and keep figures and units together. */
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { lampAtHarrowPoint } from '../../../../shared/demos/lamp-at-harrow-point.ts';
import { mothAtTheWindow } from '../../../../shared/demos/moth-at-the-window.ts';
import { sallowWater } from '../../../../shared/demos/sallow-water.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { type PatternPart, patternLanguages } from '../../../../shared/design/pattern-schema.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { copyOf } from '../../../../shared/pattern/copy.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import type { Page } from '../../../../shared/pattern/page/page.ts';
import { plainItems } from '../../../../shared/pattern/page/plain-items.ts';
import type { PatternInput } from '../../../../shared/pattern/pattern-input.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';

/** `design`, planned once, with these parts. */
function inputOf(design: Design, parts: PatternPart[]): PatternInput {
  const chart = flatten(design);
  const plan = planStrands(design, chart, { effort: 'quick' });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  return {
    design: { ...design, pattern: { parts } },
    chart,
    plan: plan.value,
    materials,
    paper: 'a4',
    units: 'metric',
  };
}

function materialsPages(input: PatternInput): Page[] {
  return layOutPattern(input).pages.filter(({ part }) => part === 'materials');
}

function textsOf(pages: readonly Page[]): string[] {
  return pages.flatMap(({ items }) =>
    plainItems(items).flatMap((item) => (item.kind === 'text' ? [item.text] : [])),
  );
}

describe('the materials', () => {
  it.each([mothAtTheWindow, lampAtHarrowPoint, sallowWater])('of a demo take one page: %o', (demo) => {
    const design = demo();
    const input = inputOf(design, ['materials', 'care']);
    for (const paper of ['a4', 'letter'] as const)
      for (const units of ['metric', 'us', 'both'] as const)
        for (const language of patternLanguages)
          expect(
            materialsPages({ ...input, paper, units, copy: { ...copyOf(design), language } }),
          ).toHaveLength(1);
  });

  it('never part a figure from its unit, in heads of columns neither', () => {
    const design = mothAtTheWindow();
    const input = inputOf(design, ['materials']);
    for (const units of ['metric', 'us', 'both'] as const)
      for (const language of patternLanguages)
        for (const cells of ['standard', 'large'] as const) {
          const copy = { ...copyOf(design), language, cells };
          const texts = textsOf(materialsPages({ ...input, units, copy }));
          expect(texts.filter((text) => /^(cm|mm|m|Zoll|yd|g|kg|oz|lb|%)\b/.test(text))).toEqual([]);
          expect(texts.filter((text) => /[0-9] (c|Zol?|k|o|l|y|i)$/.test(text))).toEqual([]);
        }
  });

  it('send to the cautions where they have a page, and tell them in short where they have none', () => {
    const design = mothAtTheWindow();
    const words = (parts: PatternPart[]) => textsOf(materialsPages(inputOf(design, parts))).join(' ');
    expect(words(['materials', 'care'])).toContain('Read the cautions on page 2 before you begin.');
    expect(words(['materials'])).toContain('Natural fibre burns');
  });
});
