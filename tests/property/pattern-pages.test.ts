/** Pages hold to their margins and never print one thing over another, whatever the design. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutPattern } from '../../shared/pattern/lay-out-pattern.ts';
import type { TextItem } from '../../shared/pattern/page/page.ts';
import { outside, printedOver } from '../page-laws.ts';
import { arbitraryPattern, patternInput } from './arbitrary-pattern.ts';

describe('the pages of a pattern', () => {
  it('keep everything within their margins', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(arbitraryPattern, (each) => {
        expect(layOutPattern(patternInput(each)).pages.flatMap(outside)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  it('never print a text over another, or over the cells', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(arbitraryPattern, (each) => {
        expect(layOutPattern(patternInput(each)).pages.flatMap(printedOver)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  it('would be caught printing a text over another', () => {
    const page = layOutPattern(patternInput(fc.sample(arbitraryPattern, { seed: 1, numRuns: 1 })[0]!))
      .pages[1]!;
    const text = page.items.find((item) => item.kind === 'text')!;
    expect(printedOver({ ...page, items: [...page.items, text] })).toHaveLength(1);
    expect(outside({ ...page, items: [{ ...(text as TextItem), x: page.widthMm }] })).toHaveLength(1);
  });
});
