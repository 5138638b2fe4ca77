import { basename, extname, join } from 'node:path';
import { demoDesigns } from '../../../shared/demos/demo-designs.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { counted } from '../../../shared/units/counted.ts';
import { type CliVerb, done } from '../cli-verb.ts';
import { needed } from '../words.ts';
import { writeOutput } from '../write-output.ts';
import { writePattern } from '../write-pattern.ts';

export const demo: CliVerb = {
  use: '--out FOLDER',
  details: ['--out FOLDER    where to write; made where it is missing, files of the same names are replaced'],
  needs: [],
  options: { out: { type: 'string' } },
  async run(words, terminal) {
    const out = needed(words, 'out');
    if (!out.ok) return out;
    const folder = terminal.path(out.value);
    for (const { fileName, make } of demoDesigns) {
      const design = make();
      const { columns, rows } = design;
      const text = Buffer.from(writeDesign(design));
      const size = `${counted(columns, 'cord')}, ${counted(rows, 'row')}`;
      const written = await writeOutput(terminal, join(folder, fileName), text, size);
      if (!written.ok) return written;
      const place = join(folder, basename(fileName, extname(fileName)));
      const pattern = await writePattern(terminal, design, { paper: 'a4', place });
      if (!pattern.ok) return pattern;
    }
    return done;
  },
};
