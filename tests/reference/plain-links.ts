/**
 * The links of a chart told in the plainest way, for outside solvers to choose from: every two runs are looked at, and
 * lengths are computed from the settings as the plan publishes them. Shares nothing with the planner but the runs.
 */
import { BARE, yarnIdOf } from '../../shared/design/codes.ts';
import type { PlanQuestion } from '../../shared/tying/question/strand-choice.ts';
import { knotsOf } from '../../shared/tying/runs.ts';

/** In tenths of a mm. */
export interface PlainLink {
  readonly from: number;
  readonly to: number;
  readonly carry: number;
  /** Carry and rows parked. */
  readonly cost: number;
}

/** All carries that the limits and bare cells allow and that a piece can hold between two knots. */
export function plainLinks({ runs, chart, settings }: PlanQuestion): PlainLink[] {
  const links: PlainLink[] = [];
  for (let to = 0; to < runs.count; to++) {
    for (let from = 0; from < to; from++) {
      if (runs.yarn[from] !== runs.yarn[to]) continue;
      const cords = Math.abs(runs.first[to]! - runs.last[from]!);
      const rows = runs.row[to]! - runs.row[from]!;
      if (cords > settings.carryMaxCords || rows > settings.carryMaxRows) continue;
      const [low, high] = [
        Math.min(runs.first[to]!, runs.last[from]!),
        Math.max(runs.first[to]!, runs.last[from]!),
      ];
      const behind = chart.cells.subarray(
        runs.row[to]! * chart.columns + low,
        runs.row[to]! * chart.columns + high + 1,
      );
      if (behind.includes(BARE)) continue;
      const lengthMm = settings.slack * (cords * settings.pitchMm + rows * settings.rowHeightMm);
      const carry = Math.round(lengthMm * 10 + 1e-6);
      const { knot, room } = plainPiece({ settings }, yarnIdOf(runs.yarn[to]!));
      if (carry + 2 * knot > room) continue;
      links.push({ from, to, carry, cost: carry + rows * Math.round(settings.rowPriceMm * 10) });
    }
  }
  return links;
}

/** What a piece holds, what a knot of the yarn takes and what a piece costs, in tenths of a mm. */
function plainPiece(
  { settings }: Pick<PlanQuestion, 'settings'>,
  yarn: keyof PlanQuestion['settings']['knotMm'],
): { room: number; knot: number; attach: number } {
  const { workingLengthMm, tailMm, effortMm, knotMm, reserveShare = 0 } = settings;
  return {
    room:
      Math.floor(Math.round(workingLengthMm * 10) * (1 - reserveShare) + 1e-6) - 2 * Math.round(tailMm * 10),
    knot: Math.round(knotMm[yarn]! * 10),
    attach: 2 * Math.round(tailMm * 10) + Math.round(effortMm * 10),
  };
}

/**
 * The whole question as a mixed-integer program in the LP format, a knot at a time: `s` is 1 where a fresh piece
 * begins at a knot, `x` where a carry is kept, `u` is what the piece at hand has used once a knot is tied. Only one
 * yarn's runs, as yarns have nothing to do with one another.
 */
export function piecesProgram(question: PlanQuestion, yarn: number): string {
  const { runs } = question;
  const { room, knot, attach } = plainPiece(question, yarnIdOf(yarn));
  const own = Array.from({ length: runs.count }, (_, run) => run).filter((run) => runs.yarn[run] === yarn);
  const links = plainLinks(question).filter(({ to }) => runs.yarn[to] === yarn);
  const cost: string[] = [];
  const rows: string[] = [];
  const bounds: string[] = [];
  const binaries: string[] = [];
  const most = 2 * room;
  for (const run of own) {
    for (let k = 0; k < knotsOf(runs, run); k++) {
      const name = `${run}_${k}`;
      cost.push(`${attach} s${name}`);
      binaries.push(`s${name}`);
      bounds.push(`${knot} <= u${name} <= ${room}`);
      if (k > 0) rows.push(`u${name} - u${run}_${k - 1} + ${most} s${name} >= ${knot}`);
    }
    const into = links.filter(({ to }) => to === run);
    const out = links.filter(({ from }) => from === run);
    rows.push([`s${run}_0`, ...into.map(({ from }) => `x${from}_${run}`)].join(' + ').concat(' = 1'));
    if (out.length > 0) rows.push(`${out.map(({ to }) => `x${run}_${to}`).join(' + ')} <= 1`);
  }
  for (const { from, to, carry, cost: price } of links) {
    const last = knotsOf(runs, from) - 1;
    cost.push(`${price} x${from}_${to}`);
    binaries.push(`x${from}_${to}`);
    rows.push(`u${to}_0 - u${from}_${last} - ${most} x${from}_${to} >= ${knot + carry - most}`);
  }
  return program(cost, rows, bounds, binaries);
}

/** The path cover of all yarns as a linear program: its corners are whole numbers, so no integers are asked for. */
export function coverProgram(question: PlanQuestion): string {
  const { runs } = question;
  const links = plainLinks(question);
  const attach = 2 * Math.round(question.settings.tailMm * 10) + Math.round(question.settings.effortMm * 10);
  const rows: string[] = [];
  const cost: string[] = [];
  for (let run = 0; run < runs.count; run++) {
    cost.push(`${attach} s${run}`);
    const into = links.filter(({ to }) => to === run).map(({ from }) => `x${from}_${run}`);
    const out = links.filter(({ from }) => from === run).map(({ to }) => `x${run}_${to}`);
    rows.push(`${[`s${run}`, ...into].join(' + ')} = 1`);
    if (out.length > 0) rows.push(`${out.join(' + ')} <= 1`);
  }
  for (const { from, to, cost: price } of links) cost.push(`${price} x${from}_${to}`);
  return program(cost, rows, [], []);
}

function program(cost: string[], rows: string[], bounds: string[], binaries: string[]): string {
  return [
    'Minimize',
    ` obj: ${cost.join('\n + ')}`,
    'Subject To',
    ...rows.map((row, i) => ` r${i}: ${row}`),
    ...(bounds.length > 0 ? ['Bounds', ...bounds.map((bound) => ` ${bound}`)] : []),
    ...(binaries.length > 0 ? ['Binary', ...binaries.map((name) => ` ${name}`)] : []),
    'End',
    '',
  ].join('\n');
}
