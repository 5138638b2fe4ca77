import { flatten } from '../../../shared/chart/chart.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { layOutPattern } from '../../../shared/pattern/lay-out-pattern.ts';
import type { PatternInput } from '../../../shared/pattern/pattern-input.ts';
import type { Finding } from '../../../shared/pattern/preflight/finding.ts';
import { preflight as lookOver } from '../../../shared/pattern/preflight/preflight.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { type CliVerb, done } from '../cli-verb.ts';
import { keptImprint } from '../kept-imprint.ts';
import { readDesign } from '../read-design.ts';
import { paperOf } from '../words.ts';

export const preflight: CliVerb = {
  use: 'FILE.larkrow [--paper a4|letter] [--json]',
  details: [
    'Lists what would disappoint a buyer of the pattern, the weightiest first, and how it is mended.',
    '--paper PAPER   a4 (the default) or letter',
    '--json          as JSON',
  ],
  needs: ['FILE.larkrow'],
  options: { paper: { type: 'string', default: 'a4' }, json: { type: 'boolean', default: false } },
  async run(words, terminal) {
    const paper = paperOf(words);
    if (!paper.ok) return paper;
    const read = await readDesign(terminal, words.positionals[0]!);
    if (!read.ok) return read;
    const design = read.value;
    const chart = flatten(design);
    const plan = planStrands(design, chart);
    if (!plan.ok) return plan;
    const imprint = await keptImprint(terminal);
    if (!imprint.ok) return imprint;
    const materials = materialsOf(design, chart, plan.value);
    const input: PatternInput = {
      design,
      chart,
      plan: plan.value,
      materials,
      paper: paper.value,
      units: 'both',
      imprint: imprint.value,
    };
    const findings = lookOver(input, layOutPattern(input));
    if (words.values.json === true) {
      const json = { format: 'larkrow-preflight', version: 1, title: design.title, findings };
      terminal.print(`${JSON.stringify(json, null, 2)}\n`);
    } else terminal.print(asText(findings));
    return done;
  },
};

function asText(findings: readonly Finding[]): string {
  if (findings.length === 0) return 'Nothing was found that would disappoint a buyer.\n';
  return findings.map(({ weight, sentence, mend }) => `${weight}: ${sentence} ${mend}\n`).join('');
}
