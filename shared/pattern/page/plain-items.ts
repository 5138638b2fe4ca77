/** All that is drawn on a page, whatever figure, group or stamp it stands in, from back to front. */
import { moved } from './moved.ts';
import type { Item, PlainItem, StampItem } from './page.ts';

export function plainItems(items: readonly Item[]): PlainItem[] {
  return flat(items, ({ items: own, x, y }) => own.map((each) => moved(each, x, y)));
}

/** The same, each where it stands in its own stamp: for whoever asks what is drawn, and not where. */
export function itemsWithin(items: readonly Item[]): PlainItem[] {
  return flat(items, (stamp) => stamp.items);
}

function flat(items: readonly Item[], ofStamp: (stamp: StampItem) => readonly PlainItem[]): PlainItem[] {
  return items.flatMap((item) => {
    switch (item.kind) {
      case 'figure':
      case 'group':
        return flat(item.items, ofStamp);
      case 'stamp':
        return ofStamp(item);
      default:
        return [item];
    }
  });
}
