/**
 * The note above a chart that has no room for the rows that are wished in words beside it: behind the title where that leaves it
 * two lines, else below the title across the page, for which the head is made higher. Whether it is does not hang on the page
 * that it names, so that pages can be counted before they have numbers.
 */
import { textWidthMm, wrapText } from '../faces/measure-text.ts';
import { HIGHEST_PAGE } from '../page/highest-page.ts';
import { label } from '../page/label.ts';
import type { TextItem } from '../page/page.ts';
import type { Area } from '../page/papers.ts';
import { sizeToFit } from '../page/size-to-fit.ts';
import { inks } from '../page/style.ts';
import type { chartWords } from '../words/chart-words.ts';
import type { PrintScale } from './print-scale.ts';
import { type Split, spanOf } from './split-chart.ts';

export interface RowsNote {
  /** What the head grows by; 0 where the note stands behind the title. */
  readonly belowMm: number;
  /** On the page whose range is `range`; `y` is the title's baseline, `below` the bottom of a head that has not grown. */
  readonly draw: (body: Area, range: string, y: number, below: number) => TextItem[];
}

interface Noted {
  readonly title: string;
  readonly scale: Pick<PrintScale, 'titleMm' | 'type'>;
  readonly words: Pick<(typeof chartWords)['en'], 'notBeside' | 'range'>;
}

const LINES_BEHIND = 2;
const LINE = 1.25;
/** Between title, note and range. */
const GAP_MM = 5;

/**
 * `rowsPage`: where the written rows begin; null where there are none. `widthMm`: what the narrowest sheet that the chart may stand
 * on leaves it.
 */
export function rowsNote(
  input: Noted,
  rowsPage: number | null,
  split: Pick<Split, 'across' | 'down'>,
  widthMm: number,
): RowsNote {
  const { words, scale } = input;
  const { small } = scale.type;
  const linesIn = (text: string, room: number) => wrapText(text, 'sans', small, room);
  const longest = [words.notBeside(HIGHEST_PAGE), words.notBeside(null)];
  const mostIn = (room: number) => Math.max(...longest.map((text) => linesIn(text, room).length));
  const ranges = split.down.flatMap((down) =>
    split.across.map((across) => words.range(spanOf(down), spanOf(across))),
  );
  const rooms = ranges.map((range) => behindTitle(input, widthMm, range).room);
  const isBehind = rooms.every((room) => room > 0 && mostIn(room) <= LINES_BEHIND);
  const text = words.notBeside(rowsPage);
  return {
    belowMm: isBehind ? 0 : mostIn(widthMm) * small * LINE,
    draw: (body, range, y, below) => {
      const { left, room } = behindTitle(input, body.width, range);
      const lines = linesIn(text, isBehind ? room : body.width);
      // The last line behind a title stands on its baseline.
      const first = isBehind ? y - (lines.length - 1) * small * LINE : below + small * 0.32;
      return lines.map((line, i) =>
        label(isBehind ? body.x + left : body.x, first + i * small * LINE, line, {
          sizeMm: small,
          color: inks.soft,
          ...(i === 0 && { role: 'paragraph' }),
        }),
      );
    },
  };
}

/** From the body's left edge. */
function behindTitle({ title, scale }: Noted, widthMm: number, range: string) {
  const rangeWidth = textWidthMm(range, 'sans', scale.type.body);
  const titleMm = sizeToFit(title, 'serif-bold', scale.titleMm, widthMm - rangeWidth - 4);
  const left = textWidthMm(title, 'serif-bold', titleMm) + GAP_MM;
  return { left, room: widthMm - left - rangeWidth - GAP_MM };
}
