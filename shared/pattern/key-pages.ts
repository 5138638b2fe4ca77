/** The key on pages of its own, before a chart in large print whose pages have no room for it but in small type. */
import type { ChartInput } from './chart-layout.ts';
import { drawKey, layOutKey } from './key.ts';
import type { Draft } from './page-foot.ts';
import { FIRST_HEAD_MM, firstHead } from './page-head.ts';
import { bodyOf } from './papers.ts';

export function keyPages({ entries, cellInks, words, scale, sheet, colors, accent }: ChartInput): Draft[] {
  const area = bodyOf(sheet);
  const { key } = scale;
  const top = area.y + FIRST_HEAD_MM;
  const lines = Math.floor((area.y + area.height - top) / key.lineMm);
  const columns = Math.max(1, Math.floor(area.width / key.narrowestMm));
  const withColors = colors !== undefined;
  const drafts: Draft[] = [];
  for (let first = 0; first < entries.length; first += lines * columns) {
    const shown = entries.slice(first, first + lines * columns);
    const layout = layOutKey(shown, area.width, { scale: key, words, withHere: false, withColors, columns });
    const placed = { x: area.x, y: top - key.headingMm, cellInks, words, withoutHeading: true };
    const table = drawKey(shown, layout, { ...placed, ...(colors && { colors }) });
    drafts.push({ sheet, title: words.key, items: [...firstHead(area, words.key, accent), ...table] });
  }
  return drafts;
}
