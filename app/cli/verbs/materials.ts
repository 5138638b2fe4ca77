import { flatten } from '../../../shared/chart/chart.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { type CliVerb, done } from '../cli-verb.ts';
import { readDesign } from '../read-design.ts';
import { asJson } from '../words.ts';

export const materials: CliVerb = {
  use: 'FILE.larkrow --json',
  details: ['One JSON object. Lengths in mm, masses in g, times in s, to a ten-thousandth.'],
  needs: ['FILE.larkrow'],
  options: { json: { type: 'boolean' } },
  async run(words, terminal) {
    const json = asJson(words);
    if (!json.ok) return json;
    const design = await readDesign(terminal, words.positionals[0]!);
    if (!design.ok) return design;
    const chart = flatten(design.value);
    const plan = planStrands(design.value, chart);
    if (!plan.ok) return plan;
    terminal.print(`${JSON.stringify(materialsOf(design.value, chart, plan.value), plainNumbers)}\n`);
    return done;
  },
};

/** To a ten-thousandth: sums of decimals carry digits that mean nothing, such as 172.79999999999998. */
function plainNumbers(_key: string, value: unknown): unknown {
  return typeof value === 'number' ? Number(value.toFixed(4)) : value;
}
