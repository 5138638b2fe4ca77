import { type PlanSource, plannedAlike } from './planned-alike.ts';
import type { Plans } from './plans.ts';

/** From what was planned to what will be. */
interface Change {
  readonly before: PlanSource;
  readonly now: PlanSource;
  /** True where the settings before were only being tried. */
  readonly wasTried: boolean;
}

/**
 * What to compare with after a change. While settings are tried, what the hanging took before the first try stands;
 * pins and how pieces are cut count as settings; another picture or yarn can't be compared with.
 */
export function lastFigures(
  { last, settled, quick, full }: Pick<Plans, 'last' | 'settled' | 'quick' | 'full'>,
  { before, now, wasTried }: Change,
): Plans['last'] {
  const { tying, swatches, pins, bundles } = now.design;
  const alike = { ...before, design: { ...before.design, tying, swatches, pins, bundles } };
  if (!plannedAlike(alike, now)) return null;
  if (wasTried || !settled || !quick) return last;
  return { quick: quick.figures, full: full?.figures ?? null };
}
