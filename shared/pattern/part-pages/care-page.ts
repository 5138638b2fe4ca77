/** Cautions, care, and what selling the finished piece brings with it: in two columns, a short paragraph each. */

import { wrapText } from '../faces/measure-text.ts';
import { textOf } from '../first-texts.ts';
import { type Flow, heading, newFlow } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { label } from '../page/label.ts';
import type { Item } from '../page/page.ts';
import { inks, LEADING, ruleMm, sizes, type TypeScale } from '../page/style.ts';
import type { PatternContext } from '../pattern-input.ts';
import { type Caution, careWords } from '../words/care-words.ts';
import { careEntries } from './care-entries.ts';

const GAP_MM = 10;

export function carePage(context: PatternContext): Draft[] {
  const { materials, figures, copy } = context;
  const words = careWords[copy.language];
  const flow = newFlow(context, words.title);
  const mass = figures.enough.mass(materials.totals.massG);
  heading(flow, words.takeCare);
  columns(flow, [...words.cautions, words.hangingUp(mass), ...entries(context, 'cautions')]);
  const care = entries(context, 'care');
  if (care.length > 0) heading(flow, words.careHead);
  columns(flow, care);
  heading(flow, words.selling.title);
  columns(flow, [{ title: '', text: words.selling.text }], 1);
  return flow.drafts();
}

function entries(context: PatternContext, name: 'care' | 'cautions'): Caution[] {
  return careEntries(textOf(context, name), context.printer);
}

/** One line of them after the other, each below a hairline. */
function columns(flow: Flow, all: readonly Caution[], most = 2): void {
  const count = flow.sizes === sizes ? most : 1;
  const width = (flow.area.width - GAP_MM * (count - 1)) / count;
  for (let i = 0; i < all.length; i += count) {
    const texts = all
      .slice(i, i + count)
      .map((each) => ({ ...each, lines: linesIn(each, width, flow.sizes) }));
    const height = Math.max(...texts.map(({ title, lines }) => heightOf(title, lines.length, flow.sizes)));
    flow.need(height);
    texts.forEach(({ title, lines }, column) => {
      flow.put(
        ...one(title, lines, { x: flow.area.x + column * (width + GAP_MM), y: flow.y, width }, flow.sizes),
      );
    });
    flow.y += height;
  }
}

function linesIn({ text }: Caution, width: number, { body }: TypeScale): string[] {
  return wrapText(text, 'sans', body, width);
}

function heightOf(title: string, lines: number, { body }: TypeScale): number {
  return 2.6 + (lines + (title ? 1 : 0)) * body * LEADING + 4.4;
}

function one(
  title: string,
  lines: readonly string[],
  { x, y, width }: { readonly x: number; readonly y: number; readonly width: number },
  { body: sizeMm }: TypeScale,
): Item[] {
  const lineMm = sizeMm * LEADING;
  const top = y + 1.6 + (title ? lineMm : 0);
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
    ...(title
      ? [label(x, y + 1.2 + lineMm * 0.9, title, { face: 'sans-bold', sizeMm, role: 'paragraph' })]
      : []),
    ...lines.map((line, i) =>
      label(x, top + (i + 1) * lineMm, line, { sizeMm, ...(i === 0 && { role: 'paragraph' }) }),
    ),
  ];
}
