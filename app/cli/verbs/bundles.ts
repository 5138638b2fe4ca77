import { basename } from 'node:path';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { type Bundles, bundlesOf } from '../../../shared/materials/bundles/bundles.ts';
import { usualFitting } from '../../../shared/materials/bundles/fitted-plan.ts';
import { planAsCut } from '../../../shared/materials/bundles/plan-as-cut.ts';
import type { Paper } from '../../../shared/pattern/page/papers.ts';
import { good, type Result } from '../../../shared/result.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { tyingOrder } from '../../../shared/tying/steps/tying-order.ts';
import { counted } from '../../../shared/units/counted.ts';
import { hasEnding } from '../../services/names/endings.ts';
import { makeLabels } from '../../services/pattern/make-labels.ts';
import { type CliVerb, done, type Terminal, usage } from '../cli-verb.ts';
import { readDesign } from '../read-design.ts';
import { paperOf } from '../words.ts';
import { writeOutput } from '../write-output.ts';

export const bundles: CliVerb = {
  use: 'FILE.larkrow [--fitted | --whole] (--json | --labels FILE.pdf [--paper a4|letter])',
  details: [
    'Pieces are cut as the design says, unless one of these does:',
    '--fitted            each piece as long as it is used, with 10 % to spare, up to the next 5 cm',
    '--whole             each piece at the working length',
    '--json              one JSON object: pieces by yarn and length, in the order of use. Lengths in mm',
    '--labels FILE.pdf   where to write labels for the bundles; its folder is made where it is missing, a file of that name is replaced',
    '--paper PAPER       a4 (the default) or letter',
  ],
  needs: ['FILE.larkrow'],
  options: {
    fitted: { type: 'boolean' },
    whole: { type: 'boolean' },
    json: { type: 'boolean' },
    labels: { type: 'string' },
    paper: { type: 'string', default: 'a4' },
  },
  async run(words, terminal) {
    const { fitted: wantsFitted, whole, json, labels } = words.values;
    if (wantsFitted && whole) return usage('Add either --fitted or --whole, not both.');
    if ((json === true) === (typeof labels === 'string' && labels !== ''))
      return usage('Add either --json, or --labels with the name of a PDF file.');
    if (typeof labels === 'string' && !hasEnding(basename(labels), 'pattern'))
      return usage('--labels takes the name of a PDF file.');
    const paper = paperOf(words);
    if (!paper.ok) return paper;
    const design = await readDesign(terminal, words.positionals[0]!);
    if (!design.ok) return design;
    const fitted = wantsFitted === true || (whole !== true && design.value.bundles?.fitted === true);
    const wishes = { fitted, paper: paper.value };
    if (typeof labels === 'string') return writeLabels(terminal, terminal.path(labels), design.value, wishes);
    const made = bundlesFor(design.value, fitted);
    if (!made.ok) return made;
    const heading = { format: 'larkrow-bundles', version: 1, fitting: fitted ? usualFitting : null };
    terminal.print(`${JSON.stringify({ ...heading, ...made.value })}\n`);
    return done;
  },
};

function bundlesFor(design: Design, fitted: boolean): Result<Bundles> {
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) return plan;
  return good(bundlesOf(tyingOrder(chart, planAsCut({ bundles: { fitted } }, plan.value))));
}

/** Lengths stand in both kinds of units, as in a pattern. */
async function writeLabels(
  terminal: Terminal,
  path: string,
  design: Design,
  { fitted, paper }: { readonly fitted: boolean; readonly paper: Paper },
): Promise<Result<null>> {
  const made = await makeLabels(design, { fitted, paper, units: 'both', date: new Date() });
  if (!made.ok) return made;
  const { bytes, pages, notices } = made.value;
  for (const notice of notices) terminal.remark(`${notice}\n`);
  return writeOutput(terminal, path, bytes, `${counted(pages, 'page')}, ${bytes.length} bytes`);
}
