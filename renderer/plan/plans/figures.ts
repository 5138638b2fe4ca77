/** The figures that settings are weighed by. They are the materials' and the plan's own, and nothing is counted here. */
import type { Materials } from '../../../shared/materials/materials.ts';
import type { Plan } from '../../../shared/tying/plan.ts';

export interface Figures {
  readonly pieces: number;
  readonly looseEnds: number;
  readonly yarnCutMm: number;
  /** Carries and turns. */
  readonly carriedMm: number;
  /** Strands that hang at once, at most. */
  readonly liveMax: number;
  readonly seconds: number;
}

export function figuresOf({ totals }: Materials, plan: Plan): Figures {
  const { pieces, looseEnds, yarnCutMm, liveMax, seconds } = totals;
  return { pieces, looseEnds, yarnCutMm, carriedMm: plan.totals.carriedMm, liveMax, seconds };
}
