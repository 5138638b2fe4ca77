/**
 * The rows in words, as a pattern prints them beside the chart:
 * 'Row 8, right to left: 5 Moss (16-12), 2 Bark (11-10), 9 Moss (9-1); lift 11, 9'.
 *
 * A lift mark is the first cord of each new yarn in the row, in tying order: the maker lifts those cords out of the
 * way before the row is tied, and meets them where the yarn in hand changes. The yarn that begins at the row's own
 * edge needs none. A yarn that begins after bare cells is a new one, even the same as before them: there too the
 * maker stops and begins. Where the bare begins, nothing is lifted: that cord is not tied.
 */
import { type Chart, goesRight } from '../../chart/chart.ts';
import { BARE, type YarnId, yarnIdOf } from '../../design/codes.ts';
import type { Yarn } from '../../design/schema.ts';
import { repeatedCounts } from './repeated-counts.ts';

/** Cells of one yarn, or bare ones, in tying order: from cord `from` to cord `to`, both from 1. */
export interface WrittenPart {
  /** Null where the cells are bare. */
  readonly yarn: YarnId | null;
  /** The yarn's name, or 'bare'. */
  readonly name: string;
  readonly count: number;
  readonly from: number;
  readonly to: number;
}

export interface WrittenRow {
  /** From 1. */
  readonly row: number;
  readonly goesRight: boolean;
  /** Their counts add up to the cords. */
  readonly parts: readonly WrittenPart[];
  /** Cords to lift before the row is tied, from 1, in tying order. */
  readonly lifts: readonly number[];
}

/** All rows, row 1 first. `yarnsById` holds at least the yarns of the chart. */
export function writtenRows(chart: Chart, yarnsById: ReadonlyMap<YarnId, Pick<Yarn, 'name'>>): WrittenRow[] {
  return Array.from({ length: chart.rows }, (_, row) => writtenRow(chart, row, yarnsById));
}

/** One row, counted from 0. */
export function writtenRow(
  chart: Chart,
  row: number,
  yarnsById: ReadonlyMap<YarnId, Pick<Yarn, 'name'>>,
): WrittenRow {
  const parts = partsOf(chart, row, yarnsById);
  return {
    row: row + 1,
    goesRight: goesRight(chart.startCorner, row),
    parts,
    lifts: parts.slice(1).flatMap(({ yarn, from }) => (yarn === null ? [] : [from])),
  };
}

/** What a language calls what stands in a row. */
export interface RowWords {
  /** 'Row 8, right to left'. */
  readonly heading: (row: number, goesRight: boolean) => string;
  readonly allBare: string;
  readonly bare: string;
  /** Before the first cord that is lifted; the others follow it. */
  readonly lifted: (cord: string) => string;
}

export const englishRows: RowWords = {
  heading: (row, goesRight) => `Row ${row}, ${goesRight ? 'left to right' : 'right to left'}`,
  allBare: 'all bare, nothing to tie',
  bare: 'bare',
  lifted: (cord) => `lift ${cord}`,
};

/** The row as one line, without a full stop. */
export function writtenRowText(row: WrittenRow, words: RowWords = englishRows): string {
  return writtenRowPieces(row, words).join(' ');
}

/**
 * The row in pieces that are never parted at the end of a line: its heading, each count with its yarn and cords, and each cord to
 * lift. A space stands between two of them. `to` stands between the first and the last cord of a count: in print a dash.
 */
export function writtenRowPieces(
  { row, goesRight, parts, lifts }: WrittenRow,
  words: RowWords,
  to: '-' | '–' = '-',
): string[] {
  const heading = `${words.heading(row, goesRight)}:`;
  if (parts.every(({ yarn }) => yarn === null)) return [heading, words.allBare];
  const counts = parts.map(
    (part) => `${part.count} ${part.yarn === null ? words.bare : part.name} (${cordsText(part, to)})`,
  );
  const cords = lifts.map((cord, i) => (i === 0 ? words.lifted(String(cord)) : String(cord)));
  return [heading, ...listed(counts, cords.length > 0 ? ';' : ''), ...listed(cords, '')];
}

/** Each with the comma that follows it, the last one with what follows the list. */
function listed(words: readonly string[], end: string): string[] {
  return words.map((word, i) => `${word}${i < words.length - 1 ? ',' : end}`);
}

/**
 * The row as short as it can be: '8 ← 5×A 2×B 9×A; 11 9'. Each count stands before the symbol's letter or digit of its yarn, '–'
 * where it is bare; the cords to lift come behind the semicolon. A row that is the same again and again is '8 ← 4×(2×A 2×B); …'.
 */
export function compactRowText(
  { row, goesRight, parts, lifts }: WrittenRow,
  symbolOf: (yarn: YarnId) => string,
): string {
  const repeated = repeatedCounts(parts);
  const counts = (repeated?.counts ?? parts)
    .map(({ yarn, count }) => `${count}×${yarn === null ? '–' : symbolOf(yarn)}`)
    .join(' ');
  const lift = lifts.length === 0 ? '' : `; ${lifts.join(' ')}`;
  return `${row} ${goesRight ? '→' : '←'} ${repeated ? `${repeated.times}×(${counts})` : counts}${lift}`;
}

function cordsText(part: WrittenPart, to: string): string {
  return part.from === part.to ? String(part.from) : `${part.from}${to}${part.to}`;
}

function partsOf(
  { cells, columns, startCorner }: Chart,
  row: number,
  yarnsById: ReadonlyMap<YarnId, Pick<Yarn, 'name'>>,
): WrittenPart[] {
  const right = goesRight(startCorner, row);
  const columnAt = (tied: number) => (right ? tied : columns - 1 - tied);
  const codeAt = (tied: number) => cells[row * columns + columnAt(tied)]!;
  const parts: WrittenPart[] = [];
  for (let first = 0; first < columns; ) {
    const code = codeAt(first);
    let last = first;
    while (last + 1 < columns && codeAt(last + 1) === code) last++;
    const yarn = code === BARE ? null : yarnIdOf(code);
    const name = yarn === null ? 'bare' : yarnsById.get(yarn)?.name;
    if (name === undefined) throw new Error(`the chart has a yarn ${code} that is not in the list`);
    parts.push({ yarn, name, count: last - first + 1, from: columnAt(first) + 1, to: columnAt(last) + 1 });
    first = last + 1;
  }
  return parts;
}
