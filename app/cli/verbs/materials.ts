import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { withStash } from '../../../shared/materials/with-stash.ts';
import { good, type Result } from '../../../shared/result.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { emptyStash } from '../../../shared/yarn/stash.ts';
import { nodeFiles } from '../../services/files/file-layer.ts';
import { homeHere } from '../../services/home/home.ts';
import { readStash } from '../../services/kept/keep-stash.ts';
import { type CliVerb, done, type Terminal } from '../cli-verb.ts';
import { readDesign } from '../read-design.ts';
import { asJson } from '../words.ts';

export const materials: CliVerb = {
  use: 'FILE.larkrow --json [--stash]',
  details: [
    'One JSON object. Lengths in mm, masses in g, times in s, to a ten-thousandth.',
    '--stash: what the design does not tell of owned skeins is read from your stash, as on the Plan screen.',
  ],
  needs: ['FILE.larkrow'],
  options: { json: { type: 'boolean' }, stash: { type: 'boolean' } },
  async run(words, terminal) {
    const json = asJson(words);
    if (!json.ok) return json;
    const design = await readDesign(terminal, words.positionals[0]!);
    if (!design.ok) return design;
    const owned = words.values.stash ? await withOwnStash(design.value, terminal) : design;
    if (!owned.ok) return owned;
    const chart = flatten(owned.value);
    const plan = planStrands(owned.value, chart);
    if (!plan.ok) return plan;
    terminal.print(`${JSON.stringify(materialsOf(owned.value, chart, plan.value), plainNumbers)}\n`);
    return done;
  },
};

async function withOwnStash(design: Design, terminal: Terminal): Promise<Result<Design>> {
  const read = await readStash(nodeFiles, homeHere().config);
  if (!read.ok) return read;
  const { entries, notice } = read.value;
  if (notice) terminal.remark(`${notice}\n`);
  return good(withStash(design, { ...emptyStash, yarns: entries }));
}

/** To a ten-thousandth: sums of decimals carry digits that mean nothing, such as 172.79999999999998. */
function plainNumbers(_key: string, value: unknown): unknown {
  return typeof value === 'number' ? Number(value.toFixed(4)) : value;
}
