/**
 * The whole chart as one picture: every row and cord numbered as on paper, with title and key. It is laid out as one
 * sheet in mm of a nominal resolution; the drawer turns it into pixels.
 */

import type { Chart } from '../chart/chart.ts';
import { codeOf } from '../design/codes.ts';
import type { Design } from '../design/design.ts';
import { touchingPairs } from '../yarn/touching.ts';
import { cellInks } from './chart-pages/cell-inks.ts';
import { cordNumbersMm, drawChartBlock, rowNumbersMm } from './chart-pages/chart-block.ts';
import { drawKey, keyEntries, layOutKey } from './chart-pages/key.ts';
import { printScales } from './chart-pages/print-scale.ts';
import { printedAspect } from './chart-pages/printed-aspect.ts';
import { spanOf } from './chart-pages/split-chart.ts';
import type { Copy } from './copy.ts';
import { fitText } from './faces/measure-text.ts';
import { label } from './page/label.ts';
import type { Page } from './page/page.ts';
import { newPrinter } from './page/printable.ts';
import { inks } from './page/style.ts';
import { chartWords } from './words/chart-words.ts';

/** Pixels to the millimetre: 203 to the inch, so that the numbers are as sharp as on a screen. */
export const PICTURE_PX_PER_MM = 8;

/**
 * Pixels of a picture in all, and of its longer side. A chart within `limits` keeps its cells of at least 4 px.
 */
export const pictureLimits = { pixels: 48_000_000, sidePx: 16_000, cellPx: { least: 4, most: 32 } } as const;

const MARGIN_MM = 8;
const TITLE_MM = 14;
const GAP_MM = 6;
/** A narrow chart would leave no room for title and key. */
const NARROWEST_MM = 90;

/** `chart`: as the copy ties it. */
export function layOutPicture(
  design: Pick<Design, 'title' | 'yarns'>,
  chart: Chart,
  gauge: { readonly pitchMm: number; readonly rowHeightMm: number },
  { ink, language }: Pick<Copy, 'ink' | 'language'>,
): Page {
  const printer = newPrinter();
  const words = chartWords[language];
  const named = design.yarns.map(({ id, name }) => ({ id, name: printer.printable(name) }));
  const entries = keyEntries(named, chart, words);
  const colors =
    ink === 'symbols' && Object.fromEntries(design.yarns.map(({ id, color }) => [codeOf(id), color]));
  const { key: scale } = printScales.standard;
  const aspect = printedAspect(gauge);
  for (let cellPx = pictureLimits.cellPx.most; ; cellPx--) {
    const short = cellPx / PICTURE_PX_PER_MM;
    const cellWidth = aspect >= 1 ? short * aspect : short;
    const cellHeight = cellWidth / aspect;
    const sides = rowNumbersMm(chart.rows);
    const chartWidth = chart.columns * cellWidth;
    const chartHeight = chart.rows * cellHeight;
    const inside = Math.max(chartWidth + 2 * sides, NARROWEST_MM);
    const key = layOutKey(entries, inside, { scale, words, withHere: false, withColors: ink === 'symbols' });
    const widthMm = inside + 2 * MARGIN_MM;
    const keyY = MARGIN_MM + TITLE_MM + chartHeight + 2 * cordNumbersMm() + GAP_MM;
    const heightMm = keyY + key.height + MARGIN_MM;
    if (cellPx > pictureLimits.cellPx.least && !fits(widthMm, heightMm)) continue;
    const x = MARGIN_MM + (inside - chartWidth) / 2;
    const y = MARGIN_MM + TITLE_MM + cordNumbersMm();
    const cells = cellInks(design.yarns, ink, ink === 'grey' ? touchingPairs(chart) : []);
    const across = { first: 0, end: chart.columns, repeated: 0 };
    const down = { first: 0, end: chart.rows, repeated: 0 };
    const alt = words.alt(spanOf(down), spanOf(across));
    const title = fitText(printer.printable(design.title, 'serif-bold'), 'serif-bold', 7, inside);
    return {
      widthMm,
      heightMm,
      title: printer.printable(design.title),
      items: [
        { kind: 'box', x: 0, y: 0, width: widthMm, height: heightMm, fill: inks.paper },
        label(MARGIN_MM, MARGIN_MM + 6.5, title, { face: 'serif-bold', sizeMm: 7 }),
        ...drawChartBlock({ chart, x, y, cellWidth, cellHeight, across, down, cellInks: cells, alt }),
        ...drawKey(entries, key, {
          x: MARGIN_MM,
          y: keyY,
          cellInks: cells,
          words,
          ...(colors && { colors }),
        }),
      ],
    };
  }
}

function fits(widthMm: number, heightMm: number): boolean {
  const width = widthMm * PICTURE_PX_PER_MM;
  const height = heightMm * PICTURE_PX_PER_MM;
  return width * height <= pictureLimits.pixels && Math.max(width, height) <= pictureLimits.sidePx;
}
