/** Labels keep within their page and apart from one another, and name each piece once, whatever is cut. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limits } from '../../shared/design/limits.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import { patternLanguages } from '../../shared/design/pattern-schema.ts';
import type { Yarn } from '../../shared/design/schema.ts';
import type { Bundle, Bundles } from '../../shared/materials/bundles/bundles.ts';
import { layOutLabels } from '../../shared/pattern/lay-out-labels.ts';
import type { Page, PatternDocument } from '../../shared/pattern/page/page.ts';
import { margins, papers } from '../../shared/pattern/page/papers.ts';
import { itemBounds, overlap } from '../item-bounds.ts';

fc.configureGlobal({ seed: 9_000 });

const names = fc
  .tuple(
    fc.constantFrom('Linen of the long shore ', 'Тёмно-синяя шерсть ', 'Unbroken', 'W'),
    fc.integer({ min: 1, max: limits.nameChars }),
  )
  .map(([words, length]) => words.repeat(200).slice(0, length).trim() || 'x');

/** Numbers that never stand together, those that all do, and every mixture. */
const numbers = fc.array(fc.constantFrom(1, 1, 2, 40), { minLength: 1, maxLength: 300 }).map((steps) => {
  let number = 0;
  return steps.map((step) => (number += step));
});

const arbitraryLabels = fc
  .record({
    names: fc.array(names, { minLength: 1, maxLength: 8 }),
    bundles: fc.array(fc.record({ yarn: fc.nat(7), cutMm: fc.integer({ min: 1, max: 100_000 }), numbers }), {
      minLength: 1,
      maxLength: 40,
    }),
    paper: fc.constantFrom('a4' as const, 'letter' as const),
    units: fc.constantFrom('metric' as const, 'us' as const, 'both' as const),
    language: fc.constantFrom(...patternLanguages),
  })
  .map(({ names, bundles, paper, units, language }) => {
    const yarns = names.map(
      (name, i): Yarn => ({
        id: `y${i + 1}`,
        name,
        color: '#9e3329',
        symbol: 'abcdefgh'[i]!,
        diameterMm: 2,
        metresPer100G: 200,
        skeinG: 50,
      }),
    );
    const made = bundles.map(({ yarn, cutMm, numbers }): Bundle => {
      const pieces = numbers.map((number) => ({
        number,
        row: Math.min(number, limits.rows),
        cord: 1,
        knots: 1,
        usedMm: 1,
      }));
      return { yarn: yarns[yarn % yarns.length]!.id, cutMm, totalMm: cutMm * pieces.length, pieces };
    });
    const all: Bundles = {
      bundles: made,
      pieces: made.reduce((sum, { pieces }) => sum + pieces.length, 0),
      totalMm: made.reduce((sum, { totalMm }) => sum + totalMm, 0),
      savedMm: 0,
    };
    const design = newDesign({ title: 'Labels', columns: 2, rows: 2, yarns });
    return { design: { ...design, pattern: { copy: { language } } }, bundles: all, paper, units };
  });

/** Half of the thin line around a label that stands at a margin. */
const HAIR_MM = 0.2;

function outside({ items, widthMm, heightMm }: Page): string[] {
  return items
    .map((item) => ({ item, at: itemBounds(item) }))
    .filter(
      ({ at }) =>
        at.left < margins.left - HAIR_MM ||
        at.top < margins.top - HAIR_MM ||
        at.right > widthMm - margins.right + HAIR_MM ||
        at.bottom > heightMm - margins.bottom + HAIR_MM,
    )
    .map(({ item }) => JSON.stringify(item));
}

/** Every text and swatch of a label lies in one box, and on no other text or swatch. */
function collisions({ items }: Page): string[] {
  const boxes = items.filter((item) => item.kind === 'box' && item.height > 20).map(itemBounds);
  const marks = items
    .filter((item) => item.kind === 'text' || item.kind === 'cells')
    .map((item) => ({ item, at: itemBounds(item) }));
  const found: string[] = [];
  marks.forEach(({ item, at }, i) => {
    const inside = boxes.some(
      (box) => at.left > box.left && at.right < box.right && at.top > box.top && at.bottom < box.bottom,
    );
    if (!inside && boxes.some((box) => overlap(at, box))) found.push(`over an edge: ${JSON.stringify(item)}`);
    for (const other of marks.slice(i + 1)) {
      if (overlap(at, other.at)) found.push(`${JSON.stringify(item)} over ${JSON.stringify(other.item)}`);
    }
  });
  return found;
}

function numbersOn({ pages }: PatternDocument): number {
  const texts = pages.flatMap(({ items }) =>
    items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])),
  );
  return texts
    .flatMap((text) =>
      /^(piece|Stück) \d+$/.test(text) ? '1' : (/^([\d,.]+) (pieces|Stücke):/.exec(text)?.[1] ?? []),
    )
    .reduce((sum, count) => sum + Number(count.replaceAll(/[,.]/g, '')), 0);
}

describe('labels', () => {
  it('keep within the margins of their sheet', () => {
    fc.assert(
      fc.property(arbitraryLabels, (input) => {
        const { pages } = layOutLabels(input);
        for (const page of pages) expect(page.widthMm).toBe(papers[input.paper].widthMm);
        expect(pages.flatMap(outside)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('lie apart, each with its own text and symbol inside', () => {
    fc.assert(
      fc.property(arbitraryLabels, (input) => {
        expect(layOutLabels(input).pages.flatMap(collisions)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('count each piece once', () => {
    fc.assert(
      fc.property(arbitraryLabels, (input) => {
        expect(numbersOn(layOutLabels(input))).toBe(input.bundles.pieces);
      }),
      { numRuns: 60 },
    );
  });

  it('would be caught over an edge, over one another or over a margin', () => {
    const [page] = layOutLabels(fc.sample(arbitraryLabels, { seed: 1, numRuns: 1 })[0]!).pages;
    const cells = page!.items.find((item) => item.kind === 'cells')!;
    expect(collisions({ ...page!, items: [...page!.items, cells] })).toHaveLength(1);
    const shifted = { ...cells, x: cells.x - 6 };
    expect(collisions({ ...page!, items: [...page!.items, shifted] })).not.toEqual([]);
    expect(outside({ ...page!, items: [shifted] })).toHaveLength(1);
  });
});
