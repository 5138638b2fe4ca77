/** How far an item of a page reaches, in mm from the sheet's top left corner. */
import { textWidthMm } from '../faces/measure-text.ts';
import type { Item, PathItem, RuleItem, TextItem } from './page.ts';

export interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export function itemBounds(item: Item): Bounds {
  switch (item.kind) {
    case 'text':
      return textBounds(item);
    case 'rule':
      return ruleBounds(item);
    case 'box':
      return around([item.x, item.x + item.width], [item.y, item.y + item.height], (item.strokeMm ?? 0) / 2);
    case 'path':
      return pathBounds(item);
    case 'cells':
      return around(
        [item.x, item.x + item.columns * item.cellWidth],
        [item.y, item.y + item.rows * item.cellHeight],
        0,
      );
    case 'image':
      return around([item.x, item.x + item.width], [item.y, item.y + item.height], 0);
    case 'figure':
    case 'group':
      return together(item.items);
    case 'stamp': {
      const { left, top, right, bottom } = together(item.items);
      const { x, y } = item;
      return { left: left + x, top: top + y, right: right + x, bottom: bottom + y };
    }
  }
}

function together(items: readonly Item[]): Bounds {
  const parts = items.map(itemBounds);
  return around(
    parts.flatMap(({ left, right }) => [left, right]),
    parts.flatMap(({ top, bottom }) => [top, bottom]),
    0,
  );
}

/** Handles of its curves count as points. */
function pathBounds({ steps, strokeMm = 0 }: PathItem): Bounds {
  const bounds = {
    left: Number.POSITIVE_INFINITY,
    top: Number.POSITIVE_INFINITY,
    right: Number.NEGATIVE_INFINITY,
    bottom: Number.NEGATIVE_INFINITY,
  };
  for (const step of steps) {
    for (let i = 1; i < step.length; i += 2) {
      const x = step[i] as number;
      const y = step[i + 1] as number;
      bounds.left = Math.min(bounds.left, x - strokeMm / 2);
      bounds.right = Math.max(bounds.right, x + strokeMm / 2);
      bounds.top = Math.min(bounds.top, y - strokeMm / 2);
      bounds.bottom = Math.max(bounds.bottom, y + strokeMm / 2);
    }
  }
  return bounds;
}

/** A rule is as long as it is said to be, and half of its width to either side. */
function ruleBounds({ x1, y1, x2, y2, widthMm }: RuleItem): Bounds {
  const length = Math.hypot(x2 - x1, y2 - y1) || 1;
  const across = (Math.abs(y2 - y1) / length) * (widthMm / 2);
  const down = (Math.abs(x2 - x1) / length) * (widthMm / 2);
  return {
    left: Math.min(x1, x2) - across,
    right: Math.max(x1, x2) + across,
    top: Math.min(y1, y2) - down,
    bottom: Math.max(y1, y2) + down,
  };
}

/** From the height of capitals to the depth of descenders, within which letters of the text lie. */
export function textBounds({ x, y, text, face, sizeMm, align }: TextItem): Bounds {
  const width = textWidthMm(text, face, sizeMm);
  const left = align === 'left' ? x : align === 'right' ? x - width : x - width / 2;
  return { left, right: left + width, top: y - 0.75 * sizeMm, bottom: y + 0.24 * sizeMm };
}

/** Not with Math.min over all points: a chart's path has more of them than a call takes arguments. */
function around(xs: readonly number[], ys: readonly number[], by: number): Bounds {
  const least = (list: readonly number[]) => list.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const most = (list: readonly number[]) => list.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  return { left: least(xs) - by, top: least(ys) - by, right: most(xs) + by, bottom: most(ys) + by };
}
