/** How to read the chart and tie from it: the order of work in words. */

import { formatLength } from '../units/length.ts';
import { counted, grouped } from './counted.ts';
import { type Flow, heading, newFlow, paragraph } from './flow.ts';
import type { Draft } from './page-foot.ts';
import type { PatternContext } from './pattern-input.ts';
import { sizes } from './style.ts';

export function readingPage(context: PatternContext, chartPages: number): Draft[] {
  const flow = newFlow(context, 'How to read the chart and tie it');
  heading(flow, 'The chart');
  list(flow, aboutTheChart(context, chartPages));
  heading(flow, 'Order of work');
  list(flow, orderOfWork(context));
  heading(flow, 'The knot');
  paragraph(
    flow,
    'Every cell is one vertical double half hitch: the yarn lies behind the cord, comes round its front and through, twice, and is drawn tight each time. Two turns one above the other make one knot. The yarn then lies ready behind the next cord. The next pages show it step by step.',
    { width: flow.area.width * 0.9 },
  );
  return flow.drafts();
}

function aboutTheChart({ chart, materials }: PatternContext, chartPages: number): string[] {
  const left = chart.startCorner === 'top-left';
  const [first, second] = left ? ['left to right', 'right to left'] : ['right to left', 'left to right'];
  return [
    'One cell is one knot around one cord. One column is one cord: cord 1 is the left one, seen from the front. Row 1 is the top one, right under the dowel.',
    `Row 1 goes ${first}, row 2 ${second}, and so on in turn, without turning the work. Each row's number and arrow stand on the side where that row starts.`,
    'Thick lines follow every tenth row and cord, thinner ones every fifth, counted from the first. A line of numbers counts the cords above and below.',
    ...(materials.totals.bareCells > 0
      ? ['A white cell with a small open diamond is bare: no knot, the cord shows. Lay no yarn behind it.']
      : []),
    ...(chartPages > 1
      ? [
          `The chart goes on over ${chartPages} pages, which share two rows or cords with their neighbours. The later page shows them pale and hatched: they stand on the page before as well. The marks in red say which page joins where.`,
        ]
      : []),
    'The written rows tell the same in words: how many knots of which yarn, and in brackets from which cord to which. Tick each row when it is tied.',
  ];
}

function orderOfWork({ materials, units, chart }: PatternContext): string[] {
  const { cords, tying, totals } = materials;
  const side = chart.startCorner === 'top-left' ? 'left' : 'right';
  return [
    `Cut ${counted(cords.cutCords, 'cord')}. Fold each in half, lay the fold over the dowel and draw the ends through it: a lark's head. Mount them side by side, in the order of the cut list.`,
    `Cut the yarn in pieces of ${formatLength(tying.workingLengthMm, units, { enough: true })}. Start row 1 at the ${side} edge, close under the heads, and leave a tail of ${formatLength(tying.tailMm, units, { enough: true })} at the back, pointing back to where the row came from.`,
    'Before a row is tied, lift the cords that its line names after ‘lift’: the first cord of each new yarn. You meet them where the yarn in hand changes.',
    'At a change, lay the yarn in hand down behind the work. Attach the new one, or pick it up again if it hangs close by and carry it behind the cords, not too tight.',
    'When a piece runs out, go on with a fresh one at the next cord, never inside a knot. At the edge, step straight down to the next row.',
    `When the last row is tied, knot neighbouring loose ends together twice and trim them, or only trim them: there are ${grouped(totals.looseEnds)}. Comb and trim the fringe last.`,
  ];
}

function list(flow: Flow, sentences: readonly string[]): void {
  sentences.forEach((sentence, i) => {
    paragraph(flow, sentence, {
      indent: 8,
      mark: String(i + 1),
      width: flow.area.width * 0.9,
      sizeMm: sizes.body,
      after: 1.8,
    });
  });
}
