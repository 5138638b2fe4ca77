import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Language } from '../../../../shared/design/pattern-schema.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { printedGreys } from '../../../../shared/pattern/chart-pages/printed-greys.ts';
import { sharedGreys } from '../../../../shared/pattern/chart-pages/shared-greys.ts';
import { copyOf } from '../../../../shared/pattern/copy.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import { plainItems } from '../../../../shared/pattern/page/plain-items.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { touchingPairs } from '../../../../shared/yarn/touching.ts';
import { designFromLetters } from '../../../notation.ts';

/** Each of so many yarns beside every other one. */
function crowd(letters: string) {
  return designFromLetters([[...letters].flatMap((a) => [...letters].map((b) => `${a}${b}`)).join('')]);
}

/** What the page on reading the chart says. */
function reading(letters: string, ink: 'grey' | 'colour', language: Language): string {
  const design = { ...crowd(letters), pattern: { parts: ['reading' as const] } };
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  const copy = { ...copyOf(design), ink, language };
  const input = { design, chart, plan: plan.value, materials, paper: 'a4', units: 'metric', copy } as const;
  return layOutPattern(input)
    .pages.flatMap((page) => plainItems(page.items))
    .flatMap((item) => (item.kind === 'text' ? [item.text] : []))
    .join(' ');
}

describe('greys that yarns share', () => {
  it('are none where each yarn has its own, and the pairs of one grey where yarns are too many', () => {
    const of = (letters: string) => {
      const { yarns, ...rest } = crowd(letters);
      const pairs = touchingPairs(flatten({ yarns, ...rest }));
      return { shared: sharedGreys(yarns, pairs), greys: new Set(printedGreys(yarns, pairs)) };
    };
    expect(of('abcdef').shared).toEqual([]);
    const many = of('abcdefghij');
    expect(many.shared.length).toBeGreaterThanOrEqual(10 - many.greys.size);
  });

  it('are told on the page that says how the chart is read, in a copy in greys', () => {
    const names = /printed in one grey: \w+ and \w+.*Go by their symbols/;
    expect(reading('abcdefghij', 'grey', 'en')).toMatch(names);
    expect(reading('abcdefghij', 'grey', 'de')).toMatch(/in demselben Grau gedruckt: \w+ und \w+/);
    expect(reading('abcdefghij', 'colour', 'en')).not.toMatch(names);
    expect(reading('abc', 'grey', 'en')).not.toMatch(names);
  });
});
