import { basename, extname } from 'node:path';
import type { Design } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import { newDesign } from '../../../shared/design/new-design.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import { designFromPicture } from '../../../shared/picture/design-from-picture.ts';
import { good, problem, type Result } from '../../../shared/result.ts';
import { counted } from '../../../shared/units/counted.ts';
import { hasEnding } from '../../services/names/endings.ts';
import { pictureToChart } from '../../services/pictures/picture-to-chart.ts';
import { type CliVerb, type Terminal, usage, type Words } from '../cli-verb.ts';
import { readDesign } from '../read-design.ts';
import { count, needed } from '../words.ts';
import { writeOutput } from '../write-output.ts';

const YARNS = 8;

export const picture: CliVerb = {
  use: 'IMAGE --cords N [--rows N] [--yarns N | --from DESIGN] --out FILE.larkrow',
  details: [
    'IMAGE is a PNG, JPEG or WebP picture.',
    '',
    '--cords N       how many cords wide',
    '--rows N        how many rows high; without it, as many as keep the picture’s proportions',
    `--yarns N       how many yarns to choose from the picture; without it, ${YARNS}`,
    '--from DESIGN   instead: the yarns, gauge and settings of this design',
    '--out FILE      where to write the design; its folder is made where it is missing, a file that is there is replaced',
  ],
  needs: ['IMAGE'],
  options: {
    cords: { type: 'string' },
    rows: { type: 'string' },
    yarns: { type: 'string' },
    from: { type: 'string' },
    out: { type: 'string' },
  },
  async run(words, terminal) {
    const wishes = readWishes(words);
    if (!wishes.ok) return wishes;
    const { columns, rows, yarns, from, out } = wishes.value;
    const title = basename(out, extname(out)).slice(0, limits.nameChars);
    const template = from
      ? await readDesign(terminal, from)
      : good(newDesign({ title, columns: 1, rows: 1 }));
    if (!template.ok) return template;
    const given = words.positionals[0]!;
    const made = await pictureToChart(terminal.path(given), {
      columns,
      ...(rows && { rows }),
      ...gaugeFor(template.value),
      yarns: from ? { from: [...template.value.yarns] } : { count: yarns },
    });
    if (!made.ok) return problem(made.problem.code, `${given}: ${made.problem.sentence}`);
    return write(terminal, out, designFromPicture({ title, ...made.value, template: template.value }));
  },
};

interface Wishes {
  readonly columns: number;
  readonly rows: number | null;
  readonly yarns: number;
  readonly from: string | null;
  readonly out: string;
}

function readWishes(words: Words): Result<Wishes> {
  const { from } = words.values;
  const columns = count(words, 'cords', limits.columns);
  if (!columns.ok) return columns;
  if (columns.value === null) return usage('--cords is missing.');
  const rows = count(words, 'rows', limits.rows);
  if (!rows.ok) return rows;
  const yarns = count(words, 'yarns', limits.yarns);
  if (!yarns.ok) return yarns;
  if (yarns.value !== null && from !== undefined) {
    return usage('--yarns and --from exclude each other: the yarns are chosen, or they are the design’s.');
  }
  const out = needed(words, 'out');
  if (!out.ok) return out;
  if (!hasEnding(basename(out.value), 'design')) return usage('--out takes the name of a .larkrow file.');
  return good({
    columns: columns.value,
    rows: rows.value,
    yarns: yarns.value ?? YARNS,
    from: typeof from === 'string' ? from : null,
    out: out.value,
  });
}

function gaugeFor(template: Design): { pitchMm: number; rowHeightMm: number } {
  const { pitchMm, rowHeightMm } = gaugeOf(template);
  return { pitchMm, rowHeightMm };
}

async function write(terminal: Terminal, out: string, design: Design): Promise<Result<null>> {
  const names = design.yarns.map(({ name }: Yarn) => name).join(', ');
  return writeOutput(
    terminal,
    terminal.path(out),
    Buffer.from(writeDesign(design)),
    `${counted(design.columns, 'cord')}, ${counted(design.rows, 'row')}, ${counted(design.yarns.length, 'yarn')} (${names})`,
  );
}
