/**
 * What a reserve in each piece takes, and what a looser hand then still needs: pieces with none, 3 % and 5 % of the
 * working length kept free, on the demo designs and on pictures that nobody here drew.
 */
import { flatten } from '../../../shared/chart/chart.ts';
import { demoDesigns } from '../../../shared/demos/demo-designs.ts';
import type { Design } from '../../../shared/design/design.ts';
import { planByHand } from '../../../shared/materials/plan-by-hand.ts';
import { planFaults } from '../../../shared/tying/laws/check-plan.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { pictureDesigns } from './picture-designs.ts';

const reserves = [0, 0.03, 0.05];
/** How much more yarn each knot takes of the looser hand. */
const looserBy = 0.03;

interface Count {
  readonly pieces: number;
  readonly ifLoose: number;
}

export async function compareReserves(): Promise<void> {
  tell('demo designs', [...demoDesigns.map(({ make }) => make())]);
  tell('40 x 48, 6 yarns', await pictureDesigns(40, 48, 6));
}

function tell(name: string, designs: readonly Design[]): void {
  const words = reserves.map((share) => `${share * 100} %`).join(' / ');
  console.log(`\n${name}, ${words} of each piece kept free: pieces, and those of a hand 3 % looser`);
  const all = designs.map((design) => {
    const counts = reserves.map((reserveShare) => countsOf(design, reserveShare));
    console.log(`  ${design.title.padEnd(24)}${counts.map(arrow).join('')}`);
    return counts;
  });
  const sums = reserves.map((_, i) => ({
    pieces: all.reduce((sum, counts) => sum + counts[i]!.pieces, 0),
    ifLoose: all.reduce((sum, counts) => sum + counts[i]!.ifLoose, 0),
  }));
  console.log(`  ${'in all'.padEnd(24)}${sums.map(arrow).join('')}`);
  const share = (now: number, then: number) => `${((now / then - 1) * 100).toFixed(1)} %`;
  for (const [i, { pieces, ifLoose }] of sums.entries())
    console.log(
      `  ${reserves[i]! * 100} % kept free: ${share(pieces, sums[0]!.pieces)} pieces more than with none; ` +
        `the looser hand takes ${share(ifLoose, pieces)} more`,
    );
}

function arrow({ pieces, ifLoose }: Count): string {
  return `${pieces} -> ${ifLoose}`.padStart(16);
}

function countsOf(design: Design, reserveShare: number): Count {
  const kept = { ...design, tying: { ...design.tying, reserveShare } };
  const chart = flatten(kept);
  const plan = planStrands(kept, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  if (planFaults(plan.value, chart).length > 0) throw new Error(`${design.title} is unsound`);
  const loose = Object.keys(plan.value.settings.knotMm).map((id) => [id, 1 + looserBy]);
  const ifLoose = Object.values(planByHand(plan.value, Object.fromEntries(loose)));
  return {
    pieces: plan.value.totals.pieces,
    ifLoose: ifLoose.reduce((sum, { pieces }) => sum + pieces, 0),
  };
}
