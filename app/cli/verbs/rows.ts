import { flatten } from '../../../shared/chart/chart.ts';
import { writtenRows, writtenRowText } from '../../../shared/tying/written-rows.ts';
import { type CliVerb, done } from '../cli-verb.ts';
import { readDesign } from '../read-design.ts';

export const rows: CliVerb = {
  use: 'FILE.larkrow',
  details: [
    'A line for each row, in tying order: counts, yarns, cords, and the cords to lift before it is tied.',
  ],
  needs: ['FILE.larkrow'],
  options: {},
  async run({ positionals }, terminal) {
    const design = await readDesign(terminal, positionals[0]!);
    if (!design.ok) return design;
    const yarns = new Map(design.value.yarns.map((yarn) => [yarn.id, yarn]));
    const lines = writtenRows(flatten(design.value), yarns).map((row) => writtenRowText(row));
    terminal.print(`${lines.join('\n')}\n`);
    return done;
  },
};
