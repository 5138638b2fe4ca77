/** The card that goes with a hanging for as long as it hangs: its name, who made it, and how it is kept. Four to a sheet. */
import type { Item } from '../page.ts';
import type { Draft } from '../page-foot.ts';
import type { Area } from '../papers.ts';
import type { PatternContext } from '../pattern-input.ts';
import { inks, ruleMm, sizes } from '../style.ts';
import { hangingWords } from '../words/hanging-words.ts';
import { quarters } from './cards.ts';
import { newColumn } from './column.ts';
import { makerOf } from './maker.ts';

export function careCard(context: PatternContext): Draft[] {
  const title = hangingWords[context.copy.language].titles['care-card'];
  const items = quarters(context.sheet, (inner) => card(context, inner));
  return [{ sheet: context.sheet, title, items, withoutFoot: true }];
}

function card(context: PatternContext, area: Area): Item[] {
  const { design, printer, copy, accent } = context;
  const words = hangingWords[copy.language];
  const column = newColumn(area);
  column.skip(0.5);
  column.rule(accent, 1);
  column.skip(2.6);
  column.text(printer.printable(design.title, 'serif-bold'), {
    face: 'serif-bold',
    sizeMm: sizes.heading,
    lines: 2,
  });
  column.text(words.handmade, { color: inks.soft });
  column.skip(2.4);
  for (const [head, text] of words.care.lines) {
    column.rule(inks.hair, ruleMm.thin);
    column.skip(0.9);
    column.text(head, { face: 'sans-bold', sizeMm: sizes.small, color: accent });
    column.text(text, { sizeMm: sizes.small, lines: 3 });
    column.skip(1.3);
  }
  column.rule(inks.hair, ruleMm.thin);
  column.skip(0.9);
  const maker = makerOf(context);
  if (maker.name) column.text(words.madeBy(maker.name), { sizeMm: sizes.small, lines: 2 });
  column.text(maker.contact.join(' · '), { sizeMm: sizes.small, color: inks.soft, lines: 4 });
  return column.items;
}
