/** The key on pages of its own, before a chart in large print whose pages have no room for it but in small type. */

import type { Draft } from '../flow/page-foot.ts';
import { FIRST_HEAD_MM, firstHead } from '../flow/page-head.ts';
import type { Item } from '../page/page.ts';
import { bodyOf } from '../page/papers.ts';
import type { ChartInput } from './chart-layout.ts';
import { frameLines } from './frame-lines.ts';
import { drawKey, layOutKey } from './key.ts';

export function keyPages(input: ChartInput): Draft[] {
  const { entries, cellInks, words, scale, sheet, colors, accent, repeats, namesPage } = input;
  const area = bodyOf(sheet);
  const { key } = scale;
  const top = area.y + FIRST_HEAD_MM;
  const lines = Math.floor((area.y + area.height - top) / key.lineMm);
  const columns = Math.max(1, Math.floor(area.width / key.narrowestMm));
  const withColors = colors !== undefined;
  const pages: Item[][] = [];
  let y = top;
  for (let first = 0; first < entries.length; first += lines * columns) {
    const shown = entries.slice(first, first + lines * columns);
    const layout = layOutKey(shown, area.width, { scale: key, words, withHere: false, withColors, columns });
    const placed = { x: area.x, y: top - key.headingMm, cellInks, words, namesPage, withoutHeading: true };
    pages.push(drawKey(shown, layout, { ...placed, ...(colors && { colors }) }));
    y = placed.y + layout.height;
  }
  const frames = frameLines(repeats, area.width, key, words);
  if (frames.height > area.y + area.height - y) pages.push(frames.draw(area.x, top));
  else pages.at(-1)?.push(...frames.draw(area.x, y));
  return pages.map((items) => ({
    sheet,
    title: words.key,
    items: [...firstHead(area, words.key, accent), ...items],
  }));
}
