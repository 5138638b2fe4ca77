/**
 * Holds a plan to the laws of tying, from scratch: it reads only the published plan and the chart and shares no
 * arithmetic with the planners, so it also checks plans that come from elsewhere.
 *
 * The laws: each knot is tied exactly once, by its own yarn, in tying order; a strand ties whole runs; carries keep
 * within their limits and never pass behind a bare cell of the row they arrive in; a piece holds what it is said to
 * hold and no more than its length without its reserve; none is empty; every total is the sum of its parts (`check-sums.ts`);
 * the pins that it names are obeyed (`check-pins.ts`).
 */
import { type Chart, goesRight } from '../../chart/chart.ts';
import { BARE, codeOf } from '../../design/codes.ts';
import { counted } from '../../units/counted.ts';
import type { Plan, Strand, Stretch } from '../plan.ts';
import { pinFaultsOf } from './check-pins.ts';
import { pieceFaults, totalFaults } from './check-sums.ts';

/** Enough to see what is wrong; the plan of another chart would have thousands. */
const mostFaults = 50;

/** One sentence for each fault found, at most 50; empty where the plan is sound. */
export function planFaults(plan: Plan, chart: Chart): string[] {
  const heading = headingFaults(plan, chart);
  if (heading.length > 0) return heading;
  const shape = shapeFaults(plan, chart);
  // Sums over stretches that leave the chart, or run backwards, would mean nothing.
  if (shape.length > 0) return shape.slice(0, mostFaults);
  return [
    ...plan.strands.flatMap((strand, s) => strandFaults(strand, `strand ${s + 1}`, plan, chart)),
    ...orderFaults(plan),
    ...totalFaults(plan),
    ...pinFaultsOf(plan),
  ].slice(0, mostFaults);
}

function headingFaults(plan: Plan, chart: Chart): string[] {
  const faults: string[] = [];
  if (plan.format !== 'larkrow-plan' || plan.version !== 1) faults.push('this is no plan of version 1');
  if (plan.columns !== chart.columns || plan.rows !== chart.rows)
    faults.push(
      `the plan is for ${plan.columns} x ${plan.rows} cells, the chart has ${chart.columns} x ${chart.rows}`,
    );
  if (plan.startCorner !== chart.startCorner) faults.push(`the plan begins at the ${plan.startCorner}`);
  if (!/^[0-9a-f]{64}$/.test(plan.chartHash)) faults.push('the hash of the chart is no SHA-256');
  return faults;
}

/** Each stretch lies in its row, goes its way, and ties cells of its yarn; together they tie every knot once. */
function shapeFaults(plan: Plan, chart: Chart): string[] {
  const faults: string[] = [];
  const tied = new Uint8Array(chart.cells.length);
  plan.strands.forEach((strand, s) => {
    const name = `strand ${s + 1}`;
    if (strand.pieces.length === 0) faults.push(`${name} has no piece`);
    strand.pieces.forEach(({ stretches }, p) => {
      if (stretches.length === 0) faults.push(`${name}, piece ${p + 1} ties nothing`);
      for (const stretch of stretches) {
        const where = `${name}, piece ${p + 1}, row ${stretch.row}, cords ${stretch.from} to ${stretch.to}`;
        if (!liesInChart(stretch, chart)) {
          faults.push(`${where}: there are no such cells, or the row goes the other way`);
          continue;
        }
        for (const cell of cellsOf(stretch, chart)) {
          if (chart.cells[cell] !== codeOf(strand.yarn))
            faults.push(`${where}: not all of it is ${strand.yarn}`);
          if (tied[cell]) faults.push(`${where}: cord ${(cell % chart.columns) + 1} is tied twice`);
          tied[cell] = 1;
        }
      }
    });
  });
  chart.cells.forEach((code, cell) => {
    if (code !== BARE && !tied[cell]) faults.push(`${cellName(cell, chart)} is never tied`);
  });
  return faults;
}

/** One strand: its runs in tying order and whole, its carries within reach, its pieces as long as they are said. */
function strandFaults({ pieces, yarn }: Strand, name: string, plan: Plan, chart: Chart): string[] {
  const faults: string[] = [];
  let before: Stretch | null = null;
  for (const [p, piece] of pieces.entries()) {
    let carried = 0;
    for (const [i, stretch] of piece.stretches.entries()) {
      const link = before === null ? 'start' : i === 0 ? 'join' : 'carry';
      const place = `${name}, piece ${p + 1}, row ${stretch.row}, cord ${stretch.from}`;
      faults.push(...linkFaults(link, before, stretch, plan, chart).map((fault) => `${place}: ${fault}`));
      if (before && link === 'carry') carried += carryTenths(before, stretch, plan);
      before = stretch;
    }
    const sums = pieceFaults(piece, carried, yarn, plan);
    faults.push(...sums.map((fault) => `${name}, piece ${p + 1}: ${fault}`));
  }
  if (before && !endsRun(before, chart)) faults.push(`${name} ends within a run`);
  return faults;
}

