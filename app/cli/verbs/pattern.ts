import { basename, extname, join } from 'node:path';
import type { CliVerb } from '../cli-verb.ts';
import { copyAsked, copyDetails, copyOptions, copyUse } from '../copy-words.ts';
import { keptImprint } from '../kept-imprint.ts';
import { readEdition } from '../read-edition.ts';
import { needed, paperOf, unitsDetail, unitsOf, unitsOption, unitsUse } from '../words.ts';
import { writePattern } from '../write-pattern.ts';

export const pattern: CliVerb = {
  use: `FILE.larkrow --out FOLDER [--paper a4|letter] ${unitsUse} [--edition N] [--with-design] ${copyUse}`,
  details: [
    '--out FOLDER        where to write; made where it is missing, files of the same names are replaced',
    '--paper PAPER       a4 (the default) or letter',
    unitsDetail,
    '--edition N         an edition that was published, as it was then',
    '--with-design       puts the design into the PDF, which can then be opened as a design',
    ...copyDetails,
  ],
  needs: ['FILE.larkrow'],
  options: {
    out: { type: 'string' },
    paper: { type: 'string', default: 'a4' },
    ...unitsOption,
    edition: { type: 'string' },
    'with-design': { type: 'boolean' },
    ...copyOptions,
  },
  async run(words, terminal) {
    const out = needed(words, 'out');
    if (!out.ok) return out;
    const paper = paperOf(words);
    if (!paper.ok) return paper;
    const units = unitsOf(words);
    if (!units.ok) return units;
    const given = words.positionals[0]!;
    const design = await readEdition(words, terminal);
    if (!design.ok) return design;
    const copy = copyAsked(words, design.value);
    if (!copy.ok) return copy;
    const imprint = await keptImprint(terminal);
    if (!imprint.ok) return imprint;
    const stem = basename(given, extname(given));
    return writePattern(terminal, design.value, {
      paper: paper.value,
      units: units.value,
      copy: copy.value,
      imprint: imprint.value,
      attachDesign: words.values['with-design'] === true,
      place: join(terminal.path(out.value), stem),
    });
  },
};
