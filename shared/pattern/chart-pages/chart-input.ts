/** What the chart's pages are made from, out of all that a pattern's pages share. */
import { codeOf } from '../../design/codes.ts';
import { touchingPairs } from '../../yarn/touching.ts';
import type { PageNumbers, PatternContext } from '../pattern-input.ts';
import { chartWords } from '../words/chart-words.ts';
import { cellInks } from './cell-inks.ts';
import type { ChartInput } from './chart-layout.ts';
import { framedRepeats } from './framed-repeats.ts';
import { keyEntries } from './key.ts';
import { hasLifts } from './lift-marks.ts';
import { printScales } from './print-scale.ts';
import { printedAspect } from './printed-aspect.ts';

export type ChartPart = 'chart' | 'chart-symbols';

export function chartInput(context: PatternContext, at: PageNumbers, part: ChartPart): ChartInput {
  const { design, chart, materials, sheet, printer, copy, accent } = context;
  const words = chartWords[copy.language];
  const yarns = design.yarns.map(({ id, name }) => ({ id, name: printer.printable(name) }));
  const isInSymbols = part === 'chart-symbols' || copy.ink === 'symbols';
  return {
    chart,
    aspect: printedAspect(materials.gauge),
    sheet,
    entries: [
      ...keyEntries(yarns, chart, words),
      ...(hasLifts(chart) ? [{ code: 'lift', name: words.lift, count: 0 } as const] : []),
    ],
    repeats: framedRepeats(chart),
    cellInks: part === 'chart-symbols' ? cellInks(design.yarns, 'symbols') : context.cellInks,
    mapInks: copy.ink === 'symbols' ? cellInks(design.yarns, 'grey', touchingPairs(chart)) : context.cellInks,
    scale: printScales[copy.cells],
    accent,
    words,
    namesPage: at.first('materials'),
    title: part === 'chart-symbols' ? words.titleInSymbols : words.title,
    ...(isInSymbols && {
      colors: Object.fromEntries(design.yarns.map(({ id, color }) => [codeOf(id), color])),
    }),
    ...(copy.rowsBeside && {
      beside: {
        symbols: new Map(design.yarns.map(({ id, symbol }) => [id, symbol])),
        words,
        rowsPage: at.first('rows'),
      },
    }),
  };
}
