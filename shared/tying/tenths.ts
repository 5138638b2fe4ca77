/**
 * The planner's own measure: whole tenths of a millimetre, so that sums are exact and a plan is the same everywhere.
 */
import { codeOf, type YarnId } from '../design/codes.ts';
import { limits } from '../design/limits.ts';
import type { PlanSettings } from './plan.ts';

/** Every length in tenths of a mm. */
export interface Tenths {
  /** Yarn of one knot, by the yarn's code. */
  readonly knot: Float64Array;
  /** Knots and carries that are planned for a piece: its working length without reserve and its two tails. */
  readonly room: number;
  /** Knots and carries that a piece can hold, reserve included. */
  readonly roomInAll: number;
  /** A piece as cut. */
  readonly cut: number;
  readonly tail: number;
  /** What a piece costs the planner: its two tails and the effort to attach it. */
  readonly attach: number;
  /** What a strand costs the planner for each row that it hangs parked. */
  readonly rowPrice: number;
  /** A carry over so many cords and rows, to the nearest tenth, halves up. */
  carry(cords: number, rows: number): number;
}

export function toTenths(mm: number): number {
  return Math.floor(mm * 10 + 0.5 + noise);
}

/** In mm, the nearest number to that many tenths: 377 is 37.7. */
export function fromTenths(tenths: number): number {
  return tenths / 10;
}

export function tenthsOf(settings: PlanSettings): Tenths {
  const { pitchMm, rowHeightMm, slack } = settings;
  const knot = new Float64Array(limits.yarns + 1);
  for (const [id, mm] of Object.entries(settings.knotMm)) knot[codeOf(id as YarnId)] = toTenths(mm);
  const cut = toTenths(settings.workingLengthMm);
  const tail = toTenths(settings.tailMm);
  return {
    knot,
    room: roomOf(settings),
    roomInAll: cut - 2 * tail,
    cut,
    tail,
    attach: 2 * tail + toTenths(settings.effortMm),
    rowPrice: toTenths(settings.rowPriceMm),
    carry: (cords, rows) => toTenths(slack * (cords * pitchMm + rows * rowHeightMm)),
  };
}

/** Tenths of a mm for knots and carries that are planned for a piece; below 0 where the tails alone take more. */
export function roomOf({
  workingLengthMm,
  tailMm,
  reserveShare = 0,
}: Pick<PlanSettings, 'workingLengthMm' | 'tailMm' | 'reserveShare'>): number {
  return Math.floor(toTenths(workingLengthMm) * (1 - reserveShare) + noise) - 2 * toTenths(tailMm);
}

/** Keeps products such as 1.05 x 5 from falling on the wrong side of a half. */
const noise = 1e-6;
