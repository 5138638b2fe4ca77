/** A part with as much air between its lines as it can have on the fewest pages. */
import type { Draft } from './page-foot.ts';

/** How much air is tried between all and none: see `Flow.air`. */
const between = [0.75, 0.5, 0.25] as const;

export function fewestPages(lay: (air: number) => Draft[]): Draft[] {
  const airy = lay(1);
  if (airy.length <= 1) return airy;
  const dense = lay(0);
  if (dense.length === airy.length) return airy;
  for (const air of between) {
    const pages = lay(air);
    if (pages.length === dense.length) return pages;
  }
  return dense;
}
