/** Lines of text one below the other on a card, which never leave it: what no longer fits is left out. */
import { fitText, wrapText } from '../faces/measure-text.ts';
import { type LabelStyle, label } from '../page/label.ts';
import type { Item } from '../page/page.ts';
import type { Area } from '../page/papers.ts';
import { inks, LEADING, sizes } from '../page/style.ts';

export interface Column {
  readonly area: Area;
  /** Where the next line goes. */
  y: number;
  readonly items: Item[];
  skip(mm: number): void;
  /** On at most `lines` lines; a longer text ends with an ellipsis. */
  text(text: string, style?: LabelStyle & { readonly lines?: number }): void;
  rule(color: string, widthMm: number): void;
}

export function newColumn(area: Area): Column {
  const bottom = area.y + area.height;
  const column: Column = {
    area,
    y: area.y,
    items: [],
    skip(mm) {
      column.y += mm;
    },
    text(text, { lines: most = 1, ...style } = {}) {
      const { face = 'sans', sizeMm = sizes.note } = style;
      if (text === '') return;
      const wrapped = wrapText(text, face, sizeMm, area.width);
      const shown = wrapped.slice(0, most);
      if (wrapped.length > most) {
        shown[most - 1] = fitText(wrapped.slice(most - 1).join(' '), face, sizeMm, area.width);
      }
      shown.forEach((line, i) => {
        column.y += sizeMm * (i === 0 ? 1.15 : LEADING);
        const x = style.align === 'center' ? area.x + area.width / 2 : area.x;
        if (column.y + sizeMm * 0.25 <= bottom)
          column.items.push(
            label(x, column.y, line, { ...style, sizeMm, ...(i === 0 && { role: 'paragraph' }) }),
          );
      });
      column.y += sizeMm * (LEADING - 1.15);
    },
    rule(color, widthMm) {
      const { x, width } = area;
      column.items.push({ kind: 'rule', x1: x, y1: column.y, x2: x + width, y2: column.y, widthMm, color });
    },
  };
  return column;
}

/** What is told of a thing: a small word above it; where nothing is told, a line to write on. */
export function told(column: Column, name: string, value: string, lines = 2): void {
  column.text(name, { sizeMm: sizes.foot, color: inks.soft });
  if (value !== '') column.text(value, { face: 'sans-bold', lines });
  else {
    column.skip(sizes.note * 1.6);
    column.rule(inks.soft, 0.18);
    column.skip(0.8);
  }
  column.skip(1.2);
}
