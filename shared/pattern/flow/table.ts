/**
 * Tables in a flow. The heads stand again on each page, and a row stays on one page. Where the columns are wider than the page, as
 * in large print, each row is set as its name with its figures below, each behind its head.
 */
import { joinedLines, textWidthMm, wrapText } from '../faces/measure-text.ts';
import { type LabelStyle, label } from '../page/label.ts';
import type { Face, GroupItem, Item, Structure } from '../page/page.ts';
import { plainItems } from '../page/plain-items.ts';
import { inks, LEADING, ruleMm } from '../page/style.ts';
import { type Flow, spaceIn } from './flow.ts';

/** Text, or a drawing; `alt` is what it says, in words, and is left out where it only decorates. */
export type TableCell = string | { readonly draw: (x: number, y: number) => Item[]; readonly alt?: string };

export interface TableColumn {
  readonly head: string;
  /**
   * In mm. The one column without a width takes what is left; it names the rows, and is read as their head.
   */
  readonly width?: number;
  readonly align?: 'left' | 'right';
  /** Of what is longer, start and end are told. Without it all of a text is set, on as many lines as it needs. */
  readonly mostLines?: number;
}

/** Between columns. */
export const CELL_GAP_MM = 3;

export function table(
  flow: Flow,
  columns: readonly TableColumn[],
  rows: readonly (readonly TableCell[])[],
): void {
  const fixed = columns.reduce((sum, { width = 0 }) => sum + width, 0);
  const rest = flow.area.width - fixed;
  const set: TableSet = {
    flow,
    columns,
    widths: columns.map(({ width }) => width ?? rest),
    id: flow.newId(),
  };
  if (rest < LEAST_NAME_EMS * flow.sizes.body) for (const row of rows) stackedRow(set, row);
  else rowsUnderHeads(set, rows);
  flow.y += 2;
}

interface TableSet {
  readonly flow: Flow;
  readonly columns: readonly TableColumn[];
  readonly widths: readonly number[];
  /** Of the group that all its rows are. */
  readonly id: string;
}

/** Least width of the column of names. */
const LEAST_NAME_EMS = 9;

function rowsUnderHeads(set: TableSet, rows: readonly (readonly TableCell[])[]): void {
  const { flow, columns } = set;
  const heads = columns.map(({ head }) => head);
  tableRow(set, heads, 'head');
  for (const row of rows) {
    const before = flow.y;
    flow.need(rowHeight(set, row, 'row'));
    if (flow.y < before) tableRow(set, heads, 'again');
    tableRow(set, row, 'row');
  }
}

/** 'again': the heads on a later page, which were read on the first one. */
type RowKind = 'head' | 'again' | 'row';

interface RowLook {
  readonly sizeMm: number;
  readonly color: string;
  readonly above: number;
  readonly below: number;
}

function rowSpace(flow: Flow): Pick<RowLook, 'above' | 'below'> {
  return { above: spaceIn(flow, 0.3, 1.1), below: spaceIn(flow, 0.6, 1.7) };
}

function lookOf(flow: Flow, kind: RowKind): RowLook {
  const { sizes } = flow;
  return kind === 'row'
    ? { sizeMm: sizes.body * 0.97, color: inks.text, ...rowSpace(flow) }
    : { sizeMm: sizes.small, color: inks.soft, above: 0.6, below: 1.4 };
}

function linesOf(set: TableSet, cell: TableCell, column: number, kind: RowKind): string[] {
  if (typeof cell !== 'string') return [''];
  const { sizeMm } = lookOf(set.flow, kind);
  return atMost(cell, set.columns[column]?.mostLines, 'sans', sizeMm, set.widths[column]! - CELL_GAP_MM);
}

function atMost(text: string, most: number | undefined, face: Face, sizeMm: number, width: number): string[] {
  const lines = wrapText(text, face, sizeMm, width);
  if (most === undefined || lines.length <= most) return lines;
  return [...lines.slice(0, most - 1), endOf(lines.slice(most - 1).join(' '), face, sizeMm, width)];
}

/** As much of the text's end as fits behind an ellipsis: long names of one beginning are told by their ends. */
function endOf(text: string, face: Face, sizeMm: number, width: number): string {
  const letters = text.match(/\P{M}\p{M}*/gsu) ?? [];
  let end = '';
  for (const letter of letters.reverse()) {
    if (textWidthMm(`…${letter}${end}`, face, sizeMm) > width) break;
    end = letter + end;
  }
  return `…${end.trimStart()}`;
}

function depthOf(set: TableSet, cells: readonly TableCell[], kind: RowKind): number {
  return Math.max(...cells.map((cell, i) => linesOf(set, cell, i, kind).length), 1);
}

function rowHeight(set: TableSet, cells: readonly TableCell[], kind: RowKind): number {
  const { sizeMm, above, below } = lookOf(set.flow, kind);
  return above + depthOf(set, cells, kind) * sizeMm * LEADING + below;
}

function tableRow(set: TableSet, cells: readonly TableCell[], kind: RowKind): void {
  const { flow, columns, widths, id } = set;
  const height = rowHeight(set, cells, kind);
  // Heads stay with the first row below them.
  flow.need(height + (kind === 'row' ? 0 : 3 * flow.sizes.body * LEADING));
  const depth = depthOf(set, cells, kind);
  let x = flow.area.x;
  const drawn = cells.map((cell, i): GroupItem => {
    const column = { index: i, x, isLast: i === cells.length - 1 };
    x += widths[i]!;
    const items =
      typeof cell === 'string'
        ? cellText(set, cell, column, depth, kind)
        : cellDrawing(cell, column.x, flow.y + lookOf(flow, kind).above);
    return { kind: 'group', structure: structureOf(columns[i]!, kind), items };
  });
  flow.y += height;
  if (kind === 'again') flow.put(...drawn.flatMap(({ items }) => items));
  else flow.put(rowOf(drawn, id));
  flow.put(ruleBelow(flow, kind));
}

