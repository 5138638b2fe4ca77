/** What the pages say of bare cells is what the plan of strands does. */
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { copyOf } from '../../../shared/pattern/copy.ts';
import { layOutPattern } from '../../../shared/pattern/lay-out-pattern.ts';
import { plainItems } from '../../../shared/pattern/page/plain-items.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { stepsOf } from '../../../shared/tying/steps/steps-of.ts';
import { tyingOrder } from '../../../shared/tying/steps/tying-order.ts';
import { designFromLetters } from '../../notation.ts';

// Row 2 is bare, so the strands of row 1 hang behind it until row 3 goes on with them.
const rows = ['aabbaabb', '--------', 'bbaabbaa'];

describe('a strand at bare cells', () => {
  const drawn = designFromLetters(rows);
  const design = { ...drawn, pattern: { parts: ['reading' as const] } };
  const chart = flatten(design);
  const planned = planStrands(design, chart, { effort: 'quick' });
  if (!planned.ok) throw new Error(planned.problem.sentence);
  const plan = planned.value;
  const carries = stepsOf(tyingOrder(chart, plan))
    .flat()
    .filter((step) => step.kind === 'carry');

  it('hangs straight down behind them, and goes across only in a row that is tied', () => {
    expect(carries.some(({ from, to }) => from.row === 1 && to.row === 3)).toBe(true);
    expect(carries.filter(({ to }) => to.row === 2)).toEqual([]);
  });

  it.each([
    ['en', 'Carry no yarn across behind it: a strand may only hang straight down behind its cord.'],
    ['de', 'Ein Faden darf nur gerade hinter seiner Schnur herunterhängen.'],
  ] as const)('is told just so on the reading page (%s)', (language, told) => {
    const materials = materialsOf(design, chart, plan);
    const copy = { ...copyOf(design), language };
    const asked = { design, chart, plan, materials, paper: 'a4', units: 'metric', copy } as const;
    const texts = layOutPattern(asked).pages.flatMap(({ items }) =>
      plainItems(items).flatMap((item) => (item.kind === 'text' ? [item.text] : [])),
    );
    expect(texts.join(' ')).toContain(told);
  });
});
