/**
 * What is drawn on a page, in greys throughout, for a copy that is printed without colours. Each colour becomes the grey of its
 * luminance (WCAG 2.2), so that text is read as well as in colour.
 */
import { hexToLinear, linearToHex } from '../../yarn/colour.ts';
import type { Item, PlainItem } from './page.ts';

export function inGreys(items: readonly Item[]): Item[] {
  return items.map((item): Item => {
    switch (item.kind) {
      case 'figure':
      case 'stamp':
        return { ...item, items: item.items.map(plainInGreys) };
      case 'group':
        return { ...item, items: inGreys(item.items) };
      default:
        return plainInGreys(item);
    }
  });
}

function plainInGreys(item: PlainItem): PlainItem {
  switch (item.kind) {
    case 'text':
    case 'rule':
      return { ...item, color: greyOf(item.color) };
    case 'box':
    case 'path':
      return {
        ...item,
        ...(item.fill && { fill: greyOf(item.fill) }),
        ...(item.stroke && { stroke: greyOf(item.stroke) }),
      };
    case 'cells':
      return {
        ...item,
        inks: Object.fromEntries(
          Object.entries(item.inks).map(([code, { fill, ink, edge, ...rest }]) => [
            code,
            {
              ...rest,
              ink: greyOf(ink),
              ...(fill && { fill: greyOf(fill) }),
              ...(edge && { edge: { ...edge, color: greyOf(edge.color) } }),
            },
          ]),
        ),
      };
    case 'image':
      return { ...item, inGreys: true };
  }
}

const known = new Map<string, string>();

function greyOf(color: string): string {
  const before = known.get(color);
  if (before !== undefined) return before;
  const { r, g, b } = hexToLinear(color);
  const y = 0.2126 * r + 0.7152 * g + 0.0722 * b;
  const grey = linearToHex({ r: y, g: y, b: y });
  known.set(color, grey);
  return grey;
}
