/** The last page: cautions, care, and what selling the finished piece brings with it. */
import { formatMass } from '../units/mass.ts';
import { type Caution, care, cautions, hangingUp, selling } from './cautions.ts';
import { type Flow, heading, newFlow, paragraph } from './flow.ts';
import type { Draft } from './page-foot.ts';
import type { PatternContext } from './pattern-input.ts';

export function carePage(context: PatternContext): Draft[] {
  const { materials, units } = context;
  const flow = newFlow(context, 'Cautions and care');
  heading(flow, 'Take care');
  list(flow, [...cautions, hangingUp(formatMass(materials.totals.massG, units, { enough: true }))]);
  heading(flow, 'Care');
  list(flow, care);
  heading(flow, selling.title);
  paragraph(flow, selling.text, { width: flow.area.width * 0.86 });
  return flow.drafts();
}

function list(flow: Flow, all: readonly Caution[]): void {
  for (const { title, text } of all) {
    flow.need(16);
    paragraph(flow, title, { face: 'sans-bold', after: 0 });
    paragraph(flow, text, { width: flow.area.width * 0.86, after: 3 });
  }
}
