/** Items as a stamp, where other pages show the same. */
import { moved } from './moved.ts';
import type { Item, PlainItem } from './page.ts';

/** `x`, `y`: a corner or edge that lies alike wherever the items come again. */
export function stamped(items: readonly PlainItem[], x: number, y: number): Item[] {
  const drawn = items.filter((item) => item.kind !== 'path' || item.steps.length > 0);
  return drawn.length === 0 ? [] : [{ kind: 'stamp', x, y, items: drawn.map((item) => moved(item, -x, -y)) }];
}
