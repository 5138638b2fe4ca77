/** All that is drawn on a page, whatever figure, group or stamp it stands in, from back to front. */
import { moved } from './moved.ts';
import type { Item, PlainItem } from './page.ts';

export function plainItems(items: readonly Item[]): PlainItem[] {
  return items.flatMap((item) => {
    switch (item.kind) {
      case 'figure':
      case 'group':
        return plainItems(item.items);
      case 'stamp':
        return item.items.map((each) => moved(each, item.x, item.y));
      default:
        return [item];
    }
  });
}

/** The same, each where it stands in its own stamp: for whoever asks what is drawn, and not where. */
export function itemsWithin(items: readonly Item[]): PlainItem[] {
  return items.flatMap((item) => {
    switch (item.kind) {
      case 'figure':
      case 'group':
        return itemsWithin(item.items);
      case 'stamp':
        return item.items;
      default:
        return [item];
    }
  });
}
