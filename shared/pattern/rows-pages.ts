/** The rows in words, with a box to tick for each: in whole words, or as short as they can be. */

import type { YarnId } from '../design/codes.ts';
import { compactRowText, type WrittenRow, writtenRows, writtenRowText } from '../tying/written-rows.ts';
import { type Entry, type EntryText, entriesInColumns } from './entries-in-columns.ts';
import { newFlow, paragraph } from './flow.ts';
import type { Draft } from './page-foot.ts';
import type { PatternContext } from './pattern-input.ts';
import { inks, sizes } from './style.ts';
import { rowsWords } from './words/rows-words.ts';

/** Longer names would fill the rows with themselves: they are shortened, and the page says so. */
const NAME_CHARS = 28;
const COLUMNS = { long: 2, compact: 4 } as const;

export function rowsPages(context: PatternContext): Draft[] {
  const { chart, copy } = context;
  const words = rowsWords[copy.language];
  const isLong = copy.rowsForm === 'long';
  const flow = newFlow(context, words.title);
  const names = rowNames(context);
  const introduction = isLong ? [words.lift, ...(names.shortened ? [words.shortened] : [])] : [words.compact];
  paragraph(flow, introduction.join(' '), { color: inks.soft, sizeMm: sizes.note, after: 3 });
  const rows = writtenRows(chart, names.byId);
  const entries = rows.map((row) => (isLong ? longEntry(row, context) : compactEntry(row, context)));
  const tops = { first: flow.y, later: flow.laterTop };
  entriesInColumns(entries, flow.area, tops, COLUMNS[copy.rowsForm]).forEach((items, i) => {
    if (i > 0) flow.nextPage();
    flow.put(...items);
  });
  return flow.drafts();
}

function longEntry(row: WrittenRow, { copy }: PatternContext): Entry {
  const text = writtenRowText(row, rowsWords[copy.language]);
  const end = text.indexOf(':') + 1;
  const parts = text
    .slice(end)
    .match(/[^,;]*[,;]?/g)!
    .map((part) => part.trim())
    .filter((part) => part !== '');
  return {
    head: text.slice(0, end),
    parts: parts.map((each) => [{ text: each }]),
    endsGroup: endsGroup(row),
  };
}

/** The yarns by their symbols, as on the chart. */
function compactEntry(row: WrittenRow, { design }: PatternContext): Entry {
  const symbols = new Map(design.yarns.map(({ id, symbol }) => [id, symbol]));
  const [number, way, ...counts] = compactRowText(row, (yarn) => symbols.get(yarn)!).split(' ');
  return { head: `${number} ${way}`, parts: counts.map(compactPart), endsGroup: endsGroup(row) };
}

/** '5×A', '2×–', '9×A;' or a cord to lift. */
function compactPart(word: string): EntryText[] {
  const [count, symbol = ''] = word.split('×');
  if (symbol === '') return [{ text: word }];
  const face = symbol.startsWith('–') ? 'sans' : 'symbols';
  return [{ text: `${count}×` }, { text: symbol[0]!, face }, { text: symbol.slice(1) }];
}

/** Every ten rows, as the rules of the chart. */
function endsGroup({ row }: WrittenRow): boolean {
  return row % 10 === 0;
}

interface RowNames {
  readonly byId: ReadonlyMap<YarnId, { readonly name: string }>;
  readonly shortened: boolean;
}

/** Names as the rows print them. Shortened ones end in their symbol's letter, so that none are alike. */
function rowNames({ design, printer }: PatternContext): RowNames {
  let shortened = false;
  const byId = new Map<YarnId, { readonly name: string }>();
  for (const { id, name, symbol } of design.yarns) {
    const letters = [...printer.printable(name)];
    if (letters.length > NAME_CHARS) shortened = true;
    const short = `${letters
      .slice(0, NAME_CHARS - 4)
      .join('')
      .trimEnd()}… ${symbol}`;
    byId.set(id, { name: letters.length > NAME_CHARS ? short : letters.join('') });
  }
  return { byId, shortened };
}
