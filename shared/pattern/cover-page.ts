/** The cover: title, designer, the finished hanging as large as the sheet allows, and what it takes in one line. */

import { COTTON } from '../chart/hanging/cotton.ts';
import { drawHanging } from '../chart/hanging/draw-hanging.ts';
import { hangingGeometry } from '../chart/hanging/geometry.ts';
import { codeOf } from '../design/codes.ts';
import { fringeMm } from '../gauge/fringe.ts';
import { formatLength } from '../units/length.ts';
import { formatTime } from '../units/time.ts';
import { hexToOkLab } from '../yarn/colour.ts';
import { textWidthMm, wrapText } from './faces/measure-text.ts';
import { label } from './label.ts';
import type { Item } from './page.ts';
import type { Draft } from './page-foot.ts';
import { type Area, bodyOf } from './papers.ts';
import type { PatternContext } from './pattern-input.ts';
import { inks, LEADING, sizes } from './style.ts';
import { mixed } from './tones.ts';

/** The line of facts, which takes the place of the foot. */
const FACTS_MM = 12;
const BAND_MM = 2.4;
const BYLINE_MM = 4;

export function coverPage(context: PatternContext): Draft {
  const { sheet } = context;
  const area = bodyOf(sheet);
  const names = titleAndDesigner(context, area);
  const panelY = names.bottom + BAND_MM + 1.2;
  const panel: Area = { ...area, y: panelY, height: area.y + area.height - FACTS_MM - panelY };
  return {
    sheet,
    title: 'Cover',
    withoutFoot: true,
    items: [
      ...names.items,
      ...yarnBand(context, { ...area, y: names.bottom, height: BAND_MM }),
      ...hangingOnItsWall(context, panel),
      ...facts(context, area),
    ],
  };
}

function titleAndDesigner(
  { design, printer }: PatternContext,
  area: Area,
): { items: Item[]; bottom: number } {
  const title = titleLines(printer.printable(design.title, 'serif-bold'), area.width);
  const designer = printer.printable(design.designer);
  const byline = designer ? wrapText(`designed by ${designer}`, 'sans', BYLINE_MM, area.width) : [];
  const items: Item[] = [];
  let y = area.y - title.sizeMm * 0.21;
  title.lines.forEach((line, i) => {
    y += title.sizeMm * 1.16;
    const role = i === 0 ? ({ role: 'title' } as const) : {};
    items.push(label(area.x, y, line, { face: 'serif-bold', sizeMm: title.sizeMm, ...role }));
  });
  y += 2.6;
  byline.forEach((line, i) => {
    y += BYLINE_MM * LEADING;
    const role = i === 0 ? ({ role: 'paragraph' } as const) : {};
    items.push(label(area.x, y, line, { sizeMm: BYLINE_MM, color: inks.soft, ...role }));
  });
  return { items, bottom: y + 6 };
}

/** As large as fits on two lines, at most; a very long title goes on in smaller lines. */
function titleLines(title: string, width: number): { lines: string[]; sizeMm: number } {
  for (const [sizeMm, most] of [
    [15, 1],
    [12, 1],
    [12, 2],
    [9, 2],
    [7, 4],
  ] as const) {
    const lines = wrapText(title, 'serif-bold', sizeMm, width);
    if (lines.length <= most) return { lines, sizeMm };
  }
  return { lines: wrapText(title, 'serif-bold', 5.5, width), sizeMm: 5.5 };
}

/** The yarns side by side, each as wide as its share of the knots. */
function yarnBand({ materials }: PatternContext, band: Area): Item[] {
  const { yarns, totals } = materials;
  let x = band.x;
  const shares = yarns.map(({ color, knots }): Item => {
    const width = (band.width * knots) / Math.max(totals.knots, 1);
    const item: Item = { kind: 'box', x, y: band.y, width, height: band.height, fill: color };
    x += width;
    return item;
  });
  // A hairline keeps a white yarn in sight.
  return [...shares, { kind: 'box', ...band, stroke: inks.hair, strokeMm: 0.1 }];
}

/**
 * The wall behind the hanging: the design's own ground, paler where it is dark, and a shade deeper where it is pale,
 * so that pale cords stand out.
 */
function wallColor(ground: string): string {
  return hexToOkLab(ground).l > 0.75
    ? mixed(mixed(ground, '#77797a', 0.3), inks.paper, 0.3)
    : mixed(mixed(ground, inks.linen, 0.7), inks.paper, 0.3);
}

function hangingOnItsWall({ design, chart, materials }: PatternContext, panel: Area): Item[] {
  const colors = Object.fromEntries(design.yarns.map(({ id, color }) => [codeOf(id), color]));
  const ground = colors[codeOf(design.ground)] ?? inks.linen;
  const geometry = hangingGeometry(design, materials.gauge, fringeMm(design.columns, design.fringe));
  const pad = 9;
  const box = {
    x: panel.x + pad,
    y: panel.y + pad,
    width: panel.width - 2 * pad,
    height: panel.height - 2 * pad,
  };
  return [
    { kind: 'box', ...panel, fill: wallColor(ground) },
    ...drawHanging({ chart, geometry, colors, cordColor: COTTON, box }),
  ];
}

function facts({ materials, units }: PatternContext, area: Area): Item[] {
  const { finished, totals } = materials;
  const width = formatLength(finished.widthMm, units);
  const height = formatLength(finished.knottedHeightMm, units);
  // One unit is enough for both: '30 × 34.6 cm'.
  const alike = units === 'metric' && width.endsWith(' cm') && height.endsWith(' cm');
  const list = [
    ['knotted picture', `${alike ? width.slice(0, -3) : width} × ${height}`],
    ['cords × rows', `${materials.columns} × ${materials.rows}`],
    ['yarns', String(materials.yarns.length)],
    ['time', `about ${formatTime(totals.seconds)}`],
  ] as const;
  // The size takes more room than the others.
  const shares = units === 'both' ? [0.5, 0.2, 0.1, 0.2] : [0.34, 0.24, 0.14, 0.28];
  let x = area.x;
  const y = area.y + area.height - FACTS_MM + 9;
  return list.flatMap(([name, value], i) => {
    const room = shares[i]! * area.width;
    const items = [
      label(x, y, name, { sizeMm: sizes.small, color: inks.soft, role: 'paragraph' }),
      label(x, y + 6.6, value, { face: 'serif-bold', sizeMm: sizeToFit(value, 5, room - 2) }),
    ];
    x += room;
    return items;
  });
}

/** `sizeMm`, or less where the text would be wider than `width`. */
function sizeToFit(text: string, sizeMm: number, width: number): number {
  return sizeMm * Math.min(1, width / textWidthMm(text, 'serif-bold', sizeMm));
}
