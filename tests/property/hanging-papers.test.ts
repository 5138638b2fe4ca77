/** The papers that go with a finished hanging: within their margins, nothing over another, and true where they say so. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hangingPapers } from '../../shared/pattern/hanging-papers/hanging-papers.ts';
import { layOutHangingPapers } from '../../shared/pattern/hanging-papers/lay-out-hanging-papers.ts';
import { outside, printedOver } from '../page-laws.ts';
import { arbitraryPattern, patternInput } from './arbitrary-pattern.ts';

describe('the papers of a finished hanging', () => {
  it('keep within their margins and print nothing over another', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(arbitraryPattern, fc.subarray(hangingPapers.slice(), { minLength: 1 }), (each, which) => {
        const { pages } = layOutHangingPapers(patternInput(each), which);
        expect(pages.flatMap((page) => [...outside(page), ...printedOver(page)])).toEqual([]);
      }),
      { numRuns: 15 },
    );
  });
});
