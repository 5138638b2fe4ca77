/**
 * How much memory planning takes at most, over what the program holds before: a process of its own for each chart and
 * way, for the system tells only the most that a process ever held.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { flatten } from '../../../shared/chart/chart.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { mottledDesign } from '../parts/mottled-design.ts';
import { shadedDesign } from './shaded-design.ts';

const designs = { shaded: shadedDesign, mottled: mottledDesign };

export interface PlannedAlone {
  readonly picture: keyof typeof designs;
  readonly columns: number;
  readonly rows: number;
  readonly effort: 'quick' | 'full';
}

/** In MB: before planning, and at most. */
export function mostMemory({ picture, columns, rows, effort }: PlannedAlone): [before: number, most: number] {
  const { stdout, stderr } = spawnSync(
    process.execPath,
    [...process.execArgv, fileURLToPath(import.meta.url), picture, `${columns}`, `${rows}`, effort],
    { encoding: 'utf8' },
  );
  const figures = /^(\d+) (\d+)$/m.exec(stdout);
  if (!figures) throw new Error(stderr || stdout);
  return [Number(figures[1]), Number(figures[2])];
}

function planAlone([picture, columns, rows, effort]: string[]): void {
  const design = designs[picture as keyof typeof designs](Number(columns), Number(rows));
  const chart = flatten(design);
  const before = heldMb();
  const plan = planStrands(design, chart, { effort: effort as PlannedAlone['effort'] });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  console.log(`${before} ${heldMb()}`);
}

/** The most that this process ever held. Where Linux tells it, by that: what `resourceUsage` tells begins with the parent's. */
function heldMb(): number {
  const status = existsSync(STATUS) ? readFileSync(STATUS, 'utf8') : '';
  const peakKb = /^VmHWM:\s+(\d+) kB$/m.exec(status)?.[1];
  return Math.round((peakKb ? Number(peakKb) : process.resourceUsage().maxRSS) / 1024);
}

const STATUS = '/proc/self/status';

if (process.argv[1] === fileURLToPath(import.meta.url)) planAlone(process.argv.slice(2));
