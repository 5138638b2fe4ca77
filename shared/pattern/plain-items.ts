/** All that is drawn on a page, whatever figure or group it stands in, from back to front. */
import type { Item, PlainItem } from './page.ts';

export function plainItems(items: readonly Item[]): PlainItem[] {
  return items.flatMap((item) =>
    item.kind === 'figure' || item.kind === 'group' ? plainItems(item.items) : [item],
  );
}
