import { flatten } from '../../../shared/chart/chart.ts';
import { chartJson } from '../../../shared/chart/chart-json.ts';
import { type CliVerb, done } from '../cli-verb.ts';
import { readDesign } from '../read-design.ts';
import { asJson } from '../words.ts';

export const chart: CliVerb = {
  use: 'FILE.larkrow --json',
  details: [
    'One JSON object: columns, rows, start corner, yarns, and for each row, left to right as seen from the',
    'front, its runs [yarn, count]; null is bare.',
  ],
  needs: ['FILE.larkrow'],
  options: { json: { type: 'boolean' } },
  async run(words, terminal) {
    const json = asJson(words);
    if (!json.ok) return json;
    const design = await readDesign(terminal, words.positionals[0]!);
    if (!design.ok) return design;
    terminal.print(`${JSON.stringify(chartJson(design.value, flatten(design.value)))}\n`);
    return done;
  },
};
