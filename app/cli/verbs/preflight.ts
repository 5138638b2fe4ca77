import { layOutPattern } from '../../../shared/pattern/lay-out-pattern.ts';
import type { PatternInput } from '../../../shared/pattern/pattern-input.ts';
import type { Finding } from '../../../shared/pattern/preflight/finding.ts';
import { preflight as lookOver } from '../../../shared/pattern/preflight/preflight.ts';
import { problem } from '../../../shared/result.ts';
import { tieCopy } from '../../services/pattern/tie-copy.ts';
import { type CliVerb, done } from '../cli-verb.ts';
import { copyAsked, copyDetails, copyOptions, copyUse } from '../copy-words.ts';
import { keptImprint } from '../kept-imprint.ts';
import { readDesign } from '../read-design.ts';
import { paperOf, unitsDetail, unitsOf, unitsOption, unitsUse } from '../words.ts';

export const preflight: CliVerb = {
  use: `FILE.larkrow [--paper a4|letter] ${unitsUse} [--json] ${copyUse}`,
  details: [
    'Lists what would disappoint a buyer of the pattern, the weightiest first, and how it is mended.',
    '--paper PAPER       a4 (the default) or letter',
    unitsDetail,
    '--json              as JSON',
    ...copyDetails,
  ],
  needs: ['FILE.larkrow'],
  options: {
    paper: { type: 'string', default: 'a4' },
    json: { type: 'boolean', default: false },
    ...unitsOption,
    ...copyOptions,
  },
  async run(words, terminal) {
    const paper = paperOf(words);
    if (!paper.ok) return paper;
    const units = unitsOf(words);
    if (!units.ok) return units;
    const read = await readDesign(terminal, words.positionals[0]!);
    if (!read.ok) return read;
    const copy = copyAsked(words, read.value);
    if (!copy.ok) return copy;
    const imprint = await keptImprint(terminal);
    if (!imprint.ok) return imprint;
    const tied = await tieCopy(read.value, copy.value, undefined);
    if (!tied) return cancelled;
    if (!tied.ok) return tied;
    const input: PatternInput = {
      ...tied.value,
      paper: paper.value,
      units: units.value,
      copy: copy.value,
      imprint: imprint.value,
    };
    const findings = lookOver(input, layOutPattern(input));
    if (words.values.json === true) {
      const json = { format: 'larkrow-preflight', version: 1, title: read.value.title, findings };
      terminal.print(`${JSON.stringify(json, null, 2)}\n`);
    } else terminal.print(asText(findings));
    return done;
  },
};

const cancelled = problem('cancelled', 'Nothing was looked at, because it was cancelled.');

function asText(findings: readonly Finding[]): string {
  if (findings.length === 0) return 'Nothing was found that would disappoint a buyer.\n';
  return findings.map(({ weight, sentence, mend }) => `${weight}: ${sentence} ${mend}\n`).join('');
}
