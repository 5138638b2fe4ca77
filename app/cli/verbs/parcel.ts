import { join } from 'node:path';
import { type Language, patternLanguages } from '../../../shared/design/pattern-schema.ts';
import { good, type Result } from '../../../shared/result.ts';
import { counted } from '../../../shared/units/counted.ts';
import { nodeFiles } from '../../services/files/file-layer.ts';
import { makeParcel } from '../../services/pattern/parcel/make-parcel.ts';
import { writeParcelFolder } from '../../services/pattern/parcel/write-parcel-folder.ts';
import { zipOf } from '../../services/pattern/parcel/zip.ts';
import { type CliVerb, done, usage, type Words } from '../cli-verb.ts';
import { keptImprint } from '../kept-imprint.ts';
import { readEdition } from '../read-edition.ts';
import { needed, unitsDetail, unitsOf, unitsOption } from '../words.ts';
import { writeOutput } from '../write-output.ts';

export const parcel: CliVerb = {
  use: 'FILE.larkrow --out FOLDER [--zip] [--edition N] [--units metric|us|both] [--languages en,de] [--both-hands] [--prepared-for NAME]',
  details: [
    '--out FOLDER        where to write; made where it is missing',
    '--zip               one ZIP archive instead of a folder; one of the same name is replaced',
    '--edition N         of an edition that was published, as it was then',
    unitsDetail,
    '--languages LIST    en (the default), de, or both with a comma',
    '--both-hands        copies for left-handed and right-handed makers',
    '--prepared-for NAME stands on every page',
  ],
  needs: ['FILE.larkrow'],
  options: {
    out: { type: 'string' },
    zip: { type: 'boolean', default: false },
    edition: { type: 'string' },
    ...unitsOption,
    languages: { type: 'string', default: 'en' },
    'both-hands': { type: 'boolean', default: false },
    'prepared-for': { type: 'string', default: '' },
  },
  async run(words, terminal) {
    const out = needed(words, 'out');
    if (!out.ok) return out;
    const units = unitsOf(words);
    if (!units.ok) return units;
    const languages = languagesOf(words);
    if (!languages.ok) return languages;
    const design = await readEdition(words, terminal);
    if (!design.ok) return design;
    const imprint = await keptImprint(terminal);
    if (!imprint.ok) return imprint;
    const date = new Date();
    const made = await makeParcel(design.value, {
      units: units.value,
      date,
      imprint: imprint.value,
      languages: languages.value,
      bothHands: words.values['both-hands'] === true,
      preparedFor: String(words.values['prepared-for']),
    });
    if (!made.ok) return made;
    const { name, files, notices } = made.value;
    for (const notice of notices) terminal.remark(`${notice}\n`);
    const folder = terminal.path(out.value);
    if (words.values.zip === true) {
      const bytes = zipOf(name, files, date);
      return writeOutput(
        terminal,
        join(folder, `${name}.zip`),
        bytes,
        `${counted(files.length, 'file')}, ${bytes.length} bytes`,
      );
    }
    const written = await writeParcelFolder(nodeFiles, folder, made.value);
    if (!written.ok) return written;
    terminal.print(`${written.value}: ${counted(files.length, 'file')}\n`);
    for (const file of files) terminal.print(`  ${file.name}: ${file.bytes.length} bytes\n`);
    return done;
  },
};

function languagesOf({ values }: Words): Result<Language[]> {
  const given = [...new Set(String(values.languages).split(','))];
  return given.every(isLanguage)
    ? good(given)
    : usage(
        `--languages takes ${patternLanguages.join(' or ')}, or both with a comma, not “${values.languages}”.`,
      );
}

function isLanguage(word: string): word is Language {
  return (patternLanguages as readonly string[]).includes(word);
}