/** How a stretch follows the one before it: as the strand's start, after a join, or after a carry or turn. */
function linkFaults(
  link: 'start' | 'join' | 'carry',
  before: Stretch | null,
  stretch: Stretch,
  plan: Plan,
  chart: Chart,
): string[] {
  const faults: string[] = [];
  if (before && position(stretch, chart) <= position(before, chart))
    faults.push('tied before what comes earlier on the strand');
  if (link === 'join') {
    if (before && !continues(before, stretch, chart)) faults.push('joined where the strand is carried');
    return faults;
  }
  if (!startsRun(stretch, chart)) faults.push('the strand begins within a run');
  if (!before) return faults;
  if (!endsRun(before, chart)) faults.push('the strand left its last run unfinished');
  return [...faults, ...carryFaults(before, stretch, plan, chart)];
}

function carryFaults(from: Stretch, to: Stretch, { settings }: Plan, { cells, columns }: Chart): string[] {
  const faults: string[] = [];
  const cords = Math.abs(to.from - from.to);
  const rows = to.row - from.row;
  if (cords > settings.carryMaxCords) faults.push(`carried over ${counted(cords, 'cord')}`);
  if (rows > settings.carryMaxRows) faults.push(`carried over ${counted(rows, 'row')}`);
  for (let cord = Math.min(from.to, to.from); cord <= Math.max(from.to, to.from); cord++) {
    if (cells[(to.row - 1) * columns + cord - 1] === BARE) faults.push(`carried behind bare cord ${cord}`);
  }
  return faults;
}

/** Physical length of a carry or turn by the plan's own settings, in tenths of a mm, halves up. */
function carryTenths(from: Stretch, to: Stretch, { settings }: Plan): number {
  const acrossMm = Math.abs(to.from - from.to) * settings.pitchMm;
  const downMm = (to.row - from.row) * settings.rowHeightMm;
  return Math.round(settings.slack * (acrossMm + downMm) * 10 + 1e-6);
}

/** Strands stand in the order in which they are attached. */
function orderFaults({ strands, columns, startCorner, rows }: Plan): string[] {
  const chart = { columns, rows, startCorner };
  const starts = strands.map(({ pieces }) => position(pieces[0]!.stretches[0]!, chart));
  return starts.flatMap((start, s) =>
    s > 0 && start <= starts[s - 1]! ? [`strand ${s + 1} is attached before strand ${s}`] : [],
  );
}

type Ways = Pick<Chart, 'columns' | 'startCorner'>;

function rightwards({ row }: Stretch, { startCorner }: Ways): boolean {
  return goesRight(startCorner, row - 1);
}

/** Place of a stretch's first knot in the tying order. */
function position(stretch: Stretch, chart: Ways): number {
  const tied = rightwards(stretch, chart) ? stretch.from - 1 : chart.columns - stretch.from;
  return (stretch.row - 1) * chart.columns + tied;
}

function liesInChart(stretch: Stretch, chart: Chart): boolean {
  const { row, from, to } = stretch;
  if (![row, from, to].every(Number.isInteger)) return false;
  if (row < 1 || row > chart.rows || Math.min(from, to) < 1 || Math.max(from, to) > chart.columns)
    return false;
  return from === to || from < to === rightwards(stretch, chart);
}

function cellsOf({ row, from, to }: Stretch, { columns }: Chart): number[] {
  const left = (row - 1) * columns + Math.min(from, to) - 1;
  return Array.from({ length: Math.abs(to - from) + 1 }, (_, i) => left + i);
}

/** True where no knot of the same yarn comes right before the stretch in its row. */
function startsRun(stretch: Stretch, chart: Chart): boolean {
  return !sameYarn(stretch, stretch.from, rightwards(stretch, chart) ? -1 : 1, chart);
}

/** True where no knot of the same yarn comes right after the stretch in its row. */
function endsRun(stretch: Stretch, chart: Chart): boolean {
  return !sameYarn(stretch, stretch.to, rightwards(stretch, chart) ? 1 : -1, chart);
}

function sameYarn({ row }: Stretch, cord: number, step: number, { cells, columns }: Chart): boolean {
  const beside = cord + step;
  if (beside < 1 || beside > columns) return false;
  return cells[(row - 1) * columns + cord - 1] === cells[(row - 1) * columns + beside - 1];
}

/** True where `to` goes on with the very next knot of the same run. */
function continues(from: Stretch, to: Stretch, chart: Chart): boolean {
  return from.row === to.row && to.from - from.to === (rightwards(from, chart) ? 1 : -1);
}

function cellName(cell: number, { columns }: Chart): string {
  return `row ${Math.floor(cell / columns) + 1}, cord ${(cell % columns) + 1}`;
}
