import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Language } from '../../../../shared/design/pattern-schema.ts';
import { type Bundles, bundlesOf } from '../../../../shared/materials/bundles/bundles.ts';
import { fittedPlan } from '../../../../shared/materials/bundles/fitted-plan.ts';
import { layOutLabels } from '../../../../shared/pattern/lay-out-labels.ts';
import type { Paper } from '../../../../shared/pattern/page/papers.ts';
import { plainItems } from '../../../../shared/pattern/page/plain-items.ts';
import { planCarefully } from '../../../../shared/tying/careful-person/plan-carefully.ts';
import { tyingOrder } from '../../../../shared/tying/steps/tying-order.ts';
import type { Units } from '../../../../shared/units/units.ts';
import { designFromLetters } from '../../../notation.ts';

const design = designFromLetters(['a--aaaaa-a', 'bbbbbbbbbb'], { title: 'Otter' });

function labelled(
  bundles: Bundles,
  { paper = 'a4', units = 'metric', language }: { paper?: Paper; units?: Units; language?: Language } = {},
) {
  const printed = language ? { ...design, pattern: { copy: { language } } } : design;
  const { pages } = layOutLabels({ design: printed, bundles, paper, units });
  const texts = pages.map(({ items }) =>
    plainItems(items).flatMap((item) => (item.kind === 'text' && item.role !== 'foot' ? [item.text] : [])),
  );
  return { pages, texts };
}

function fittedBundles(): Bundles {
  const chart = flatten(design);
  const plan = planCarefully(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return bundlesOf(tyingOrder(chart, fittedPlan(plan.value, { roundUpMm: 50, reserve: 0.1 })));
}

/** One bundle with pieces of these numbers, each attached in the row of its number. */
function bundleOf(numbers: number[]): Bundles {
  const pieces = numbers.map((number) => ({ number, row: number, cord: 1, knots: 1, usedMm: 166.8 }));
  const totalMm = 500 * numbers.length;
  return {
    bundles: [{ yarn: 'y1', cutMm: 500, totalMm, pieces }],
    pieces: numbers.length,
    totalMm,
    savedMm: 0,
  };
}

describe('labels', () => {
  it('name yarn, length, rows and pieces of each bundle', () => {
    const [texts] = labelled(fittedBundles()).texts;
    expect(texts!.slice(-15)).toEqual([
      ...['Linen', '35 cm', 'row 1', 'piece 2', 'Otter'],
      ...['Linen', '20 cm', 'row 1', '2 pieces: 1, 3', 'Otter'],
      ...['Dusk', '55 cm', 'row 2', 'piece 1', 'Otter'],
    ]);
  });

  it('carry the symbol of their yarn as it stands in the chart', () => {
    const [page] = labelled(fittedBundles()).pages;
    const symbols = plainItems(page!.items).flatMap((item) =>
      item.kind === 'cells' ? Object.values(item.inks).map(({ symbol }) => symbol) : [],
    );
    expect(symbols).toEqual(['a', 'a', 'b']);
  });

  it('give lengths in the units of the maker, never too short', () => {
    expect(labelled(fittedBundles(), { units: 'us' }).texts[0]).toContain('14 in');
  });

  it('speak the language of the design’s pattern', () => {
    const [texts] = labelled(fittedBundles(), { units: 'us', language: 'de' }).texts;
    expect(texts!.slice(-15)).toEqual([
      ...['Linen', '14 Zoll', 'Reihe 1', 'Stück 2', 'Otter'],
      ...['Linen', '8 Zoll', 'Reihe 1', '2 Stücke: 1, 3', 'Otter'],
      ...['Dusk', '21 3/4 Zoll', 'Reihe 2', 'Stück 1', 'Otter'],
    ]);
  });

  it('give a long yarn name a second line, and end it with … where that is not enough', () => {
    const called = (name: string) => {
      const yarns = design.yarns.map((yarn) => ({ ...yarn, name }));
      const { pages } = layOutLabels({
        design: { ...design, yarns },
        bundles: bundleOf([1]),
        paper: 'a4',
        units: 'metric',
      });
      return plainItems(pages[0]!.items).flatMap((item) =>
        item.kind === 'text' && item.face === 'sans-bold' && item.role === 'paragraph' ? [item.text] : [],
      );
    };
    expect(called('Harbour blue, dyed with woad').join(' ')).toBe('Harbour blue, dyed with woad');
    expect(called('Harbour blue, dyed with woad')).toHaveLength(2);
    const cut = called('Harbour blue, dyed with woad by the long winter evenings');
    expect(cut).toHaveLength(2);
    expect(cut[1]).toMatch(/…$/);
  });

  it('write neighbouring numbers together', () => {
    const [texts] = labelled(bundleOf([1, 2, 3, 5, 8, 9])).texts;
    expect(texts!.slice(-3)).toEqual(['rows 1–9', '6 pieces: 1–3, 5, 8–9', 'Otter']);
  });

  it('go on over as many labels as the numbers need, each with its own rows', () => {
    const odd = Array.from({ length: 80 }, (_, i) => 2 * i + 1);
    const texts = labelled(bundleOf(odd)).texts.flat();
    const counts = texts.flatMap((text) => /^(\d+) pieces:/.exec(text)?.[1] ?? []).map(Number);
    expect(counts.length).toBeGreaterThan(1);
    expect(counts.reduce((a, b) => a + b, 0)).toBe(80);
    const rows = texts.flatMap((text) => /^rows? (\d+)(?:–(\d+))?$/.exec(text)?.slice(1) ?? []);
    expect(rows[0]).toBe('1');
    expect(rows.at(-1)).toBe('159');
    expect(Number(rows[2]) - Number(rows[1])).toBe(2);
    const parts = counts.map((_, i) => `${i === 0 ? '' : 'continued, '}label ${i + 1} of ${counts.length}`);
    expect(texts.filter((text) => /^(continued, )?label \d/.test(text))).toEqual(parts);
  });

  it('are none where nothing is cut', () => {
    expect(labelled({ bundles: [], pieces: 0, totalMm: 0, savedMm: 0 }).pages).toEqual([]);
  });
});
