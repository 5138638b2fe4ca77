/**
 * The rows in words beside the chart's own rows: for each row of the page its counts with their symbols, in tying order, and
 * behind a semicolon the cords to lift, '8 ← 5 ▲ 2 ○ 9 ▲; 11 9', as short written rows are. On a page that shows some of the
 * cords only these are counted and lifted, and rows that the page before shows as well are left to it. A row that has no room
 * says where it is written out.
 */

import { type Chart, goesRight } from '../../chart/chart.ts';
import type { YarnId } from '../../design/codes.ts';
import { type WrittenRow, writtenRow } from '../../tying/rows/written-rows.ts';
import { textWidthMm } from '../faces/measure-text.ts';
import { HIGHEST_PAGE } from '../page/highest-page.ts';
import { label } from '../page/label.ts';
import type { Item, PathStep } from '../page/page.ts';
import { inks } from '../page/style.ts';
import type { chartWords } from '../words/chart-words.ts';
import { arrow } from './chart-block.ts';
import type { PrintScale } from './print-scale.ts';
import type { Split, Stretch } from './split-chart.ts';

export interface RowsBesideWish {
  /** At least the yarns of the chart. */
  readonly symbols: ReadonlyMap<YarnId, string>;
  readonly words: Pick<(typeof chartWords)['en'], 'bareInRow' | 'writtenOn'>;
  /** Where the written rows begin; null where there are none. */
  readonly rowsPage: number | null;
}

export interface RowsBeside {
  /** That all rows would take, the gap before them included. */
  readonly widthMm: number;
  /** Share of the rows that have room; 0 where others have not even room to say where they are written. */
  readonly fitting: number;
  /** `x`: the right end of the cells' numbers; `y`: the top of the cells. */
  readonly draw: (across: Stretch, down: Stretch, x: number, y: number) => Item[];
}

const GAP_MM = 3;
const LEADING = 1.3;
/** Length of the arrow behind a row's number, in ems. */
const ARROW = 0.9;

/** `roomMm`: what there is for them; as much as they like where absent. */
export function rowsBeside(
  chart: Chart,
  wish: RowsBesideWish,
  split: Pick<Split, 'across' | 'down' | 'cellHeight'>,
  scale: Pick<PrintScale, 'numberMm'>,
  roomMm = Number.POSITIVE_INFINITY,
): RowsBeside {
  const sizeMm = Math.min(scale.numberMm, split.cellHeight * 0.86);
  const most = Math.max(1, Math.floor(split.cellHeight / (sizeMm * LEADING)));
  const digitsMm = textWidthMm('0'.repeat(String(chart.rows).length), 'sans-bold', sizeMm);
  const numberMm = digitsMm + sizeMm * (ARROW + 0.45 + 0.6);
  const room = roomMm - GAP_MM - numberMm;
  const charts = new Map(split.across.map((across) => [across, onPage(chart, across)]));
  const linesOf = (row: number, across: Stretch) => {
    const { parts } = writtenRow(charts.get(across)!, row, named);
    // Whether the first cord of the page begins a new yarn is told by the one before it.
    const lifts = writtenRow(chart, row, named).lifts.filter(
      (cord) => cord > across.first + across.repeated && cord <= across.end,
    );
    const words = [...countsOf(parts, lifts.length > 0, wish, sizeMm), ...liftsOf(lifts, sizeMm)];
    const lines = broken(words, room);
    return {
      words,
      lines: lines.length <= most && words.every(({ widthMm }) => widthMm <= room) ? lines : null,
    };
  };
  const pointed = pointer(wish, sizeMm, room);
  const named = new Map([...wish.symbols].map(([id, name]) => [id, { name }]));
  let widest = 0;
  let fit = 0;
  let all = 0;
  for (const across of split.across) {
    for (let row = 0; row < chart.rows; row++) {
      const { words, lines } = linesOf(row, across);
      widest = Math.max(widest, widthOf(words));
      all++;
      if (lines) fit++;
    }
  }
  return {
    widthMm: widest + numberMm + GAP_MM,
    fitting: fit === all || canPoint(wish, sizeMm, room) ? fit / all : 0,
    draw: (across, down, x, y) => {
      const items: Item[] = [];
      const arrows: PathStep[] = [];
      for (let row = down.first + down.repeated; row < down.end; row++) {
        const middle = y + (row - down.first + 0.5) * split.cellHeight;
        const told = linesOf(row, across).lines;
        const lines = told ?? [[pointed]];
        const color = told ? inks.text : inks.soft;
        const first = middle + sizeMm * 0.355 - ((lines.length - 1) * sizeMm * LEADING) / 2;
        const numberEnd = x + GAP_MM + digitsMm;
        const number = label(numberEnd, first, String(row + 1), {
          face: 'sans-bold',
          sizeMm,
          align: 'right',
          role: 'paragraph',
        });
        const tail = numberEnd + sizeMm * 0.45;
        const right = goesRight(chart.startCorner, row);
        arrows.push(
          ...arrow(
            right ? tail : tail + sizeMm * ARROW,
            right ? tail + sizeMm * ARROW : tail,
            middleOf(first, sizeMm),
            sizeMm,
          ),
        );
        items.push(number);
        lines.forEach((line, i) => {
          items.push(...drawn(line, x + GAP_MM + numberMm, first + i * sizeMm * LEADING, sizeMm, color));
        });
      }
      const strokeMm = sizeMm * 0.085;
      return [{ kind: 'path', steps: arrows, stroke: inks.text, strokeMm, cap: 'round' }, ...items];
    },
  };
}

