/**
 * The cover: what it is, its title and designer, the finished hanging on its wall as large as the sheet allows, and what it takes
 * in one line of figures. It has no foot. Over a photograph that is lower than the wall the title stands lower, and may be larger.
 */

import { COTTON } from '../../chart/hanging/cotton.ts';
import { hungGeometry } from '../../chart/hanging/hung-geometry.ts';
import { drawOnItsWall } from '../../chart/hanging/on-its-wall.ts';
import { codeOf } from '../../design/codes.ts';
import { fitText, wrapText } from '../faces/measure-text.ts';
import type { Draft } from '../flow/page-foot.ts';
import { accentBar } from '../flow/page-head.ts';
import { label } from '../page/label.ts';
import { markIn } from '../page/mark.ts';
import type { ImageItem, Item } from '../page/page.ts';
import { type Area, bodyOf, FOOT_MM } from '../page/papers.ts';
import { plainItems } from '../page/plain-items.ts';
import { type PrintedPicture, printedPicture } from '../page/printed-picture.ts';
import { inks, LEADING, typeScales } from '../page/style.ts';
import type { PatternContext } from '../pattern-input.ts';
import { coverWords } from '../words/cover-words.ts';
import { coverFacts } from './cover-facts.ts';
import { yarnBand } from './yarn-band.ts';

const BAND_MM = 2.4;
const BELOW_NAMES_MM = 6;
/** What the designer's mark takes at most, at the top right. */
const MARK_MM = { width: 34, height: 20 } as const;

export function coverPage(context: PatternContext): Draft {
  const { sheet, copy, materials } = context;
  const body = bodyOf(sheet);
  const area: Area = { ...body, height: body.height + FOOT_MM };
  const bottom = area.y + area.height;
  const mark = markIn(
    context,
    { x: area.x + area.width - MARK_MM.width, y: area.y, ...MARK_MM },
    'top right',
  );
  const facts = coverFacts(context, area);
  const foot = bottom - facts.heightMm - BAND_MM;
  const names = namesIn(context, { ...area, width: area.width - (mark ? MARK_MM.width + 6 : 0) });
  const top =
    Math.max(names.kindBottom + names.heightMm, mark ? area.y + MARK_MM.height : 0) + BELOW_NAMES_MM;
  const wall: Area = { ...area, y: top, height: foot - top };
  const photograph = photographOf(context);
  // A low photograph stands on the band, the names right above it.
  const shown = photograph && placed(photograph, wall);
  const isLow = shown !== null && shown.height < wall.height - 1;
  const namesY = isLow ? foot - shown.height - BELOW_NAMES_MM - names.heightMm : names.kindBottom;
  return {
    sheet,
    title: coverWords[copy.language].page,
    withoutFoot: true,
    items: [
      ...names.kind,
      ...names.itemsAt(namesY),
      ...(mark ? [mark] : []),
      ...(shown ? onLinen(shown, wall, isLow) : drawnHanging(context, wall)),
      ...yarnBand(materials, { ...area, y: foot, height: BAND_MM }),
      ...facts.itemsAt(foot + BAND_MM),
    ],
  };
}

interface Names {
  /** What it is and of which workshop, at the top. */
  readonly kind: readonly Item[];
  readonly kindBottom: number;
  /** Title and designer, from a top of theirs. */
  readonly heightMm: number;
  readonly itemsAt: (top: number) => Item[];
}

