import { flatten } from '../../../shared/chart/chart.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { stepWords } from '../../../shared/tying/steps/step-words.ts';
import { stepsOf } from '../../../shared/tying/steps/steps-of.ts';
import { tyingOrder } from '../../../shared/tying/steps/tying-order.ts';
import { type CliVerb, done } from '../cli-verb.ts';
import { readDesign } from '../read-design.ts';

export const steps: CliVerb = {
  use: 'FILE.larkrow [--long]',
  details: [
    'A line for each step, in tying order: rows, pieces attached and joined, knots, strands carried and left.',
    '--long    each step in whole sentences',
  ],
  needs: ['FILE.larkrow'],
  options: { long: { type: 'boolean' } },
  async run({ positionals, values }, terminal) {
    const design = await readDesign(terminal, positionals[0]!);
    if (!design.ok) return design;
    const chart = flatten(design.value);
    const plan = planStrands(design.value, chart);
    if (!plan.ok) return plan;
    const yarnsById = new Map(design.value.yarns.map((yarn) => [yarn.id, yarn]));
    const form = values.long === true ? 'long' : 'compact';
    const lines = stepsOf(tyingOrder(chart, plan.value))
      .flat()
      .map((step) => stepWords(step, { yarnsById, units: 'both', form }));
    terminal.print(`${lines.join('\n')}\n`);
    return done;
  },
};
