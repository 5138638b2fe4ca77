/**
 * What the key says of the chart's frames, below its yarns: 'Framed: cords 1–8 of rows 12–19, 5 times across', a line or
 * more for each.
 */
import type { Repeat } from '../../chart/repeats.ts';
import { wrapText } from '../faces/measure-text.ts';
import { label } from '../page/label.ts';
import type { Item, PathStep, PlainItem } from '../page/page.ts';
import { plainItems } from '../page/plain-items.ts';
import { stamped } from '../page/stamped.ts';
import type { chartWords, FramedSpans } from '../words/chart-words.ts';
import type { KeyScale } from './print-scale.ts';
import { doubleLine } from './repeat-frames.ts';

type FrameWords = Pick<(typeof chartWords)['en'], 'framed' | 'frameAlt'>;

export interface FrameLines {
  /** None where nothing is framed. */
  readonly height: number;
  /** Em of the lines. */
  readonly nameMm: number;
  /** `isAgain`: a page before has told them already: they are seen again, and not read again. */
  readonly draw: (x: number, y: number, isAgain?: boolean) => Item[];
}

/** Distance of two lines of one text, in ems. */
const LEADING = 1.3;

/** How the lines stand within a width, in mm; `scale` is that of the key above them. */
export function frameLines(
  repeats: readonly Repeat[],
  widthMm: number,
  { swatchMm, lineMm, nameMm }: KeyScale,
  words: FrameWords,
): FrameLines {
  const indent = swatchMm + nameMm * 0.6;
  const texts = repeats.map((repeat) =>
    wrapText(words.framed(spansOf(repeat)), 'sans', nameMm, widthMm - indent),
  );
  const heightOf = (lines: readonly string[]) => lineMm + (lines.length - 1) * nameMm * LEADING;
  const draw = (x: number, y: number, isAgain = false): Item[] => {
    let top = y;
    const items = texts.flatMap((lines): Item[] => {
      const swatch = { kind: 'figure', alt: words.frameAlt, items: frameSwatch(x, top, swatchMm) } as const;
      const baseline = top + swatchMm / 2 + nameMm * 0.355;
      top += heightOf(lines);
      return [
        swatch,
        ...lines.map((line, i) =>
          label(x + indent, baseline + i * nameMm * LEADING, line, {
            sizeMm: nameMm,
            ...(i === 0 && { role: 'paragraph' as const }),
          }),
        ),
      ];
    });
    return isAgain ? stamped(plainItems(items).map(seenAgain), x, y) : items;
  };
  return { height: texts.reduce((sum, lines) => sum + heightOf(lines), 0), nameMm, draw };
}

/** As a person counts them. */
export function spansOf({
  fromRow,
  toRow,
  fromColumn,
  columns,
  times,
  leftOver,
  border,
}: Repeat): FramedSpans {
  const first = fromColumn + 1;
  const last = fromColumn + columns;
  // What is left over lies beyond the last repeat, and is the side of the frame that looks there.
  const startsLeft = fromColumn === border;
  const rest = startsLeft ? { first, last: first + leftOver - 1 } : { first: last - leftOver + 1, last };
  return {
    rows: { first: fromRow + 1, last: toRow + 1 },
    cords: { first, last },
    times,
    rest: leftOver === 0 ? null : rest,
  };
}

function seenAgain(item: PlainItem): PlainItem {
  return item.kind === 'text' ? { ...item, role: 'again' } : item;
}

/** A corner of the frame. */
function frameSwatch(x: number, y: number, size: number): PlainItem[] {
  const inset = size * 0.22;
  const steps: PathStep[] = [
    ['M', x + inset, y + size],
    ['L', x + inset, y + inset],
    ['L', x + size, y + inset],
  ];
  return doubleLine(steps, size);
}
