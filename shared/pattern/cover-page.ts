/**
 * The cover: what it is, its title and designer, the finished hanging on its wall as large as the sheet allows, and what it takes
 * in one line of figures. It has no foot.
 */

import { COTTON } from '../chart/hanging/cotton.ts';
import { hangingGeometry } from '../chart/hanging/geometry.ts';
import { drawOnItsWall } from '../chart/hanging/on-its-wall.ts';
import { codeOf } from '../design/codes.ts';
import { fringeMm } from '../gauge/fringe.ts';
import { fitText, wrapText } from './faces/measure-text.ts';
import { label } from './label.ts';
import { markIn } from './mark.ts';
import type { Item } from './page.ts';
import type { Draft } from './page-foot.ts';
import { accentBar } from './page-head.ts';
import { type Area, bodyOf, FOOT_MM } from './papers.ts';
import type { PatternContext } from './pattern-input.ts';
import { plainItems } from './plain-items.ts';
import { printedPicture } from './printed-picture.ts';
import { sizeToFit } from './size-to-fit.ts';
import { inks, LEADING, sizes } from './style.ts';
import { coverWords } from './words/cover-words.ts';
import { yarnBand } from './yarn-band.ts';

/** The line of figures, which takes the place of the foot. */
const FACTS_MM = 15;
const BAND_MM = 2.4;
/** What the designer's mark takes at most, at the top right. */
const MARK_MM = { width: 34, height: 20 } as const;

export function coverPage(context: PatternContext): Draft {
  const { sheet, copy } = context;
  const body = bodyOf(sheet);
  const area: Area = { ...body, height: body.height + FOOT_MM };
  const mark = markIn(
    context,
    { x: area.x + area.width - MARK_MM.width, y: area.y, ...MARK_MM },
    'top right',
  );
  const names = namesIn(context, { ...area, width: area.width - (mark ? MARK_MM.width + 6 : 0) });
  const top = Math.max(names.bottom, mark ? area.y + MARK_MM.height : 0) + 6;
  const foot = area.y + area.height - FACTS_MM;
  const wall: Area = { ...area, y: top, height: foot - BAND_MM - top };
  return {
    sheet,
    title: coverWords[copy.language].page,
    withoutFoot: true,
    items: [
      ...names.items,
      ...(mark ? [mark] : []),
      ...picture(context, wall),
      ...yarnBand(context.materials, { ...area, y: foot - BAND_MM, height: BAND_MM }),
      ...facts(context, { ...area, y: foot, height: FACTS_MM }),
    ],
  };
}

/** What it is and of which workshop; the title as large as its length allows; the designer. */
function namesIn(context: PatternContext, area: Area): { items: Item[]; bottom: number } {
  const { design, imprint, printer, copy, accent } = context;
  const words = coverWords[copy.language];
  const workshop = printer.printable(imprint.workshop);
  const kind = workshop ? `${workshop} · ${words.kind}` : words.kind;
  const title = titleLines(printer.printable(design.title, 'serif-bold'), area.width);
  const designer = printer.printable(design.designer || imprint.name);
  const byline = designer ? wrapText(words.designedBy(designer), 'sans', sizes.lead, area.width) : [];
  const items: Item[] = [
    accentBar(area.x, area.y, accent),
    label(area.x, area.y + 6.4, fitText(kind, 'sans', sizes.body, area.width), {
      color: inks.soft,
      role: 'paragraph',
    }),
  ];
  let y = area.y + 8;
  title.lines.forEach((line, i) => {
    y += title.sizeMm * 1.13;
    const role = i === 0 ? ({ role: 'title' } as const) : {};
    items.push(label(area.x, y, line, { face: 'serif-bold', sizeMm: title.sizeMm, ...role }));
  });
  y += 2.2;
  byline.forEach((line, i) => {
    y += sizes.lead * LEADING;
    const role = i === 0 ? ({ role: 'paragraph' } as const) : {};
    items.push(label(area.x, y, line, { sizeMm: sizes.lead, color: inks.soft, ...role }));
  });
  return { items, bottom: y };
}

/** Sizes to try, and how many lines of each are most; a very long title goes on in smaller lines. */
const titleSizes = [
  [sizes.display, 1],
  [12, 1],
  [12, 2],
  [sizes.pageTitle, 2],
  [7, 4],
] as const;

function titleLines(title: string, width: number): { lines: string[]; sizeMm: number } {
  for (const [sizeMm, most] of titleSizes) {
    const lines = wrapText(title, 'serif-bold', sizeMm, width);
    if (lines.length <= most) return { lines, sizeMm };
  }
  return { lines: wrapText(title, 'serif-bold', 5.5, width), sizeMm: 5.5 };
}

/** The maker's own photograph, or the hanging as it is drawn, on its wall. */
function picture(context: PatternContext, wall: Area): Item[] {
  const photograph = photographIn(context, wall);
  if (photograph) return [{ kind: 'box', ...wall, fill: inks.linen }, photograph];
  const { design, chart, materials, copy, printer } = context;
  const colors = Object.fromEntries(design.yarns.map(({ id, color }) => [codeOf(id), color]));
  const drawn = drawOnItsWall({
    chart,
    geometry: hangingGeometry(design, materials.gauge, fringeMm(design.columns, design.fringe)),
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

/** As large as fits, in the middle; null where the design has none, or one that can't be read. */
function photographIn({ design, printer, copy }: PatternContext, wall: Area): Item | null {
  const { cover } = design.pattern ?? {};
  const photograph = cover && printedPicture({ mediaType: cover.mediaType, base64: cover.picture });
  if (!photograph) return null;
  const { widthPx, heightPx, mediaType, bytes } = photograph;
  const scale = Math.min(wall.width / widthPx, wall.height / heightPx);
  const [width, height] = [widthPx * scale, heightPx * scale];
  return {
    kind: 'image',
    x: wall.x + (wall.width - width) / 2,
    y: wall.y + (wall.height - height) / 2,
    width,
    height,
    mediaType,
    bytes,
    alt: coverWords[copy.language].photograph(printer.printable(design.title)),
  };
}

function facts({ materials, units, figures, copy }: PatternContext, area: Area): Item[] {
  const words = coverWords[copy.language];
  const { finished, totals } = materials;
  const width = figures.length(finished.widthMm);
  const height = figures.length(finished.knottedHeightMm);
  // One unit is enough for both: '30 × 34.6 cm'.
  const alike = units === 'metric' && width.endsWith(' cm') && height.endsWith(' cm');
  const list = [
    [words.size, `${alike ? width.slice(0, -3) : width} × ${height}`],
    [words.cordsAndRows, `${figures.count(materials.columns)} × ${figures.count(materials.rows)}`],
    [words.yarns, figures.count(materials.yarns.length)],
    [words.time, words.about(figures.time(totals.seconds))],
  ] as const;
  // The size takes more room than the others.
  const shares = units === 'both' ? [0.46, 0.2, 0.11, 0.23] : [0.32, 0.25, 0.15, 0.28];
  let x = area.x;
  return list.flatMap(([name, value], i) => {
    const room = shares[i]! * area.width;
    const sizeMm = sizeToFit(value, 'serif-bold', 5, room - 3);
    const items = [
      label(x, area.y + 7, name, { sizeMm: sizes.small, color: inks.soft, role: 'paragraph' }),
      label(x, area.y + 13.4, value, { face: 'serif-bold', sizeMm }),
    ];
    x += room;
    return items;
  });
}
