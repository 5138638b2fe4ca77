/** A part as airy as it can be set on the fewest pages: where setting it denser saves a page, it is dense. */
import type { Setting } from './flow.ts';
import type { Draft } from './page-foot.ts';

export function fewestPages(lay: (setting: Setting) => Draft[]): Draft[] {
  const airy = lay('airy');
  if (airy.length <= 1) return airy;
  const dense = lay('dense');
  return dense.length < airy.length ? dense : airy;
}
