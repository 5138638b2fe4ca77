/** All chart pages as small boxes with their numbers, this one filled. */

import { label } from './label.ts';
import type { Item } from './page.ts';
import { longest, type Split } from './split-chart.ts';
import { inks, sizes } from './style.ts';

/** The room that the map takes, heading and all. */
export const MAP_MM = { width: 34, height: 20 } as const;

interface MapPlace {
  /** Top left corner of the map with its heading. */
  readonly x: number;
  readonly y: number;
  readonly heading: string;
  /** Of the page that it stands on. */
  readonly accent: string;
}

/** `acrossAt`, `downAt` (from 0): the page that it stands on. */
export function pageMap(
  firstPage: number,
  split: Split,
  acrossAt: number,
  downAt: number,
  { x, y, heading, accent }: MapPlace,
): Item[] {
  const top = y + 6.4;
  const across = split.across.length;
  const down = split.down.length;
  const cellAspect =
    (longest(split.across) * split.cellWidth) / Math.max(longest(split.down) * split.cellHeight, 0.001);
  const height = Math.min((MAP_MM.height - 7) / down, MAP_MM.width / across / cellAspect, 9);
  // Pages of a very long or very wide chart are not drawn in proportion: their boxes would be slivers.
  const width = Math.max(height * cellAspect, Math.min(5, MAP_MM.width / across));
  const numberMm = Math.min(2.4, height * 0.6, width * 0.5);
  const items: Item[] = [
    label(x, y + sizes.heading * 0.8, heading, { face: 'serif-bold', sizeMm: sizes.heading, role: 'aside' }),
  ];
  for (let d = 0; d < down; d++) {
    for (let a = 0; a < across; a++) {
      const here = a === acrossAt && d === downAt;
      const box = { x: x + a * width, y: top + d * height, width, height };
      items.push({
        kind: 'box',
        ...box,
        fill: here ? accent : inks.paper,
        stroke: inks.soft,
        strokeMm: Math.min(0.25, height / 8),
      });
      if (numberMm < 1.4) continue;
      items.push(
        label(box.x + width / 2, box.y + height / 2 + numberMm * 0.355, String(firstPage + d * across + a), {
          face: here ? 'sans-bold' : 'sans',
          sizeMm: numberMm,
          color: here ? inks.paper : inks.soft,
          align: 'center',
          role: 'aside',
        }),
      );
    }
  }
  return items;
}
