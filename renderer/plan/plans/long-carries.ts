import { arrivals, type PlanTables } from './plan-tables.ts';

/** A carry that is longer than asked for. */
export interface LongCarry {
  /** The stretch that it leads to. */
  readonly stretch: number;
  readonly mm: number;
}

/** Carries over `overMm`, turns left out; the longest first, and in tying order where they are alike. */
export function longCarries({ stretches }: PlanTables, overMm: number): LongCarry[] {
  const found: LongCarry[] = [];
  const carry = arrivals.indexOf('carry');
  for (let s = 0; s < stretches.count; s++) {
    const mm = stretches.carryMm[s]!;
    if (stretches.arrival[s] === carry && mm > overMm) found.push({ stretch: s, mm });
  }
  return found.sort((a, b) => b.mm - a.mm || a.stretch - b.stretch);
}
