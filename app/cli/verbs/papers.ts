import { basename, extname, join } from 'node:path';
import { patternLanguages } from '../../../shared/design/pattern-schema.ts';
import { copyOf } from '../../../shared/pattern/copy.ts';
import { type HangingPaper, hangingPapers } from '../../../shared/pattern/hanging-papers/hanging-papers.ts';
import { papers as sheets } from '../../../shared/pattern/page/papers.ts';
import { good, type Result } from '../../../shared/result.ts';
import { counted } from '../../../shared/units/counted.ts';
import { makeHangingPapers } from '../../services/pattern/make-hanging-papers.ts';
import { type CliVerb, usage, type Words } from '../cli-verb.ts';
import { keptImprint } from '../kept-imprint.ts';
import { readDesign } from '../read-design.ts';
import { choice, needed, paperOf, unitsOf, unitsOption } from '../words.ts';
import { writeOutput } from '../write-output.ts';

export const papers: CliVerb = {
  use: 'FILE.larkrow --out FOLDER [--which LIST] [--paper a4|letter] [--units metric|us|both] [--language en|de]',
  details: [
    '--out FOLDER      where to write; made where it is missing, a file of the same name is replaced',
    `--which LIST      with commas between them: ${hangingPapers.join(', ')}; all but backing-tiles where absent`,
    '--paper PAPER     a4 (the default) or letter',
    '--units UNITS     metric, us, or both (where absent)',
    '--language LANG   en or de; as the design says where absent',
  ],
  needs: ['FILE.larkrow'],
  options: {
    out: { type: 'string' },
    which: { type: 'string' },
    paper: { type: 'string', default: 'a4' },
    ...unitsOption,
    language: { type: 'string' },
  },
  async run(words, terminal) {
    const out = needed(words, 'out');
    if (!out.ok) return out;
    const paper = paperOf(words);
    if (!paper.ok) return paper;
    const units = unitsOf(words);
    if (!units.ok) return units;
    const which = whichOf(words);
    if (!which.ok) return which;
    const language = words.values.language === undefined ? null : choice(words, 'language', patternLanguages);
    if (language && !language.ok) return language;
    const given = words.positionals[0]!;
    const design = await readDesign(terminal, given);
    if (!design.ok) return design;
    const imprint = await keptImprint(terminal);
    if (!imprint.ok) return imprint;
    const copy = { ...copyOf(design.value), ...(language && { language: language.value }) };
    const made = await makeHangingPapers(design.value, {
      which: which.value,
      paper: paper.value,
      units: units.value,
      copy,
      imprint: imprint.value,
      date: new Date(),
    });
    if (!made.ok) return made;
    const { bytes, pages, notices } = made.value;
    for (const notice of notices) terminal.remark(`${notice}\n`);
    const stem = basename(given, extname(given));
    const place = join(terminal.path(out.value), `${stem} papers ${sheets[paper.value].name}.pdf`);
    return writeOutput(terminal, place, bytes, `${counted(pages, 'page')}, ${bytes.length} bytes`);
  },
};

function whichOf({ values: { which } }: Words): Result<readonly HangingPaper[]> {
  if (typeof which !== 'string') return good(hangingPapers.filter((each) => each !== 'backing-tiles'));
  const chosen: HangingPaper[] = [];
  for (const word of which.split(',').map((each) => each.trim())) {
    const known = hangingPapers.find((each) => each === word);
    if (!known) return usage(`--which takes ${hangingPapers.join(', ')}, not “${word}”.`);
    chosen.push(known);
  }
  return good(chosen);
}
