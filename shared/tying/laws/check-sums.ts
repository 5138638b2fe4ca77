/**
 * The arithmetic of a plan, checked from scratch: each piece against its own stretches, each yarn and the whole
 * against their pieces. Lengths are compared in tenths of a mm, the measure in which plans are published.
 */
import type { YarnId } from '../../design/codes.ts';
import type { Piece, Plan, PlanTotals, Strand, Stretch, YarnTally } from '../plan.ts';

/** Faults of one piece whose carries and turns add up to `carried` tenths. */
export function pieceFaults(piece: Piece, carried: number, yarn: YarnId, { settings }: Plan): string[] {
  const { workingLengthMm, tailMm, knotMm, reserveShare = 0 } = settings;
  const knots = piece.stretches.reduce((sum, { from, to }) => sum + Math.abs(to - from) + 1, 0);
  const knotted = knots * tenths(knotMm[yarn] ?? Number.NaN);
  const used = knotted + carried + 2 * tenths(tailMm);
  const faults = differences(
    '',
    { ...piece },
    {
      knots,
      knottedMm: knotted / 10,
      carriedMm: carried / 10,
      usedMm: used / 10,
      leftOverMm: (tenths(piece.cutMm) - used) / 10,
    },
  );
  if (used > tenths(piece.cutMm)) faults.push(`it uses ${used / 10} mm and is cut at ${piece.cutMm} mm`);
  const planned = tenths(workingLengthMm) * (1 - reserveShare);
  if (used > planned + 1e-6)
    faults.push(`it uses ${used / 10} mm, and with the reserve no more than ${planned / 10} mm is planned`);
  if (tenths(piece.cutMm) > tenths(workingLengthMm))
    faults.push(`it is cut at ${piece.cutMm} mm, the working length is ${workingLengthMm} mm`);
  return faults;
}

/** Faults of `perYarn` and `totals` against the strands. */
export function totalFaults(plan: Plan): string[] {
  const faults: string[] = [];
  const yarns = new Set<YarnId>([
    ...plan.strands.map(({ yarn }) => yarn),
    ...(Object.keys(plan.perYarn) as YarnId[]),
  ]);
  for (const yarn of yarns) {
    const tally = plan.perYarn[yarn];
    if (!tally) faults.push(`${yarn} is missing from the yarns`);
    else
      faults.push(
        ...differences(
          `${yarn}, `,
          { ...tally },
          sumOf(
            plan.strands.filter((s) => s.yarn === yarn),
            plan,
          ),
        ),
      );
  }
  return [...faults, ...differences('in all, ', { ...plan.totals }, totalOf(plan))];
}

function sumOf(strands: readonly Strand[], { settings }: Plan): Record<keyof YarnTally, number> {
  const pieces = strands.flatMap((strand) => strand.pieces);
  const sum = (of: (piece: Piece) => number) =>
    pieces.reduce((total, piece) => total + tenths(of(piece)), 0) / 10;
  return {
    knots: pieces.reduce((total, { knots }) => total + knots, 0),
    strands: strands.length,
    pieces: pieces.length,
    knottedMm: sum((piece) => piece.knottedMm),
    carriedMm: sum((piece) => piece.carriedMm),
    tailsMm: (pieces.length * 2 * tenths(settings.tailMm)) / 10,
    usedMm: sum((piece) => piece.usedMm),
    cutMm: sum((piece) => piece.cutMm),
    leftOverMm: sum((piece) => piece.leftOverMm),
  };
}

function totalOf(plan: Plan): Record<keyof PlanTotals, number> {
  const { settings, strands, rows } = plan;
  const { knots, pieces, carriedMm, usedMm, cutMm } = sumOf(strands, plan);
  const links = strands.flatMap(linksOf);
  const turns = links.filter(([from, to]) => from.to === to.from && to.row === from.row + 1).length;
  const rowsParked = links.reduce((sum, [from, to]) => sum + to.row - from.row, 0);
  const live: number[] = Array(rows - 1).fill(0);
  for (const [from, to] of links) {
    for (let below = from.row; below < to.row; below++) live[below - 1]!++;
  }
  const attach = 2 * tenths(settings.tailMm) + tenths(settings.effortMm);
  const cost = attach * pieces + tenths(carriedMm) + tenths(settings.rowPriceMm) * rowsParked;
  const mean = live.reduce((a, b) => a + b, 0) / Math.max(1, live.length);
  return {
    knots,
    strands: strands.length,
    pieces,
    joins: pieces - strands.length,
    looseEnds: 2 * pieces,
    carries: links.length - turns,
    turns,
    carriedMm,
    usedMm,
    cutMm,
    liveMax: live.reduce((a, b) => Math.max(a, b), 0),
    liveMean: Math.round(mean * 10_000) / 10_000,
    costMm: cost / 10,
  };
}

/** Carries and turns of a strand: from a stretch to the next one of the same piece. */
function linksOf({ pieces }: Strand): [Stretch, Stretch][] {
  return pieces.flatMap(({ stretches }) =>
    stretches.slice(1).map((stretch, i): [Stretch, Stretch] => [stretches[i]!, stretch]),
  );
}

/** Where the plan's figures are not exactly what they should be. */
function differences(what: string, said: Record<string, unknown>, right: Record<string, number>): string[] {
  return Object.entries(right).flatMap(([key, value]) =>
    said[key] === value ? [] : [`${what}${key} is ${said[key]}, not ${value}`],
  );
}

/** Whole tenths of a mm; a length that is none makes every figure that it is part of a fault. */
function tenths(mm: number): number {
  const whole = Math.round(mm * 10);
  return Math.abs(mm * 10 - whole) < 1e-6 * Math.max(1, Math.abs(whole)) ? whole : Number.NaN;
}
