import type { Figures } from './figures.ts';
import type { Plans } from './plans.ts';

/** Figures now and before the last change of a setting, of two plans alike: quick with quick, full with full. */
export function comparedWithLast({
  quick,
  full,
  last,
}: Pick<Plans, 'quick' | 'full' | 'last'>): { readonly now: Figures; readonly last: Figures } | null {
  if (full && last?.full) return { now: full.figures, last: last.full };
  return quick && last?.quick ? { now: quick.figures, last: last.quick } : null;
}
