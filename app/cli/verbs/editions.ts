import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { apply } from '../../../shared/design/edits.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import type { Change } from '../../../shared/pattern/editions/changes-since.ts';
import { changesSinceLast, publishEdition } from '../../../shared/pattern/editions/edition.ts';
import { editionWords } from '../../../shared/pattern/words/edition-words.ts';
import { good, type Result } from '../../../shared/result.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { type CliVerb, done, type Terminal } from '../cli-verb.ts';
import { readDesign } from '../read-design.ts';
import { writeOutput } from '../write-output.ts';

const words = editionWords.en;

export const editions: CliVerb = {
  use: 'FILE.larkrow [--publish NOTE] [--json]',
  details: [
    'Lists the editions that were published, with their errata, and what changed since the last one.',
    '--publish NOTE  publishes the design as it is as the next edition, and writes it into the file',
    '--json          as JSON',
  ],
  needs: ['FILE.larkrow'],
  options: { publish: { type: 'string' }, json: { type: 'boolean', default: false } },
  async run({ values, positionals }, terminal) {
    const given = positionals[0]!;
    const read = await readDesign(terminal, given);
    if (!read.ok) return read;
    if (typeof values.publish !== 'string') return list(terminal, read.value, values.json === true);
    const published = publishedBy(read.value, values.publish);
    if (!published.ok) return published;
    const last = published.value.editions!.at(-1)!;
    const bytes = new TextEncoder().encode(writeDesign(published.value));
    return writeOutput(terminal, terminal.path(given), bytes, words.name(last.number, last.date));
  },
};

function publishedBy(design: Design, note: string): Result<Design> {
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) return plan;
  const date = new Date().toISOString().slice(0, 10);
  const edit = publishEdition(design, chart, plan.value, { date, note });
  return edit.ok ? good(apply(design, edit.value)) : edit;
}

function list(terminal: Terminal, design: Design, json: boolean): Result<null> {
  const all = design.editions ?? [];
  const last = all.at(-1);
  const changes = last ? changesOf(design) : good([]);
  if (!changes.ok) return changes;
  if (json) {
    const listed = all.map(({ number, date, note, errata }) => ({ number, date, note, errata }));
    const file = {
      format: 'larkrow-editions',
      version: 1,
      title: design.title,
      editions: listed,
      changes: changes.value,
    };
    terminal.print(`${JSON.stringify(file, null, 2)}\n`);
    return done;
  }
  if (!last) terminal.print('No edition was published yet.\n');
  for (const { number, date, note, errata } of all) {
    terminal.print(`${words.name(number, date)}${note ? `: ${note}` : ''}\n`);
    for (const erratum of errata) terminal.print(`  ${erratum.date}: ${erratum.text}\n`);
  }
  if (last) {
    terminal.print(`${words.changesHead(last.number)}:\n`);
    const told = changes.value.map(words.change);
    for (const sentence of told.length > 0 ? told : [words.noChange]) terminal.print(`  ${sentence}\n`);
  }
  return done;
}

function changesOf(design: Design): Result<Change[]> {
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  return plan.ok ? good(changesSinceLast(design, chart, plan.value)) : plan;
}
