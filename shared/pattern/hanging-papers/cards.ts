/** Cards of one size on a sheet, as many as fit, with hairlines to cut along. */
import type { Item, PlainItem } from '../page/page.ts';
import { type Area, margins, type Sheet } from '../page/papers.ts';
import { inks, ruleMm } from '../page/style.ts';

/** What is printed on of the upper left quarter of a sheet: nothing stands near the sheet's edges. */
export function quarter({ widthMm, heightMm }: Sheet): Area {
  const inset = Math.max(margins.left, margins.top);
  return { x: inset, y: inset, width: widthMm / 2 - 2 * inset, height: heightMm / 2 - 2 * inset };
}

/** Quarters of a sheet, A6 on A4: two cuts part four of them. */
export function quarters(sheet: Sheet, draw: (inner: Area) => Item[]): Item[] {
  const { widthMm, heightMm } = sheet;
  const [width, height] = [widthMm / 2, heightMm / 2];
  const first = quarter(sheet);
  const inner = (column: number, row: number): Area => ({
    ...first,
    x: first.x + column * width,
    y: first.y + row * height,
  });
  return [
    cut(width, margins.top, width, heightMm - margins.bottom),
    cut(margins.left, height, widthMm - margins.right, height),
    ...[0, 1].flatMap((row) => [0, 1].flatMap((column) => draw(inner(column, row)))),
  ];
}

/** Cards side by side from the upper left corner of an area, each in its frame. `draw` is given the card itself. */
export function cardsIn(
  area: Area,
  { width, height }: { width: number; height: number },
  draw: (card: Area) => Item[],
): Item[] {
  const columns = Math.floor(area.width / width);
  const rows = Math.floor(area.height / height);
  const left = area.x + (area.width - columns * width) / 2;
  const items: Item[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const card = { x: left + column * width, y: area.y + row * height, width, height };
      items.push({ kind: 'box', ...card, stroke: inks.soft, strokeMm: ruleMm.thin }, ...draw(card));
    }
  }
  return items;
}

function cut(x1: number, y1: number, x2: number, y2: number): PlainItem {
  return {
    kind: 'path',
    steps: [
      ['M', x1, y1],
      ['L', x2, y2],
    ],
    stroke: inks.soft,
    strokeMm: ruleMm.thin,
    dashMm: [1.6, 1.6],
  };
}
