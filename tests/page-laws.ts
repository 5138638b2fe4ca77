/** What holds for every page that is printed. */
import type { Page, TextItem } from '../shared/pattern/page/page.ts';
import { margins } from '../shared/pattern/page/papers.ts';
import { plainItems } from '../shared/pattern/page/plain-items.ts';
import { itemBounds, overlap, textBounds } from './item-bounds.ts';

/** Half of the thin lines that stand at a margin, and what the last bits of fractions add up to. */
const HAIR_MM = 0.2;

/** What of a page lies beyond its margins, in words. */
export function outside(page: Page): string[] {
  return plainItems(page.items)
    .map((item) => ({ item, at: itemBounds(item) }))
    .filter(
      ({ at }) =>
        at.left < margins.left - HAIR_MM ||
        at.top < margins.top - HAIR_MM ||
        at.right > page.widthMm - margins.right + HAIR_MM ||
        at.bottom > page.heightMm - margins.bottom + HAIR_MM,
    )
    .map(
      ({ item, at }) =>
        `${page.title}: ${item.kind === 'text' ? item.text : item.kind} at ${JSON.stringify(at)}`,
    );
}

/** Which texts of a page lie over one another or over symbols, in words. */
export function printedOver(page: Page): string[] {
  const items = plainItems(page.items);
  const texts = items
    .filter((item): item is TextItem => item.kind === 'text')
    .map((item) => ({ item, at: textBounds(item) }))
    .sort((a, b) => a.at.top - b.at.top);
  const found: string[] = [];
  texts.forEach((a, i) => {
    for (let j = i + 1; j < texts.length && texts[j]!.at.top < a.at.bottom; j++) {
      const b = texts[j]!;
      if (overlap(a.at, b.at)) found.push(`${page.title}: '${a.item.text}' over '${b.item.text}'`);
    }
  });
  // A map has its numbers over the cells, which have no symbols there.
  const inSymbols = items.filter(
    // A sheet of lift marks is seen only where they are.
    (item) => item.kind === 'cells' && item.symbolMm && Object.values(item.inks).some(({ fill }) => fill),
  );
  for (const cells of inSymbols.map(itemBounds)) {
    for (const { item, at } of texts) {
      if (overlap(at, cells)) found.push(`${page.title}: '${item.text}' over cells`);
    }
  }
  return found;
}
