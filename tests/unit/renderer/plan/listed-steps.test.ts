import { describe, expect, it } from 'vitest';
import { afterLastRowWords } from '../../../../renderer/plan/order/after-last-row-words.ts';
import { strandNumbered, strandsOfYarn } from '../../../../renderer/plan/order/strand-numbered.ts';
import { listedCounts, listedSteps, wholeOrder } from '../../../../renderer/plan/plans/listed-steps.ts';
import { codeOf } from '../../../../shared/design/codes.ts';
import { stepsOf } from '../../../../shared/tying/steps/steps-of.ts';
import { tablesOf } from './tables-of.ts';

const { order, tables } = tablesOf(['aabba', 'aabba', '-----', 'bbbbb'], { workingLengthMm: 300 });
const [yarn] = order.plan.strands.map((strand) => strand.yarn);

describe('the list of the whole tying order', () => {
  it('has every step of every row, as they are printed, and leaves no row out', () => {
    const listed = order.rows.map((_, r) => listedSteps(order, r + 1, wholeOrder));
    expect(listed).toEqual(stepsOf(order));
    expect([...listedCounts(order, wholeOrder)]).toEqual(listed.map((steps) => steps.length - 1));
    // A row without a knot has a line of its own too.
    expect(listedCounts(order, wholeOrder)[2]).toBe(0);
  });

  it('has each step of a yarn’s strands under one of them', () => {
    const ofYarn = { yarn: yarn!, strand: null };
    const whole = order.rows.flatMap((_, r) => listedSteps(order, r + 1, ofYarn)).slice();
    const strands = order.plan.strands.flatMap((strand, s) => (strand.yarn === yarn ? [s + 1] : []));
    const apart = strands.flatMap((strand) =>
      order.rows.flatMap((_, r) => listedSteps(order, r + 1, { yarn: yarn!, strand })),
    );
    const own = (steps: typeof whole) => steps.filter(({ kind }) => kind !== 'row');
    expect(own(whole).length).toBeGreaterThan(0);
    expect(own(apart).length).toBe(own(whole).length);
    expect(new Set(own(apart))).toEqual(new Set(own(whole)));
  });

  it('leaves out the rows where the strand that is looked for is not touched', () => {
    const strand = strandNumbered(tables, codeOf(yarn!), 1)!;
    expect([...listedCounts(order, { yarn: yarn!, strand })].map((count) => count > 0)).toEqual([
      true,
      true,
      false,
      false,
    ]);
    expect(listedCounts(order, { yarn: yarn!, strand })[3]).toBe(-1);
  });

  it('finds a strand by its number among those of its yarn', () => {
    for (const code of new Set(tables.strands.yarn)) {
      const own = strandsOfYarn(tables, code);
      const places = Array.from({ length: own }, (_, i) => strandNumbered(tables, code, i + 1));
      expect(places.map((place) => tables.strands.yarn[place! - 1])).toEqual(places.map(() => code));
      expect(strandNumbered(tables, code, own + 1)).toBeNull();
      expect(strandNumbered(tables, code, undefined)).toBeNull();
    }
  });
});

describe('after the last row', () => {
  it('loose ends are tied off, then the fringe is trimmed, then the hanging is done', () => {
    expect(afterLastRowWords(1764)).toEqual([
      'Turn the work over: 1,764 loose ends hang at the back. Knot neighbouring ones together twice and trim them, or only trim them.',
      'Trim the fringe to its outline.',
      'The hanging is done.',
    ]);
    expect(afterLastRowWords(0)).toEqual(['Trim the fringe to its outline.', 'The hanging is done.']);
  });
});
