/** Whoever reads the steps in German is told no other row, cord, piece or length than who reads them in English. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { stepWords } from '../../shared/tying/steps/step-words.ts';
import { stepsOf } from '../../shared/tying/steps/steps-of.ts';
import { tyingOrder } from '../../shared/tying/steps/tying-order.ts';
import { arbitraryChart } from './arbitrary-chart.ts';

fc.configureGlobal({ seed: 8_400 });

/** All figures of a text in order of size; a comma between digits is a German point. */
function figuresOf(text: string): string[] {
  return (text.replace(/(?<=\d),(?=\d)/g, '.').match(/\d+(?:\.\d+)?/g) ?? []).sort();
}

describe('the steps in two languages', () => {
  it.each(['compact', 'long'] as const)('name the same figures and yarns, %s', (form) => {
    fc.assert(
      fc.property(
        arbitraryChart(),
        fc.constantFrom('metric' as const, 'us' as const, 'both' as const),
        ({ design, chart }, units) => {
          const plan = planStrands(design, chart);
          if (!plan.ok) throw new Error(plan.problem.sentence);
          const names = ['Moss', 'Bark', 'Fern', 'Sand'];
          const yarnsById = new Map(design.yarns.map(({ id }, i) => [id, { name: names[i]! }]));
          for (const step of stepsOf(tyingOrder(chart, plan.value)).flat()) {
            const [en, de] = (['en', 'de'] as const).map((language) =>
              stepWords(step, { yarnsById, units, form, language }),
            ) as [string, string];
            // '5 Moss (16-12)' is the same in both.
            if (step.kind !== 'knots' || form === 'long') expect(de).not.toBe(en);
            expect(figuresOf(de)).toEqual(figuresOf(en));
            for (const name of names) expect(de.includes(name)).toBe(en.includes(name));
          }
        },
      ),
      { numRuns: 150 },
    );
  });
});
