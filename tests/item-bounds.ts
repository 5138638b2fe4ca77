/** For tests that hold pages to their margins, and their items apart. */
import type { Bounds } from '../shared/pattern/page/item-bounds.ts';

export { itemBounds, textBounds } from '../shared/pattern/page/item-bounds.ts';

/** Bounds that share more than a hair. */
export function overlap(a: Bounds, b: Bounds): boolean {
  const hair = 0.02;
  return (
    a.left < b.right - hair && b.left < a.right - hair && a.top < b.bottom - hair && b.top < a.bottom - hair
  );
}
