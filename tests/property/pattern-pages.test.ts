/** Pages hold to their margins and never print one thing over another, whatever the design. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../shared/chart/chart.ts';
import { BARE, codeOf } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { limits } from '../../shared/design/limits.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import type { Yarn } from '../../shared/design/schema.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import { layOutPattern } from '../../shared/pattern/lay-out-pattern.ts';
import type { Page, PatternDocument, TextItem } from '../../shared/pattern/page.ts';
import { margins, type Paper } from '../../shared/pattern/papers.ts';
import { plainItems } from '../../shared/pattern/plain-items.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import type { Units } from '../../shared/units/units.ts';
import { alphabet } from '../../shared/yarn/symbols.ts';
import { itemBounds, overlap, textBounds } from '../item-bounds.ts';

const scripts = [
  'Linen of the long shore ',
  'Πράσινο της ελιάς ',
  'Тёмно-синяя шерсть ',
  'Žluťoučký příze ',
  'Unbroken',
];

const arbitraryName = fc
  .tuple(fc.constantFrom(...scripts), fc.integer({ min: 1, max: limits.nameChars }))
  .map(([words, length]) => words.repeat(100).slice(0, length).trim() || 'x');

interface PatternCase {
  design: Design;
  paper: Paper;
  units: Units;
}

const arbitraryPattern: fc.Arbitrary<PatternCase> = fc
  .record({
    title: arbitraryName,
    designer: fc.oneof(fc.constant(''), arbitraryName),
    columns: fc.integer({ min: 1, max: 110 }),
    rows: fc.integer({ min: 1, max: 130 }),
    names: fc.array(arbitraryName, { minLength: 1, maxLength: 64 }),
    /** The first cells' look is repeated over the chart with this period. */
    period: fc.integer({ min: 1, max: 9 }),
    bareEvery: fc.integer({ min: 2, max: 200 }),
    pitch: fc.integer({ min: 1, max: 40 }),
    rowHeight: fc.integer({ min: 1, max: 40 }),
    corner: fc.constantFrom('top-left' as const, 'top-right' as const),
    fringe: fc.constantFrom('straight' as const, 'v' as const, 'inverted-v' as const, 'curve' as const),
    paper: fc.constantFrom('a4' as const, 'letter' as const),
    units: fc.constantFrom('metric' as const, 'us' as const, 'both' as const),
  })
  .map((each) => {
    const yarns = each.names.map(
      (name, i): Yarn => ({
        id: `y${i + 1}`,
        name,
        color: `#${((i * 2654435) % 0x1000000).toString(16).padStart(6, '0')}`,
        symbol: alphabet[i]!.text,
        diameterMm: 2,
        metresPer100G: 200,
        skeinG: 50,
      }),
    );
    const { title, designer, columns, rows, corner } = each;
    const design = newDesign({ title, designer, columns, rows, yarns, startCorner: corner });
    const cells = Array.from({ length: rows }, (_, r) =>
      Uint8Array.from({ length: columns }, (_, c) => {
        const at = Math.floor(r / each.period) * 7 + Math.floor(c / each.period);
        return (at + 1) % each.bareEvery === 0 ? BARE : codeOf(yarns[at % yarns.length]!.id);
      }),
    );
    return {
      paper: each.paper,
      units: each.units,
      design: {
        ...design,
        fringe: { shape: each.fringe, longMm: 200, shortMm: 100 },
        swatches: [{ widthMm: each.pitch * 10, cords: 10, heightMm: each.rowHeight * 10, rows: 10 }],
        tying: { ...design.tying, workingLengthMm: 9000 },
        layers: [{ ...design.layers[1]!, rows: cells }],
      },
    };
  });

function laidOut({ design, paper, units }: PatternCase): PatternDocument {
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  return layOutPattern({ design, chart, plan: plan.value, materials, paper, units });
}

/** Half of the thin lines that stand at a margin, and what the last bits of fractions add up to. */
const HAIR_MM = 0.2;

function outside(page: Page): string[] {
  return plainItems(page.items)
    .map((item) => ({ item, at: itemBounds(item) }))
    .filter(
      ({ at }) =>
        at.left < margins.left - HAIR_MM ||
        at.top < margins.top - HAIR_MM ||
        at.right > page.widthMm - margins.right + HAIR_MM ||
        at.bottom > page.heightMm - margins.bottom + HAIR_MM,
    )
    .map(
      ({ item, at }) =>
        `${page.title}: ${item.kind === 'text' ? item.text : item.kind} at ${JSON.stringify(at)}`,
    );
}

function printedOver(page: Page): string[] {
  const items = plainItems(page.items);
  const texts = items
    .filter((item): item is TextItem => item.kind === 'text')
    .map((item) => ({ item, at: textBounds(item) }))
    .sort((a, b) => a.at.top - b.at.top);
  const found: string[] = [];
  texts.forEach((a, i) => {
    for (let j = i + 1; j < texts.length && texts[j]!.at.top < a.at.bottom; j++) {
      const b = texts[j]!;
      if (overlap(a.at, b.at)) found.push(`${page.title}: '${a.item.text}' over '${b.item.text}'`);
    }
  });
  // A map has its numbers over the cells, which have no symbols there.
  const inSymbols = items.filter((item) => item.kind === 'cells' && item.symbolMm);
  for (const cells of inSymbols.map(itemBounds)) {
    for (const { item, at } of texts) {
      if (overlap(at, cells)) found.push(`${page.title}: '${item.text}' over cells`);
    }
  }
  return found;
}

describe('the pages of a pattern', () => {
  it('keep everything within their margins', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(arbitraryPattern, (each) => {
        expect(laidOut(each).pages.flatMap(outside)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  it('never print a text over another, or over the cells', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(arbitraryPattern, (each) => {
        expect(laidOut(each).pages.flatMap(printedOver)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  it('would be caught printing a text over another', () => {
    const page = laidOut(fc.sample(arbitraryPattern, { seed: 1, numRuns: 1 })[0]!).pages[1]!;
    const text = page.items.find((item) => item.kind === 'text')!;
    expect(printedOver({ ...page, items: [...page.items, text] })).toHaveLength(1);
    expect(outside({ ...page, items: [{ ...(text as TextItem), x: page.widthMm }] })).toHaveLength(1);
  });
});
