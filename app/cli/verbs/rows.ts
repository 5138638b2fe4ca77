import { type Chart, flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { type Language, patternLanguages } from '../../../shared/design/pattern-schema.ts';
import { keyEntries } from '../../../shared/pattern/chart-pages/key.ts';
import { chartWords } from '../../../shared/pattern/words/chart-words.ts';
import { rowsWords } from '../../../shared/pattern/words/rows-words.ts';
import { repeatedCounts } from '../../../shared/tying/rows/repeated-counts.ts';
import { compactRowText, writtenRows, writtenRowText } from '../../../shared/tying/rows/written-rows.ts';
import { type CliVerb, done } from '../cli-verb.ts';
import { readDesign } from '../read-design.ts';
import { choice } from '../words.ts';

export const rows: CliVerb = {
  use: 'FILE.larkrow [--form long|compact] [--language en|de]',
  details: [
    'A line for each row, in tying order: counts, yarns, cords, and the cords to lift before it is tied.',
    '--form FORM      long (the default): in words; compact: with the symbols’ letters, below a key of them',
    '--language LANG  en (the default) or de',
  ],
  needs: ['FILE.larkrow'],
  options: {
    form: { type: 'string', default: 'long' },
    language: { type: 'string', default: 'en' },
  },
  async run(words, terminal) {
    const form = choice(words, 'form', ['long', 'compact']);
    if (!form.ok) return form;
    const language = choice(words, 'language', patternLanguages);
    if (!language.ok) return language;
    const design = await readDesign(terminal, words.positionals[0]!);
    if (!design.ok) return design;
    const lines = { long, compact }[form.value](design.value, flatten(design.value), language.value);
    terminal.print(`${lines.join('\n')}\n`);
    return done;
  },
};

function long({ yarns }: Design, chart: Chart, language: Language): string[] {
  const rows = writtenRows(chart, new Map(yarns.map((yarn) => [yarn.id, yarn])));
  return rows.map((row) => writtenRowText(row, rowsWords[language]));
}

/** Whose letter is whose stands above the rows, and how they are read. */
function compact({ yarns }: Design, chart: Chart, language: Language): string[] {
  const byId = new Map(yarns.map((yarn) => [yarn.id, yarn]));
  const used = new Set(keyEntries(yarns, chart, chartWords[language]).map(({ name }) => name));
  const rows = writtenRows(chart, byId);
  const { compact, repeated } = rowsWords[language];
  return [
    compact,
    ...(rows.some(({ parts }) => repeatedCounts(parts)) ? [repeated] : []),
    ...yarns.filter(({ name }) => used.has(name)).map(({ symbol, name }) => `${symbol}  ${name}`),
    '',
    ...rows.map((row) => compactRowText(row, (id) => byId.get(id)!.symbol)),
  ];
}
