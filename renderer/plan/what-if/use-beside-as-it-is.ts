/**
 * Designs weighed against the hanging as it is, whose plan the Plan screen keeps anyway: it is not made a second time,
 * and stopped and made again together with the others.
 */
import { useMemo } from 'react';
import type { Design } from '../../../shared/design/design.ts';
import { priced } from '../../../shared/materials/priced.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { usePlans } from '../plans/plans.ts';
import { useWeighed, type Weighing } from './use-weighed.ts';
import type { Weighable, Weighed } from './weigh.worker.ts';

/** The key of the hanging as it is. */
export const asItIs = 'as-it-is';

/** `design` is the open one, with its currency. `all` must be the same value while nothing changes. */
export function useBesideAsItIs(
  design: Pick<Design, 'yarns' | 'money'>,
  all: readonly Weighable[],
): Weighing {
  const others = useWeighed(all);
  const quick = usePlans((state) => state.quick);
  const full = usePlans((state) => state.full);
  const isTried = usePlans((state) => state.draft !== null);
  const problem = usePlans((state) => state.problem);
  const own = usePlans((state) => state.progress);
  const weighed = useMemo((): Weighed | null => {
    const planned = full ?? quick;
    // What is tried is not the hanging as it is.
    if (!planned || isTried) return null;
    const { materials, figures } = planned;
    return { effort: full ? 'full' : 'quick', materials: priced(materials, design), figures };
  }, [quick, full, isTried, design]);
  return {
    weighed: weighed ? { ...others.weighed, [asItIs]: weighed } : others.weighed,
    problems: problem ? { ...others.problems, [asItIs]: problem } : others.problems,
    progress: together(own, others.progress, all.length),
    stop() {
      others.stop();
      if (own !== null) runCommand('stop-plan');
    },
    again() {
      others.again();
      if (!full) runCommand('full-plan');
    },
  };
}

/** Share of all plans that is done, of one and of `count` others; null where none is being made. */
function together(one: number | null, others: number | null, count: number): number | null {
  if (one === null && others === null) return null;
  return ((one ?? 1) + (others ?? 1) * count) / (1 + count);
}
