/**
 * The card that goes with a hanging for as long as it hangs: its name, who made it, and how it is kept. Four to a sheet. How it is
 * kept is told in the designer's own words where there are some, as far as the card has room for whole sentences of them; that
 * fibre burns and cords strangle is told on every card.
 */
import { inQuotes } from '../flow/in-quotes.ts';
import type { Draft } from '../flow/page-foot.ts';
import type { Area } from '../page/papers.ts';
import { inks, ruleMm, sizes } from '../page/style.ts';
import type { PatternContext } from '../pattern-input.ts';
import type { Caution } from '../words/care-words.ts';
import { hangingWords } from '../words/hanging-words.ts';
import { quarter, quarters } from './cards.ts';
import { type Column, newColumn } from './column.ts';
import { howItIsKept } from './how-it-is-kept.ts';
import { makerOf } from './maker.ts';

export function careCard(context: PatternContext): Draft[] {
  const title = hangingWords[context.copy.language].titles['care-card'];
  const { kept } = careOnCard(context);
  const items = quarters(context.sheet, (inner) => card(context, inner, kept).items);
  return [{ sheet: context.sheet, title, items, withoutFoot: true }];
}

/** A sentence where the designer's own words are more than the card has room for. */
export function careCardNotices(context: PatternContext): string[] {
  const { kept, isWhole } = careOnCard(context);
  if (isWhole) return [];
  const last = kept.at(-1);
  return [
    `The care card has no room for all of the text on care: ${
      last ? `it goes as far as ${inQuotes(lastSentence(last.text))}` : 'none of it stands there'
    }. Put what matters most first, in short sentences.`,
  ];
}

interface CareOnCard {
  readonly kept: readonly Caution[];
  readonly isWhole: boolean;
}

function careOnCard(context: PatternContext): CareOnCard {
  const area = quarter(context.sheet);
  const hasRoom = (entries: readonly Caution[]) => card(context, area, entries).y <= area.y + area.height;
  const kept: Caution[] = [];
  for (const entry of howItIsKept(context)) {
    const fitting = shortened(entry).find((each) => hasRoom([...kept, each]));
    if (fitting) kept.push(fitting);
    if (fitting?.text !== entry.text) return { kept, isWhole: false };
  }
  return { kept, isWhole: true };
}

/** The entry, then the same with one sentence less each time. */
function shortened({ title, text }: Caution): Caution[] {
  const sentences = sentencesOf(text);
  return sentences.map((_, i) => ({ title, text: sentences.slice(0, sentences.length - i).join(' ') }));
}

/** A sentence ends before a capital letter; what ends in a single letter, as 'z. B.', is none. */
function sentencesOf(text: string): string[] {
  return text.split(/(?<=[\p{L}\p{N})%]{2}[.!?…][”’“»)]?) +(?=[„“‘«(]?\p{Lu})/u);
}

function lastSentence(text: string): string {
  return sentencesOf(text).at(-1) ?? text;
}

function card(context: PatternContext, area: Area, kept: readonly Caution[]): Column {
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
  for (const { title, text } of [...kept, ...words.care.always]) {
    column.rule(inks.hair, ruleMm.thin);
    column.skip(0.9);
    column.text(title, { face: 'sans-bold', sizeMm: sizes.small, color: accent, lines: 2 });
    column.text(text, { sizeMm: sizes.small, lines: Number.POSITIVE_INFINITY });
    column.skip(1.3);
  }
  column.rule(inks.hair, ruleMm.thin);
  column.skip(0.9);
  const maker = makerOf(context);
  if (maker.name) column.text(words.madeBy(maker.name), { sizeMm: sizes.small, lines: 2 });
  column.text(maker.contact.join(' · '), { sizeMm: sizes.small, color: inks.soft, lines: 4 });
  return column;
}
