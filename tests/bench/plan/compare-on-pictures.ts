import { flatten } from '../../../shared/chart/chart.ts';
import type { Result } from '../../../shared/result.ts';
import { planCarefully } from '../../../shared/tying/careful-person/plan-carefully.ts';
import { planFaults } from '../../../shared/tying/laws/check-plan.ts';
import type { Plan } from '../../../shared/tying/plan.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { pictureDesigns } from './picture-designs.ts';

type Totals = Plan['totals'];

/** Prints a table: the careful person, the cover with its best pieces, the full plan; and the means in per cent. */
export async function compareOnPictures(columns: number, rows: number, yarns: number): Promise<void> {
  const designs = await pictureDesigns(columns, rows, yarns);
  console.log(
    `\n${designs.length} pictures at ${columns} x ${rows}, ${yarns} yarns: careful / cover and pieces / full`,
  );
  console.log(
    ['picture', 'pieces', 'loose ends', 'carried m', 'yarn cut m', 'live mean', 'live most']
      .map(cell)
      .join(''),
  );
  const all: Totals[][] = [];
  for (const design of designs) {
    const chart = flatten(design);
    const plans = [
      planCarefully(design, chart),
      planStrands(design, chart, { effort: 'quick' }),
      planStrands(design, chart),
    ].map(planOf);
    for (const plan of plans)
      if (planFaults(plan, chart).length > 0) throw new Error(`${design.title} is unsound`);
    const totals = plans.map((plan) => plan.totals);
    all.push(totals);
    const told = (figure: (totals: Totals) => string) => totals.map(figure).join('/');
    console.log(
      [
        design.title,
        told(({ pieces }) => `${pieces}`),
        told(({ looseEnds }) => `${looseEnds}`),
        told(({ carriedMm }) => (carriedMm / 1000).toFixed(1)),
        told(({ cutMm }) => (cutMm / 1000).toFixed(0)),
        told(({ liveMean }) => liveMean.toFixed(1)),
        told(({ liveMax }) => `${liveMax}`),
      ]
        .map(cell)
        .join(''),
    );
  }
  tellMeans('cover and pieces', all, 1);
  tellMeans('full', all, 2);
}

/** Against the careful person: of all pictures together, and of the pictures' own shares. */
function tellMeans(name: string, all: readonly Totals[][], planner: number): void {
  const change = (of: (totals: Totals) => number) => {
    const sum = (which: number) => all.reduce((total, row) => total + of(row[which]!), 0);
    return `${((sum(planner) / sum(0) - 1) * 100).toFixed(1)} %`;
  };
  const shares = all.map((row) => row[planner]!.pieces / row[0]!.pieces - 1);
  const mean = shares.reduce((a, b) => a + b, 0) / shares.length;
  console.log(
    `${name}: pieces and loose ends ${change((t) => t.pieces)} (mean of the pictures ${(mean * 100).toFixed(1)} %), ` +
      `carried ${change((t) => t.carriedMm)}, yarn cut ${change((t) => t.cutMm)}, yarn used ${change((t) => t.usedMm)}, ` +
      `live mean ${change((t) => t.liveMean)}, live most ${change((t) => t.liveMax)}, cost ${change((t) => t.costMm)}`,
  );
}

function cell(text: string, i: number): string {
  return i === 0 ? text.padEnd(24) : text.padStart(19);
}

function planOf(plan: Result<Plan>): Plan {
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}
