/** Cautions, care, and what selling the finished piece brings with it: in two columns, a short paragraph each. */
import { wrapText } from './faces/measure-text.ts';
import { type Flow, heading, newFlow } from './flow.ts';
import { label } from './label.ts';
import type { Item } from './page.ts';
import type { Draft } from './page-foot.ts';
import type { PatternContext } from './pattern-input.ts';
import { inks, LEADING, ruleMm, sizes } from './style.ts';
import { type Caution, careWords } from './words/care-words.ts';

const GAP_MM = 10;

export function carePage(context: PatternContext): Draft[] {
  const { materials, figures, copy } = context;
  const words = careWords[copy.language];
  const flow = newFlow(context, words.title);
  const mass = figures.enough.mass(materials.totals.massG);
  heading(flow, words.takeCare);
  columns(flow, [...words.cautions, words.hangingUp(mass)]);
  heading(flow, words.careHead);
  columns(flow, words.care);
  heading(flow, words.selling.title);
  columns(flow, [{ title: '', text: words.selling.text }], 1);
  return flow.drafts();
}

/** One line of them after the other, each below a hairline. */
function columns(flow: Flow, all: readonly Caution[], count = 2): void {
  const width = (flow.area.width - GAP_MM * (count - 1)) / count;
  for (let i = 0; i < all.length; i += count) {
    const texts = all.slice(i, i + count).map((each) => ({ ...each, lines: linesIn(each, width) }));
    const height = Math.max(...texts.map(({ title, lines }) => heightOf(title, lines.length)));
    flow.need(height);
    texts.forEach(({ title, lines }, column) => {
      flow.put(...one(title, lines, flow.area.x + column * (width + GAP_MM), flow.y, width));
    });
    flow.y += height;
  }
}

const TITLE_MM = 4.8;

function linesIn({ text }: Caution, width: number): string[] {
  return wrapText(text, 'sans', sizes.body, width);
}

function heightOf(title: string, lines: number): number {
  return 2.6 + (title ? TITLE_MM : 0) + lines * sizes.body * LEADING + 4.4;
}

function one(title: string, lines: readonly string[], x: number, y: number, width: number): Item[] {
  const top = y + 1.6 + (title ? TITLE_MM : 0);
  return [
    {
      kind: 'rule',
      x1: x,
      y1: y + 0.4,
      x2: x + width,
      y2: y + 0.4,
      widthMm: ruleMm.thin,
      color: inks.hair,
    },
    ...(title ? [label(x, y + 5.2, title, { face: 'sans-bold', role: 'paragraph' })] : []),
    ...lines.map((line, i) =>
      label(x, top + (i + 1) * sizes.body * LEADING, line, i === 0 ? { role: 'paragraph' } : {}),
    ),
  ];
}
