/**
 * Pictures for the page of a shop: the hanging on its wall in the common proportions, and its knots from near by. They are pages as
 * the pattern's are, so that what is sold looks like what is shown. The sizes are common practice, no source.
 */
import { COTTON } from '../../chart/hanging/cotton.ts';
import { drawHanging } from '../../chart/hanging/draw-hanging.ts';
import { type HungGeometry, hungGeometry } from '../../chart/hanging/hung-geometry.ts';
import { drawOnItsWall, wallColor } from '../../chart/hanging/on-its-wall.ts';
import { codeOf } from '../../design/codes.ts';
import type { Language } from '../../design/pattern-schema.ts';
import { fitText, wrapText } from '../faces/measure-text.ts';
import { figuresIn } from '../flow/figures.ts';
import { sizeIn } from '../flow/size-in.ts';
import { label } from '../page/label.ts';
import type { Item, Page } from '../page/page.ts';
import type { Area } from '../page/papers.ts';
import { newPrinter, type Printer } from '../page/printable.ts';
import { inks } from '../page/style.ts';
import type { PatternInput } from '../pattern-input.ts';
import { parcelWords } from '../words/parcel-words.ts';

/** Pixels to the millimetre of these pages. */
export const SHOP_PX_PER_MM = 10;

export const shopSizesPx = {
  square: { widthPx: 2000, heightPx: 2000 },
  upright: { widthPx: 1500, heightPx: 2000 },
  wide: { widthPx: 1920, heightPx: 1080 },
  close: { widthPx: 2000, heightPx: 2000 },
} as const;

export type ShopPicture = keyof typeof shopSizesPx;

const FACT_MM = 4.6;

/** Cords across the picture of the knots. */
const CLOSE_CORDS = 22;

export interface ShopPicturesInput extends Pick<PatternInput, 'design' | 'chart' | 'materials' | 'units'> {
  readonly language: Language;
}

export function shopPictures(input: ShopPicturesInput): Readonly<Record<ShopPicture, Page>> {
  const shown = shownHanging(input, newPrinter());
  return {
    square: page(shown, 'square', square),
    upright: page(shown, 'upright', upright),
    wide: page(shown, 'wide', wide),
    close: page(shown, 'close', close),
  };
}

interface Shown {
  readonly title: string;
  readonly byline: string;
  readonly facts: readonly string[];
  readonly wall: string;
  readonly geometry: HungGeometry;
  readonly yarnColors: readonly string[];
  hangingIn(box: Area): Item[];
  onItsWall(wall: Area, padMm: number): Item[];
}

function shownHanging(
  { design, chart, materials, units, language }: ShopPicturesInput,
  printer: Printer,
): Shown {
  const colors = Object.fromEntries(design.yarns.map(({ id, color }) => [codeOf(id), color]));
  const geometry = hungGeometry(design, materials.gauge);
  const { finished, totals, yarns } = materials;
  const ground = colors[codeOf(design.ground)] ?? inks.linen;
  const hanging = { chart, geometry, colors, cordColor: COTTON };
  const figures = figuresIn(units, language);
  return {
    title: printer.printable(design.title, 'serif-bold'),
    byline: printer.printable(design.designer),
    facts: parcelWords[language].facts({
      sizes: sizeIn(units, language, finished.widthMm, finished.heightWithFringeMm),
      cords: figures.count(chart.columns),
      rows: figures.count(chart.rows),
      time: figures.time(totals.seconds),
    }),
    wall: wallColor(ground),
    geometry,
    yarnColors: yarns.map(({ color }) => color),
    hangingIn: (box) => drawHanging({ ...hanging, box }),
    onItsWall: (wall, padMm) => drawOnItsWall({ ...hanging, ground, wall, padMm }),
  };
}

function page(shown: Shown, name: ShopPicture, draw: (shown: Shown, sheet: Area) => Item[]): Page {
  const { widthPx, heightPx } = shopSizesPx[name];
  const sheet = { x: 0, y: 0, width: widthPx / SHOP_PX_PER_MM, height: heightPx / SHOP_PX_PER_MM };
  return { widthMm: sheet.width, heightMm: sheet.height, title: shown.title, items: draw(shown, sheet) };
}

