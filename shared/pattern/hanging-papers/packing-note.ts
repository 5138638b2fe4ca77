/** The note in the parcel: what is in it, from whom and to whom, how large and heavy it is, and how it is unpacked and hung up. */
import { type Flow, heading, newFlow, paragraph } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { label } from '../page/label.ts';
import { inks, ruleMm, sizes } from '../page/style.ts';
import type { PatternContext } from '../pattern-input.ts';
import { careWords } from '../words/care-words.ts';
import { hangingWords } from '../words/hanging-words.ts';
import { newColumn } from './column.ts';
import { howItIsKept } from './how-it-is-kept.ts';
import { makerOf } from './maker.ts';

const GAP_MM = 10;
const ADDRESS_MM = 36;

export function packingNote(context: PatternContext): Draft[] {
  const { design, printer, copy, materials, figures } = context;
  const words = hangingWords[copy.language];
  const care = careWords[copy.language];
  const flow = newFlow(context, words.titles['packing-note']);
  paragraph(flow, printer.printable(design.title, 'serif-bold'), {
    face: 'serif-bold',
    sizeMm: sizes.heading,
    after: 3,
  });
  addresses(flow, context);
  const { dowel, finished, totals } = materials;
  heading(flow, words.packing.what);
  const dowelText = words.packing.dowel(figures.thickness(dowel.diameterMm));
  paragraph(flow, `${words.packing.hanging}, ${dowelText}`, { after: 0.6 });
  paragraph(flow, words.packing.careCard);
  heading(flow, words.packing.figures);
  const size = (heightMm: number) => `${figures.length(finished.widthMm)} × ${figures.length(heightMm)}`;
  const mass = figures.enough.mass(totals.massG);
  table(flow, [
    [words.packing.picture, size(finished.knottedHeightMm)],
    [words.packing.whole, size(finished.heightWithFringeMm)],
    [words.packing.mass, mass],
  ]);
  paragraph(flow, words.packing.massNote, { sizeMm: sizes.note, color: inks.soft });
  heading(flow, words.packing.unpacking);
  const width = flow.area.width * 0.8;
  paragraph(flow, words.packing.unpackingText, { width });
  paragraph(flow, care.hangingUp(mass).text, { width });
  heading(flow, words.care.head);
  for (const { title, text } of [...howItIsKept(context), ...words.care.always])
    paragraph(flow, title ? `${title}: ${text}` : text, { width, after: 0.8 });
  return flow.drafts();
}

/** From whom, and lines to write to whom. */
function addresses(flow: Flow, context: PatternContext): void {
  const words = hangingWords[context.copy.language].packing;
  const { x, width } = flow.area;
  const half = (width - GAP_MM) / 2;
  const { name, contact } = makerOf(context);
  const from = newColumn({ x, y: flow.y, width: half, height: ADDRESS_MM });
  from.text(words.from, { sizeMm: sizes.small, color: inks.soft });
  from.skip(0.8);
  from.text(name, { face: 'sans-bold', sizeMm: sizes.body, lines: 2 });
  for (const line of contact) from.text(line, { sizeMm: sizes.body });
  const to = newColumn({ x: x + half + GAP_MM, y: flow.y, width: half, height: ADDRESS_MM });
  to.text(words.to, { sizeMm: sizes.small, color: inks.soft });
  to.skip(0.8);
  for (let line = 0; line < 4; line++) {
    to.skip(7);
    to.rule(inks.soft, ruleMm.thin);
  }
  flow.put(...from.items, ...to.items);
  flow.y += ADDRESS_MM;
}

/** Names with their figures beside them, a hairline below each. */
function table(flow: Flow, lines: readonly (readonly [name: string, value: string])[]): void {
  const { x, width } = flow.area;
  for (const [name, value] of lines) {
    flow.need(6.4);
    flow.put(
      label(x, flow.y + 4.2, name, { role: 'paragraph' }),
      label(x + width * 0.4, flow.y + 4.2, value, { face: 'sans-bold' }),
      {
        kind: 'rule',
        x1: x,
        y1: flow.y + 6.2,
        x2: x + width * 0.8,
        y2: flow.y + 6.2,
        widthMm: ruleMm.thin,
        color: inks.hair,
      },
    );
    flow.y += 6.4;
  }
  flow.y += 1.4;
}
