/**
 * How long something takes beside something else, both measured by turns in one run. A limit in milliseconds would
 * fail on a machine that is slow or busy; a yardstick is as slow there as what is measured with it.
 */

/** How many times as long `work` takes as `yardstick`: the shortest of `rounds` runs of each. */
export function timesAsLong(work: () => void, yardstick: () => void, rounds = 15): number {
  let [shortestWork, shortestYardstick] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let round = 0; round < rounds; round++) {
    shortestWork = Math.min(shortestWork, msOf(work));
    shortestYardstick = Math.min(shortestYardstick, msOf(yardstick));
  }
  return shortestWork / shortestYardstick;
}

function msOf(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}
