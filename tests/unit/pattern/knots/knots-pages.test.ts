import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { patternLanguages } from '../../../../shared/design/pattern-schema.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import type { FigureItem, Page } from '../../../../shared/pattern/page/page.ts';
import type { Paper } from '../../../../shared/pattern/page/papers.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { itemBounds, overlap } from '../../../item-bounds.ts';
import { designFromLetters } from '../../../notation.ts';

function knotPages(rest: Partial<Design> = {}, paper: Paper = 'a4'): Page[] {
  const design = designFromLetters(['aab', 'baa'], rest);
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  const { pages } = layOutPattern({ design, chart, plan: plan.value, materials, paper, units: 'metric' });
  return pages.filter(({ part }) => part === 'knots');
}

function figures(pages: readonly Page[]): FigureItem[] {
  return pages.flatMap(({ items }) => items.filter((item): item is FigureItem => item.kind === 'figure'));
}

function headings(pages: readonly Page[]): string[] {
  return pages.flatMap(({ items }) =>
    items.flatMap((item) => (item.kind === 'text' && item.role === 'heading' ? [item.text] : [])),
  );
}

describe('the knots explained', () => {
  it.each(
    (['a4', 'letter'] as const).flatMap((paper) =>
      patternLanguages.flatMap((language) =>
        [false, true].map((leftHanded) => ({ paper, language, leftHanded })),
      ),
    ),
  )('take two pages of $paper in $language, left-handed: $leftHanded', ({ paper, ...copy }) => {
    expect(knotPages({ pattern: { copy } }, paper)).toHaveLength(2);
  });

  it('explain first the knot of a row that goes where row 1 goes', () => {
    const knots = (startCorner: Design['startCorner']) =>
      headings(knotPages({ startCorner })).filter((text) => text.startsWith('The knot,'));
    expect(knots('top-left')).toEqual(['The knot, left to right', 'The knot, right to left']);
    expect(knots('top-right')).toEqual(['The knot, right to left', 'The knot, left to right']);
  });

  it('tell every drawing in words of its own', () => {
    const alts = figures(knotPages()).map(({ alt }) => alt);
    expect(alts).toHaveLength(24);
    expect(new Set(alts).size).toBe(alts.length);
    for (const alt of alts) expect(alt.length).toBeGreaterThan(30);
  });

  it('begin with which hand holds the cord', () => {
    const introduction = (leftHanded: boolean) =>
      knotPages({ pattern: { copy: { leftHanded } } })[0]!
        .items.flatMap((item) => (item.kind === 'text' ? [item.text] : []))
        .join(' ');
    expect(introduction(false)).toContain('your left hand holds the cord taut');
    expect(introduction(true)).toContain('your right hand holds the cord taut');
  });

  it.each(
    (['a4', 'letter'] as const).flatMap((paper) => patternLanguages.map((language) => ({ paper, language }))),
  )('have no drawing over another or over words, on $paper in $language', ({ paper, language }) => {
    for (const page of knotPages({ pattern: { copy: { language } } }, paper)) {
      const places = page.items
        .filter(({ kind }) => kind === 'figure' || kind === 'text')
        .map((item) => ({ item, at: itemBounds(item) }));
      for (const { item, at } of places) {
        if (item.kind !== 'figure') continue;
        const over = places.filter((each) => each.item !== item && overlap(each.at, at));
        expect(over.map((each) => (each.item.kind === 'text' ? each.item.text : 'a drawing'))).toEqual([]);
      }
    }
  });
});