function rowOf(cells: readonly GroupItem[], id: string): GroupItem {
  return {
    kind: 'group',
    structure: 'table',
    items: [{ kind: 'group', structure: 'row', items: cells }],
    id,
  };
}

function structureOf({ width }: TableColumn, kind: RowKind): Structure {
  return kind === 'head' ? 'column-head' : width === undefined ? 'row-head' : 'cell';
}

interface PlacedColumn {
  readonly index: number;
  readonly x: number;
  readonly isLast: boolean;
}

function cellText(
  set: TableSet,
  text: string,
  { index, x, isLast }: PlacedColumn,
  depth: number,
  kind: RowKind,
): Item[] {
  const { flow, columns, widths } = set;
  const { align = 'left' } = columns[index]!;
  const { sizeMm, color, above } = lookOf(flow, kind);
  const lines = linesOf(set, text, index, kind);
  const joined = joinedLines(text, lines);
  // Heads stand on the rule below them, however many lines they have.
  const from = kind === 'row' ? 0 : depth - lines.length;
  const at = align === 'right' ? x + widths[index]! - (isLast ? 0 : CELL_GAP_MM) : x;
  return lines.map((line, i) =>
    label(at, flow.y + above + (from + i) * sizeMm * LEADING + sizeMm * 1.08, line, {
      sizeMm,
      color,
      align,
      ...(joined[i] && { joined: true }),
      ...(kind === 'again' && { role: 'again' }),
    }),
  );
}

function cellDrawing({ draw, alt }: Exclude<TableCell, string>, x: number, y: number): Item[] {
  const items = draw(x, y);
  return alt ? [{ kind: 'figure', alt, items: plainItems(items) }] : items;
}

function ruleBelow({ area, y }: Flow, kind: RowKind): Item {
  return {
    kind: 'rule',
    x1: area.x,
    y1: y,
    x2: area.x + area.width,
    y2: y,
    widthMm: kind === 'row' ? ruleMm.thin : 0.25,
    color: kind === 'row' ? inks.hair : inks.soft,
  };
}

/** Drawings and name side by side; below them the figures, each behind its head, as many on a line as there is room for. */
function stackedRow({ flow, columns, id }: TableSet, cells: readonly TableCell[]): void {
  const { area, sizes } = flow;
  const line = sizes.body * LEADING;
  const { above, below } = rowSpace(flow);
  const isDrawing = ({ width, head }: TableColumn) => width !== undefined && head === '';
  const indent = columns.filter(isDrawing).reduce((sum, { width = 0 }) => sum + width, 0);
  const left = area.x + indent;
  const room = area.width - indent;
  const name = columns.findIndex(({ width }) => width === undefined);
  const nameLines = atMost(String(cells[name]), columns[name]?.mostLines, 'sans-bold', sizes.body, room);
  const figures = columns.flatMap((column, i) =>
    i === name || isDrawing(column) ? [] : [{ head: `${column.head}:`, value: String(cells[i]) }],
  );
  const placed = placedPairs(figures, sizes.body, room);
  const lines = nameLines.length + (placed.at(-1)?.line ?? -1) + 1;
  flow.need(above + lines * line + below);
  const baseline = (at: number) => flow.y + above + at * line + sizes.body * 1.08;
  const look: LabelStyle = { sizeMm: sizes.body };
  const named = nameLines.map((text, at) => label(left, baseline(at), text, { ...look, face: 'sans-bold' }));
  const told = placed.map(({ head, value, x, line: at }) => {
    const y = baseline(nameLines.length + at);
    const valueX = left + x + textWidthMm(`${head} `, 'sans', sizes.body);
    return [label(left + x, y, head, { ...look, color: inks.soft }), label(valueX, y, value, look)];
  });
  let x = area.x;
  let next = 0;
  const drawn = cells.map((cell, i): GroupItem => {
    const column = columns[i]!;
    const structure = structureOf(column, 'row');
    if (i === name) return { kind: 'group', structure, items: named };
    if (!isDrawing(column)) return { kind: 'group', structure, items: told[next++]! };
    const at = x;
    x += column.width!;
    const items = typeof cell === 'string' ? [] : cellDrawing(cell, at, flow.y + above);
    return { kind: 'group', structure, items };
  });
  flow.y += above + lines * line + below;
  flow.put(rowOf(drawn, id), ruleBelow(flow, 'row'));
}

interface Pair {
  readonly head: string;
  readonly value: string;
}

/** Each on the line that the one before is on, if there is room; `x` from the left end of the lines. */
function placedPairs(
  pairs: readonly Pair[],
  sizeMm: number,
  room: number,
): readonly (Pair & { readonly x: number; readonly line: number })[] {
  let x = 0;
  let line = 0;
  return pairs.map((pair) => {
    const width = textWidthMm(`${pair.head} ${pair.value}`, 'sans', sizeMm);
    if (x > 0 && x + width > room) {
      x = 0;
      line++;
    }
    const placed = { ...pair, x, line };
    x += width + 2 * CELL_GAP_MM;
    return placed;
  });
}