/** The cords that a page shows and the page before does not. */
function onPage(chart: Chart, { first, end, repeated }: Stretch): Chart {
  const from = first + repeated;
  if (from === 0 && end === chart.columns) return chart;
  const columns = end - from;
  const cells = new Uint8Array(columns * chart.rows);
  for (let row = 0; row < chart.rows; row++) {
    const at = row * chart.columns;
    cells.set(chart.cells.subarray(at + from, at + end), row * columns);
  }
  return { ...chart, columns, cells };
}

/** What is never parted: a count and its symbol, or a cord. */
interface Word {
  readonly text: string;
  /** Null after which nothing follows, as behind words in letters. */
  readonly symbol: string | null;
  /** Behind it. */
  readonly spaceMm: number;
  /** With the space. */
  readonly widthMm: number;
}

function countsOf(
  parts: WrittenRow['parts'],
  areFollowed: boolean,
  { words }: RowsBesideWish,
  sizeMm: number,
): Word[] {
  return parts.map(({ yarn, name, count }, i) =>
    wordOf(
      yarn === null ? `${count} ${words.bareInRow}` : String(count),
      yarn === null ? null : name,
      sizeMm,
      areFollowed && i === parts.length - 1 ? BEFORE_SEMICOLON : SPACE,
    ),
  );
}

function liftsOf(lifts: readonly number[], sizeMm: number): Word[] {
  return lifts.map((cord, i) => wordOf(i === 0 ? `; ${cord}` : String(cord), null, sizeMm));
}

/** In the most words that have room. */
function pointer({ words, rowsPage }: RowsBesideWish, sizeMm: number, room: number): Word {
  const forms = words.writtenOn(rowsPage).map((text) => wordOf(text, null, sizeMm));
  return forms.find((form) => isWithin(form, room)) ?? forms.at(-1)!;
}

/** Whichever page the fewest words name. */
function canPoint({ words }: RowsBesideWish, sizeMm: number, room: number): boolean {
  return [HIGHEST_PAGE, null].every((page) =>
    isWithin(wordOf(words.writtenOn(page).at(-1)!, null, sizeMm), room),
  );
}

/** The space behind a line's last word takes no room. */
function isWithin({ widthMm, spaceMm }: Word, room: number): boolean {
  return widthMm - spaceMm <= room;
}

/** Figures are about 0.71 em high. */
function middleOf(baseline: number, sizeMm: number): number {
  return baseline - sizeMm * 0.355;
}

/** In ems of the figures: a symbol is about as high as they are, and space follows it. */
const SYMBOL = 1.1;
const SPACE = 0.55;
const BEFORE_SEMICOLON = 0.1;

function wordOf(text: string, symbol: string | null, sizeMm: number, space = SPACE): Word {
  const widthMm = textWidthMm(text, 'sans', sizeMm) + (symbol === null ? 0 : sizeMm * (SYMBOL + 0.1));
  return { text, symbol, spaceMm: sizeMm * space, widthMm: widthMm + sizeMm * space };
}

function widthOf(words: readonly Word[]): number {
  return words.reduce((sum, { widthMm }) => sum + widthMm, 0);
}

function broken(words: readonly Word[], room: number): Word[][] {
  const lines: Word[][] = [[]];
  let used = 0;
  for (const word of words) {
    if (used + word.widthMm > room && lines.at(-1)!.length > 0) {
      lines.push([]);
      used = 0;
    }
    lines.at(-1)!.push(word);
    used += word.widthMm;
  }
  return lines;
}

function drawn(words: readonly Word[], x: number, baseline: number, sizeMm: number, color: string): Item[] {
  let at = x;
  return words.flatMap(({ text, symbol, spaceMm, widthMm }) => {
    const items: Item[] = [label(at, baseline, text, { sizeMm, color })];
    const symbolMm = sizeMm * SYMBOL;
    if (symbol !== null) {
      const left = at + widthMm - spaceMm - sizeMm * SYMBOL;
      // A symbol fills its em: it stands on the baseline, a little below it.
      const y = baseline + (symbolMm - sizeMm * 0.71) / 2;
      items.push(label(left, y, symbol, { face: 'symbols', sizeMm: symbolMm, color }));
    }
    at += widthMm;
    return items;
  });
}
