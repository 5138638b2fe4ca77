import type { Step } from '../../../shared/tying/steps/step.ts';

/** Steps that are shown or left out together. */
const inBlock = 40;

export interface StepBlock {
  /** Its first step's place in the row, from 0. */
  readonly first: number;
  readonly steps: readonly Step[];
}

export function blocksOf(steps: readonly Step[]): StepBlock[] {
  const count = Math.ceil(steps.length / inBlock);
  return Array.from({ length: count }, (_, block) => {
    const first = block * inBlock;
    return { first, steps: steps.slice(first, first + inBlock) };
  });
}

/**
 * The place of the step that is done next where so many knots of the hanging are tied, from 0; the number of steps where
 * the row is done. What comes right after a knot, such as leaving a strand, is still to be done; what stands before
 * the row's first knot is, too.
 */
export function nextOf(steps: readonly Step[], tied: number): number {
  const next = steps.findIndex((step) =>
    step.kind === 'knots' ? step.knotsBefore + step.count > tied : step.knotsBefore >= tied,
  );
  return next === -1 ? steps.length : next;
}