/** The title as large as its length allows. */
function namesIn(context: PatternContext, area: Area): Names {
  const { design, imprint, printer, copy, accent } = context;
  const words = coverWords[copy.language];
  const sizes = typeScales[copy.cells];
  const workshop = printer.printable(imprint.workshop);
  const kind = workshop ? `${workshop} · ${words.kind}` : words.kind;
  const title = titleLines(printer.printable(design.title, 'serif-bold'), area.width);
  const designer = printer.printable(design.designer || imprint.name);
  const byline = designer ? wrapText(words.designedBy(designer), 'sans', sizes.lead, area.width) : [];
  const titleMm = title.lines.length * title.sizeMm * TITLE_LEADING;
  const kindY = area.y + 3 + sizes.body * 1.08;
  return {
    kind: [
      accentBar(area.x, area.y, accent),
      label(area.x, kindY, fitText(kind, 'sans', sizes.body, area.width), {
        color: inks.soft,
        sizeMm: sizes.body,
        role: 'paragraph',
      }),
    ],
    kindBottom: kindY + sizes.body * 0.5,
    heightMm: titleMm + (byline.length > 0 ? ABOVE_BYLINE_MM + byline.length * sizes.lead * LEADING : 0),
    itemsAt: (top) => [
      ...title.lines.map((line, i) =>
        label(area.x, top + (i + 1) * title.sizeMm * TITLE_LEADING, line, {
          face: 'serif-bold',
          sizeMm: title.sizeMm,
          ...(i === 0 && { role: 'title' }),
        }),
      ),
      ...byline.map((line, i) =>
        label(area.x, top + titleMm + ABOVE_BYLINE_MM + (i + 1) * sizes.lead * LEADING, line, {
          sizeMm: sizes.lead,
          color: inks.soft,
          ...(i === 0 && { role: 'paragraph' }),
        }),
      ),
    ],
  };
}

const TITLE_LEADING = 1.13;
const ABOVE_BYLINE_MM = 2.2;

/** Sizes to try, and how many lines of each are most; a very long title goes on in smaller lines. */
const titleSizes = [
  [15, 1],
  [12, 1],
  [12, 2],
  [9, 2],
  [7, 4],
] as const;

function titleLines(title: string, width: number): { lines: string[]; sizeMm: number } {
  for (const [sizeMm, most] of titleSizes) {
    const lines = wrapText(title, 'serif-bold', sizeMm, width);
    if (lines.length <= most) return { lines, sizeMm };
  }
  return { lines: wrapText(title, 'serif-bold', 5.5, width), sizeMm: 5.5 };
}

type Photograph = Omit<ImageItem, 'x' | 'y' | 'width' | 'height'> & PrintedPicture;

/** The maker's own; null where the design has none, or one that can't be read. */
function photographOf({ design, printer, copy }: PatternContext): Photograph | null {
  const { cover } = design.pattern ?? {};
  const picture = cover && printedPicture({ mediaType: cover.mediaType, base64: cover.picture });
  if (!picture) return null;
  const alt = coverWords[copy.language].photograph(printer.printable(design.title));
  return { kind: 'image', ...picture, alt };
}

/** As large as fits, at the foot of the wall. */
function placed({ widthPx, heightPx, ...image }: Photograph, wall: Area): ImageItem {
  const scale = Math.min(wall.width / widthPx, wall.height / heightPx);
  const [width, height] = [widthPx * scale, heightPx * scale];
  return {
    ...image,
    x: wall.x + (wall.width - width) / 2,
    y: wall.y + wall.height - height,
    width,
    height,
  };
}

/** A photograph that is narrower than the wall has linen at its sides. */
function onLinen(photograph: ImageItem, wall: Area, isLow: boolean): Item[] {
  return isLow ? [photograph] : [{ kind: 'box', ...wall, fill: inks.linen }, photograph];
}

function drawnHanging({ design, chart, materials, copy, printer }: PatternContext, wall: Area): Item[] {
  const colors = Object.fromEntries(design.yarns.map(({ id, color }) => [codeOf(id), color]));
  const drawn = drawOnItsWall({
    chart,
    geometry: hungGeometry(design, materials.gauge),
    colors,
    cordColor: COTTON,
    ground: colors[codeOf(design.ground)] ?? inks.linen,
    wall,
    padMm: 10,
  });
  const alt = coverWords[copy.language].alt({
    title: printer.printable(design.title),
    cords: chart.columns,
    rows: chart.rows,
    yarns: materials.yarns.map(({ name }) => printer.printable(name)),
  });
  return [{ kind: 'figure', alt, items: plainItems(drawn) }];
}
