/** The tick sheet: a large box for each row, ten to a line, with what is tied at the end of each. */
import { goesRight } from '../chart/chart.ts';
import { tyingOrder } from '../tying/steps/tying-order.ts';
import { newFlow, paragraph } from './flow.ts';
import { label } from './label.ts';
import type { Item } from './page.ts';
import type { Draft } from './page-foot.ts';
import type { PatternContext } from './pattern-input.ts';
import { inks, sizes } from './style.ts';
import { ticksWords } from './words/ticks-words.ts';

const PER_LINE = 10;
const BOX_MM = 10;
const GAP_MM = 2.4;
const LINE_MM = 13;

export function ticksPages(context: PatternContext): Draft[] {
  const { chart, plan, materials, copy, figures } = context;
  const words = ticksWords[copy.language];
  const flow = newFlow(context, words.title);
  paragraph(flow, words.introduction, { color: inks.soft, sizeMm: sizes.note, after: 4 });
  const { knotsBefore } = tyingOrder(chart, plan);
  const all = Math.max(1, knotsBefore.at(-1)!);
  for (let first = 0; first < chart.rows; first += PER_LINE) {
    flow.need(LINE_MM);
    const end = Math.min(first + PER_LINE, chart.rows);
    for (let row = first; row < end; row++) {
      const x = flow.area.x + (row - first) * (BOX_MM + GAP_MM);
      flow.put(...box(x, flow.y, row, goesRight(chart.startCorner, row)));
    }
    const share = knotsBefore[end]! / all;
    const done = words.done(Math.round(share * 100), figures.time(materials.totals.seconds * share));
    flow.put(
      label(flow.area.x + PER_LINE * (BOX_MM + GAP_MM) + 2, flow.y + BOX_MM * 0.6, done, {
        sizeMm: sizes.note,
        color: inks.soft,
      }),
    );
    flow.y += LINE_MM;
  }
  return flow.drafts();
}

/** The row's number stands in the corner where the row begins. */
function box(x: number, y: number, row: number, right: boolean): Item[] {
  const inset = 1.3;
  return [
    { kind: 'box', x, y, width: BOX_MM, height: BOX_MM, radius: 1, stroke: inks.soft, strokeMm: 0.25 },
    label(right ? x + inset : x + BOX_MM - inset, y + inset + sizes.small * 0.72, String(row + 1), {
      sizeMm: sizes.small,
      color: inks.soft,
      align: right ? 'left' : 'right',
      role: 'paragraph',
    }),
  ];
}
