/** The rows in words, with a box to tick for each: in whole words, or as short as they can be. */

import type { YarnId } from '../../design/codes.ts';
import { repeatedCounts } from '../../tying/rows/repeated-counts.ts';
import {
  compactRowText,
  type WrittenRow,
  writtenRowPieces,
  writtenRows,
} from '../../tying/rows/written-rows.ts';
import { drawKey, type KeyEntry, keyEntries, layOutKey } from '../chart-pages/key.ts';
import { printScales } from '../chart-pages/print-scale.ts';
import { rowNames } from '../chart-pages/row-names.ts';
import { entriesInColumns } from '../flow/entries-in-columns.ts';
import type { Entry, EntryText } from '../flow/entry-lines.ts';
import { type Flow, newFlow, paragraph } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { inks } from '../page/style.ts';
import type { PageNumbers, PatternContext } from '../pattern-input.ts';
import { chartWords } from '../words/chart-words.ts';
import { rowsWords } from '../words/rows-words.ts';

const COLUMNS = { long: 2, compact: 4 } as const;

export function rowsPages(context: PatternContext, at: PageNumbers): Draft[] {
  const { chart, copy, design } = context;
  const words = rowsWords[copy.language];
  const flow = newFlow(context, words.title);
  const names = rowNames(context);
  const rows = writtenRows(chart, names.byId);
  const isLong = copy.rowsForm === 'long';
  const introduction = isLong
    ? [words.lift, ...(names.shortened ? [words.shortened] : [])]
    : [words.compact, ...(rows.some(({ parts }) => repeatedCounts(parts)) ? [words.repeated] : [])];
  paragraph(flow, introduction.join(' '), {
    color: inks.soft,
    sizeMm: flow.sizes.note,
    after: flow.sizes.body,
  });
  if (!isLong) key(flow, context, at.first('materials'));
  const symbols = new Map(design.yarns.map(({ id, symbol }) => [id, symbol]));
  const entries = rows.map((row) => (isLong ? longEntry(row, context) : compactEntry(row, symbols)));
  const tops = { first: flow.y, later: flow.laterTop };
  const pages = { area: flow.area, tops, mostColumns: COLUMNS[copy.rowsForm], bodyMm: flow.sizes.body };
  entriesInColumns(entries, pages).forEach((items, i) => {
    if (i > 0) flow.nextPage();
    flow.put(...items);
  });
  return flow.drafts();
}

/** Rows below a key want at least so much of its page. */
const LEAST_ROWS_MM = 30;

/** Whose symbol is whose, over as many pages as it takes; bare cells have a sign of their own in these rows. */
function key(
  flow: Flow,
  { design, chart, printer, copy, cellInks }: PatternContext,
  namesPage: number | null,
): void {
  const words = chartWords[copy.language];
  const yarns = design.yarns.map(({ id, name }) => ({ id, name: printer.printable(name) }));
  const { key: scale } = printScales[copy.cells];
  const { area } = flow;
  const room = () => area.y + area.height - flow.y;
  const layOut = (entries: readonly KeyEntry[]) =>
    layOutKey(entries, area.width, { scale, words, withHere: false, withColors: false });
  let rest = keyEntries(yarns, chart, words).filter(({ name }) => name !== words.bare);
  while (rest.length > 0) {
    const { columns } = layOut(rest);
    const lines = Math.max(1, Math.floor((room() - scale.headingMm) / scale.lineMm));
    const shown = rest.slice(0, lines * columns);
    const layout = layOut(shown);
    flow.put(...drawKey(shown, layout, { x: area.x, y: flow.y, cellInks, words, namesPage }));
    flow.y += layout.height + 4;
    rest = rest.slice(shown.length);
    if (rest.length > 0 || room() < LEAST_ROWS_MM) flow.nextPage();
  }
}

function longEntry(row: WrittenRow, { copy }: PatternContext): Entry {
  const [head, ...pieces] = writtenRowPieces(row, rowsWords[copy.language], '–');
  const lifts = Math.min(row.lifts.length, pieces.length);
  const parts =
    lifts > MOST_LIFTS_TOGETHER
      ? pieces
      : [...pieces.slice(0, pieces.length - lifts), ...(lifts > 0 ? [pieces.slice(-lifts).join(' ')] : [])];
  return { head: head!, parts: parts.map((text) => [{ text }]), endsGroup: endsGroup(row) };
}

/** So few cords to lift stand on one line, so that no last one is left alone and overlooked below. */
const MOST_LIFTS_TOGETHER = 8;

/** The yarns by their symbols, as on the chart. */
function compactEntry(row: WrittenRow, symbols: ReadonlyMap<YarnId, string>): Entry {
  const [number, , ...counts] = compactRowText(row, (yarn) => symbols.get(yarn)!).split(' ');
  const arrow = row.goesRight ? 'right' : 'left';
  return { head: number!, arrow, parts: counts.map(compactPart), endsGroup: endsGroup(row) };
}

/** '5×A', '2×–', '9×A;', at either end of a repeat '4×(2×A' and '2×B);', or a cord to lift. */
function compactPart(word: string): EntryText[] {
  const counted = /^(.*×)(.)(.*)$/.exec(word);
  if (!counted) return [{ text: word }];
  const [, count, symbol, rest] = counted;
  const face = symbol === '–' ? 'sans' : 'symbols';
  return [{ text: count! }, { text: symbol!, face }, { text: rest! }];
}

/** Every ten rows, as the rules of the chart. */
function endsGroup({ row }: WrittenRow): boolean {
  return row % 10 === 0;
}