/** Nothing but the hanging on its wall. */
function square(shown: Shown, sheet: Area): Item[] {
  return shown.onItsWall(sheet, sheet.height * 0.07);
}

/** The hanging above a band with its name. */
function upright(shown: Shown, sheet: Area): Item[] {
  const bandMm = sheet.height * 0.2;
  const wall = { ...sheet, height: sheet.height - bandMm };
  const band = { ...sheet, y: wall.height, height: bandMm };
  return [
    ...shown.onItsWall(wall, sheet.width * 0.07),
    ...plate(band),
    ...names(shown, { x: band.x + 10, y: band.y + 7, width: band.width - 20, height: band.height - 12 }, 11),
  ];
}

/** The hanging at the left, its name and figures at the right. */
function wide(shown: Shown, sheet: Area): Item[] {
  const wall = { ...sheet, width: sheet.width * 0.58 };
  const side = { ...sheet, x: wall.width, width: sheet.width - wall.width };
  const inner = { x: side.x + 9, y: side.y + 12, width: side.width - 18, height: 50 };
  const facts = shown.facts.flatMap((fact) => wrapText(fact, 'sans', FACT_MM, inner.width));
  return [
    ...shown.onItsWall(wall, sheet.height * 0.06),
    ...plate(side),
    ...names(shown, inner, 9.5),
    ...facts.map((line, i) =>
      label(inner.x, sheet.height - 12 - (facts.length - 1 - i) * FACT_MM * 1.5, line, {
        sizeMm: FACT_MM,
        color: inks.soft,
      }),
    ),
  ];
}

/** The knots so large that their turns are seen, around the middle of the picture. */
function close(shown: Shown, sheet: Area): Item[] {
  const { geometry, wall } = shown;
  const { bounds } = geometry;
  const scale = sheet.width / (Math.min(CLOSE_CORDS, geometry.columns) * geometry.pitchMm);
  const box = {
    x: sheet.width / 2 - (geometry.widthMm / 2 - bounds.left) * scale,
    y: sheet.height / 2 - (geometry.heightMm / 2 - bounds.top) * scale,
    width: (bounds.right - bounds.left) * scale,
    height: (bounds.bottom - bounds.top) * scale,
  };
  return [{ kind: 'box', ...sheet, fill: wall }, ...shown.hangingIn(box)];
}

function plate(area: Area): Item[] {
  return [{ kind: 'box', ...area, fill: inks.paper }];
}

/** Title, designer, and the yarns as dots. */
function names({ title, byline, yarnColors }: Shown, area: Area, largest: number): Item[] {
  const { lines, sizeMm } = titleIn(title, area.width, largest);
  const items: Item[] = [];
  let y = area.y;
  for (const line of lines) {
    y += sizeMm * 1.15;
    items.push(label(area.x, y, line, { face: 'serif-bold', sizeMm }));
  }
  if (byline) {
    y += 8;
    items.push(label(area.x, y, fitText(byline, 'sans', 4.6, area.width), { sizeMm: 4.6, color: inks.soft }));
  }
  const step = Math.min(6, area.width / yarnColors.length);
  const dot = step * 0.72;
  yarnColors.forEach((fill, i) => {
    items.push({
      kind: 'box',
      x: area.x + i * step,
      y: y + 4,
      width: dot,
      height: dot,
      radius: dot / 2,
      fill,
      stroke: inks.hair,
      strokeMm: 0.15,
    });
  });
  return items;
}

/** On at most two lines where any size allows it. */
function titleIn(title: string, width: number, largest: number): { lines: string[]; sizeMm: number } {
  for (let sizeMm = largest; sizeMm > 4; sizeMm -= 0.5) {
    const lines = wrapText(title, 'serif-bold', sizeMm, width);
    if (lines.length <= 2) return { lines, sizeMm };
  }
  return { lines: wrapText(title, 'serif-bold', 4, width).slice(0, 4), sizeMm: 4 };
}
