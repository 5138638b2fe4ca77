/** The cover: title, designer, the finished hanging as large as the sheet allows, and what it takes in one line. */

import { drawHanging } from '../chart/hanging/draw-hanging.ts';
import { hangingGeometry } from '../chart/hanging/geometry.ts';
import { codeOf } from '../design/codes.ts';
import { fringeMm } from '../gauge/fringe.ts';
import { formatLength } from '../units/length.ts';
import { formatTime } from '../units/time.ts';
import { fitText, wrapText } from './faces/measure-text.ts';
import { label } from './label.ts';
import type { Item } from './page.ts';
import type { Draft } from './page-foot.ts';
import { type Area, bodyOf } from './papers.ts';
import type { PatternContext } from './pattern-input.ts';
import { inks, sizes } from './style.ts';
import { mixed } from './tones.ts';

const FACTS_MM = 21;

export function coverPage(context: PatternContext): Draft {
  const { design, sheet, printer } = context;
  const area = bodyOf(sheet);
  const title = titleLines(printer.printable(design.title, 'serif-bold'), area.width);
  const titleY = area.y + title.sizeMm * 0.95;
  const leading = title.sizeMm * 1.16;
  const designer = printer.printable(design.designer);
  const bylineY = titleY + (title.lines.length - 1) * leading + (designer ? 8 : 0);
  const bandY = bylineY + 6;
  const panel: Area = {
    x: area.x,
    y: bandY + 2.4,
    width: area.width,
    height: area.y + area.height - FACTS_MM - bandY - 2.4,
  };
  const byline = fitText(`designed by ${designer}`, 'sans', sizes.heading * 0.86, area.width);
  return {
    sheet,
    title: 'Cover',
    items: [
      ...title.lines.map((line, i) =>
        label(area.x, titleY + i * leading, line, {
          face: 'serif-bold',
          sizeMm: title.sizeMm,
          ...(i === 0 && { role: 'title' }),
        }),
      ),
      ...(designer
        ? [
            label(area.x, bylineY, byline, {
              sizeMm: sizes.heading * 0.86,
              color: inks.soft,
              role: 'paragraph',
            }),
          ]
        : []),
      ...yarnBand(context, { x: area.x, y: bandY, width: area.width, height: 2.4 }),
      ...hangingOnItsWall(context, panel),
      ...facts(context, area),
    ],
  };
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
  return yarns.map(({ color, knots }): Item => {
    const width = (band.width * knots) / Math.max(totals.knots, 1);
    const item: Item = { kind: 'box', x, y: band.y, width, height: band.height, fill: color };
    x += width;
    return item;
  });
}

/** A wall in the palest tone of the design's own ground, and the hanging on it. */
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
    { kind: 'box', ...panel, fill: mixed(mixed(ground, inks.linen, 0.7), inks.paper, 0.35) },
    ...drawHanging({ chart, geometry, colors, cordColor: ground, box }),
  ];
}

function facts({ materials, units }: PatternContext, area: Area): Item[] {
  const { finished, totals } = materials;
  const across = formatLength(finished.widthMm, units);
  const width = units === 'metric' ? across.replace(/ cm$/, '') : across;
  const list = [
    ['knotted picture', `${width} × ${formatLength(finished.knottedHeightMm, units)}`],
    ['cords × rows', `${materials.columns} × ${materials.rows}`],
    ['yarns', String(materials.yarns.length)],
    ['time', `about ${formatTime(totals.seconds)}`],
  ] as const;
  // The size takes more room than the others.
  const shares = units === 'both' ? [0.5, 0.2, 0.1, 0.2] : [0.34, 0.24, 0.14, 0.28];
  let x = area.x;
  const y = area.y + area.height - FACTS_MM + 9;
  return list.flatMap(([name, value], i) => {
    const width = shares[i]! * area.width;
    const items = [
      label(x, y, name, { sizeMm: sizes.small, color: inks.soft, role: 'paragraph' }),
      label(x, y + 6.6, fitText(value, 'serif-bold', 5, width - 2), { face: 'serif-bold', sizeMm: 5 }),
    ];
    x += width;
    return items;
  });
}
