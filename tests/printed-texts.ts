import type { Item, Page } from '../shared/pattern/page/page.ts';

/** All that is read on pages, or aloud from them, what pages show alike included. */
export function printedTexts(pages: readonly Page[]): string[] {
  return pages.flatMap(({ title, items }) => [title, ...items.flatMap(textsIn)]);
}

function textsIn(item: Item): string[] {
  switch (item.kind) {
    case 'text':
      return [item.text];
    case 'cells':
    case 'image':
      return item.alt ? [item.alt] : [];
    case 'figure':
      return [item.alt, ...item.items.flatMap(textsIn)];
    case 'group':
    case 'stamp':
      return item.items.flatMap(textsIn);
    default:
      return [];
  }
}
