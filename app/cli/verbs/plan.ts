import { flatten } from '../../../shared/chart/chart.ts';
import { planAsCut } from '../../../shared/materials/bundles/plan-as-cut.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { type CliVerb, done } from '../cli-verb.ts';
import { readDesign } from '../read-design.ts';
import { asJson } from '../words.ts';

export const plan: CliVerb = {
  use: 'FILE.larkrow --json',
  details: [
    'One JSON object: settings, strands with their pieces, totals, totals of each yarn. Lengths in mm.',
    'Pieces are as they are cut: to measure where the design says so, else at the working length.',
  ],
  needs: ['FILE.larkrow'],
  options: { json: { type: 'boolean' } },
  async run(words, terminal) {
    const json = asJson(words);
    if (!json.ok) return json;
    const design = await readDesign(terminal, words.positionals[0]!);
    if (!design.ok) return design;
    const made = planStrands(design.value, flatten(design.value));
    if (!made.ok) return made;
    terminal.print(`${JSON.stringify(planAsCut(design.value, made.value))}\n`);
    return done;
  },
};
