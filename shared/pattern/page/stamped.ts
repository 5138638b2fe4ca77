/** Items as a stamp, where other pages show the same. */
import { moved } from './moved.ts';
import type { Item, PlainItem } from './page.ts';

/** `x`, `y`: a corner or edge that lies alike wherever the items come again. */
export function stamped(items: readonly PlainItem[], x: number, y: number): Item[] {
  return stamp(fromCorner(items, x, y), x, y);
}

/** What the pages of one part show alike, by what it is: laid out for the first of them. */
export type Alike = Map<string, readonly PlainItem[]>;

/** `key` tells all that the items hang on beside their corner. */
export function stampedOnce(
  alike: Alike,
  key: string,
  items: () => readonly PlainItem[],
  x: number,
  y: number,
): Item[] {
  let known = alike.get(key);
  if (!known) {
    known = fromCorner(items(), x, y);
    alike.set(key, known);
  }
  return stamp(known, x, y);
}

function fromCorner(items: readonly PlainItem[], x: number, y: number): PlainItem[] {
  const drawn = items.filter((item) => item.kind !== 'path' || item.steps.length > 0);
  return drawn.map((item) => moved(item, -x, -y));
}

function stamp(items: readonly PlainItem[], x: number, y: number): Item[] {
  return items.length === 0 ? [] : [{ kind: 'stamp', x, y, items }];
}
