/**
 * A picture of the finished hanging as page items: dowel, lark's heads, cords, knots, fringe. One path for each tone
 * of a yarn, so that a large hanging stays small on paper. Where a knot would be printed too small to be seen, cells
 * of one yarn are merged and rows only shaded.
 */

import { BARE } from '../../design/codes.ts';
import type { CellsItem, Item, PathStep } from '../../pattern/page/page.ts';
import { darker, lighter } from '../../pattern/page/tones.ts';
import { type Chart, goesRight } from '../chart.ts';
import { cordX, type HangingGeometry } from './geometry.ts';
import { BAR_IN_CORDS, cordXAt, type HungGeometry, LEG_IN_CORDS, legsY } from './hung-geometry.ts';
import { type Box, type Place, placeIn } from './place.ts';

export interface HangingPicture {
  readonly chart: Chart;
  readonly geometry: HungGeometry;
  /** By code, as #rrggbb. */
  readonly colors: Readonly<Record<number, string>>;
  readonly cordColor: string;
  /** The hanging is drawn as large as fits into this box, in its middle; in mm on the page. */
  readonly box: Box;
}

/** Printed width of a cell below which single knots are not drawn, in mm: value from trying it on paper. */
const KNOT_SEEN_FROM_MM = 1.2;

const wood = { shade: '#8f5f33', body: '#c08a52', light: '#dcb184', grain: '#99683a' };

export function drawHanging({ chart, geometry, colors, cordColor, box }: HangingPicture): Item[] {
  const place = placeIn(box, geometry);
  const cellWidth = geometry.pitchMm * place.scale;
  const knots = cellWidth < KNOT_SEEN_FROM_MM ? mergedKnots : knotsOneByOne;
  return [
    ...hanger(geometry, place, cordColor),
    ...cords(chart, geometry, place, cordColor),
    ...dowel(geometry, place),
    ...heads(geometry, place, cordColor),
    ...knots(chart, geometry, place, colors),
  ];
}

/** A rope seen from the side: a dark edge, the body, and a light down its left. */
function rope(steps: readonly PathStep[], widthMm: number, color: string): Item[] {
  const stroke = (tone: string, share: number): Item => ({
    kind: 'path',
    steps,
    stroke: tone,
    strokeMm: widthMm * share,
    cap: 'round',
  });
  return [stroke(darker(color, 0.3), 1), stroke(lighter(color, 0.06), 0.74)];
}

function hanger({ hanger: h, cordMm }: HangingGeometry, place: Place, color: string): Item[] {
  const steps: PathStep[] = [
    ['M', place.x(h.fromX), place.y(h.y)],
    [
      'C',
      place.x(h.fromX + (h.toX - h.fromX) * 0.3),
      // A curve's highest point lies at three quarters of its handles' height.
      place.y(h.y + ((h.topY - h.y) * 4) / 3),
      place.x(h.fromX + (h.toX - h.fromX) * 0.7),
      place.y(h.y + ((h.topY - h.y) * 4) / 3),
      place.x(h.toX),
      place.y(h.y),
    ],
  ];
  return rope(steps, cordMm * place.scale * 0.8, darker(color, 0.12));
}

/** From their heads to row 1, and straight down to the ends of the fringe. */
function cords(chart: Chart, geometry: HungGeometry, place: Place, color: string): Item[] {
  const { cordMm, cordEndsMm, pitchMm, legX } = geometry;
  const top = place.y(legsY(geometry));
  const steps = cordEndsMm.flatMap((end, column): PathStep[] => {
    const x = place.x(cordX(geometry, column));
    // The round end of the stroke reaches beyond its last point by half its width.
    return [
      ['M', place.x(legX[column]!), top],
      ['L', x, place.y(0)],
      ['L', x, Math.max(place.y(0), place.y(end - cordMm / 2))],
    ];
  });
  const widthMm = Math.min(cordMm, pitchMm * 0.9) * place.scale;
  return [
    ...rope(steps, widthMm, color),
    ...(widthMm < TWIST_SEEN_FROM_MM ? [] : [twist(chart, geometry, place, { widthMm, color })]),
  ];
}

/** Printed width of a cord below which its plies are not drawn, in mm: value from trying it on paper. */
const TWIST_SEEN_FROM_MM = 0.9;

/** The plies of the cords where they are seen: below the heads, in the fringe, and in bare cells. Two plies to a cord's width. */
function twist(
  { columns, rows, cells }: Chart,
  geometry: HungGeometry,
  place: Place,
  { widthMm, color }: { widthMm: number; color: string },
): Item {
  const { cordEndsMm, rowHeightMm, cordMm } = geometry;
  const half = widthMm * 0.3;
  const steps: PathStep[] = [];
  for (let column = 0; column < columns; column++) {
    const end = cordEndsMm[column]! - cordMm * 0.9;
    for (let y = legsY(geometry) + cordMm; y < end; y += cordMm * 0.62) {
      const row = Math.floor(y / rowHeightMm);
      if (row >= 0 && row < rows && cells[row * columns + column] !== BARE) continue;
      const [x, at] = [place.x(cordXAt(geometry, column, y)), place.y(y)];
      steps.push(['M', x - half, at + half * 0.75], ['L', x + half, at - half * 0.75]);
    }
  }
  return { kind: 'path', steps, stroke: darker(color, 0.22), strokeMm: widthMm * 0.1, cap: 'round' };
}

function dowel({ dowel: d }: HangingGeometry, place: Place): Item[] {
  const x = place.x(d.x);
  const y = place.y(d.y);
  const width = d.length * place.scale;
  const height = d.diameter * place.scale;
  const radius = height / 2;
  const line = (share: number, from: number, to: number): PathStep[] => [
    ['M', x + width * from, y + height * share],
    ['L', x + width * to, y + height * share],
  ];
  return [
    { kind: 'box', x, y, width, height, radius, fill: wood.shade },
    { kind: 'box', x, y, width, height: height * 0.84, radius: radius * 0.84, fill: wood.body },
    {
      kind: 'path',
      steps: line(0.24, radius / width, 1 - radius / width),
      stroke: wood.light,
      strokeMm: height * 0.16,
      cap: 'round',
    },
    {
      kind: 'path',
      steps: [...line(0.5, 0.03, 0.31), ...line(0.62, 0.22, 0.64), ...line(0.46, 0.55, 0.94)],
      stroke: wood.grain,
      strokeMm: Math.max(height * 0.035, 0.05),
      opacity: 0.5,
    },
  ];
}

/** Two wraps over the dowel for each cut cord, and the bar that lies across them. */
function heads({ heads: all, dowel: d, cordMm }: HungGeometry, place: Place, color: string): Item[] {
  const wraps: PathStep[] = [];
  const bars: PathStep[] = [];
  const below = d.y + d.diameter;
  const barY = place.y(below + BAR_IN_CORDS * cordMm);
  for (const head of all) {
    const reach = (head.width - cordMm) / 2;
    for (const side of [-1, 1]) {
      const x = place.x(head.x + side * LEG_IN_CORDS * cordMm);
      wraps.push(['M', x, place.y(d.y + cordMm * 0.1)], ['L', x, place.y(below + cordMm * 0.8)]);
    }
    bars.push(['M', place.x(head.x - reach), barY], ['L', place.x(head.x + reach), barY]);
  }
  const width = cordMm * place.scale;
  return [...rope(wraps, width, color), ...rope(bars, width, color)];
}

/** Each knot as two turns, one above the other, leaning with the row's direction. */
function knotsOneByOne(
  chart: Chart,
  geometry: HangingGeometry,
  place: Place,
  colors: HangingPicture['colors'],
): Item[] {
  const width = geometry.pitchMm * place.scale;
  const height = geometry.rowHeightMm * place.scale;
  const thick = Math.min(height * 0.44, width * 0.8);
  const half = Math.max(width * 0.49 - thick / 2, 0.001);
  const upper = new Map<number, PathStep[]>();
  const lower = new Map<number, PathStep[]>();
  for (let r = 0; r < chart.rows; r++) {
    const lean = (goesRight(chart.startCorner, r) ? -1 : 1) * height * 0.07;
    const y = place.y(r * geometry.rowHeightMm);
    for (let c = 0; c < chart.columns; c++) {
      const code = chart.cells[r * chart.columns + c]!;
      if (code === BARE) continue;
      const x = place.x(cordX(geometry, c));
      turn(upper, code, x, y + height * 0.27, half, lean);
      turn(lower, code, x, y + height * 0.73, half, lean);
    }
  }
  const paths = (turns: Map<number, PathStep[]>, tone: (color: string) => string): Item[] =>
    [...turns].map(([code, steps]) => ({
      kind: 'path',
      steps,
      stroke: tone(colors[code]!),
      strokeMm: thick,
      cap: 'round',
    }));
  return [
    cellsItem(chart, geometry, place, colors, (color) => darker(color, 0.3)),
    ...paths(upper, (color) => lighter(color, 0.1)),
    ...paths(lower, (color) => color),
  ];
}

function turn(
  turns: Map<number, PathStep[]>,
  code: number,
  x: number,
  y: number,
  half: number,
  lean: number,
) {
  let steps = turns.get(code);
  if (!steps) {
    steps = [];
    turns.set(code, steps);
  }
  steps.push(['M', x - half, y - lean], ['L', x + half, y + lean]);
}

/** Flat cells, with the rows and cords told apart by thin shades. */
function mergedKnots(
  chart: Chart,
  geometry: HangingGeometry,
  place: Place,
  colors: HangingPicture['colors'],
): Item[] {
  const rows: PathStep[] = [];
  for (const { row, from, to } of tiedStretches(chart)) {
    const y = place.y((row + 0.94) * geometry.rowHeightMm);
    rows.push(['M', place.x(from * geometry.pitchMm), y], ['L', place.x(to * geometry.pitchMm), y]);
  }
  return [
    cellsItem(chart, geometry, place, colors, (color) => color),
    {
      kind: 'path',
      steps: rows,
      stroke: '#1a120b',
      strokeMm: geometry.rowHeightMm * place.scale * 0.2,
      dashMm: [geometry.pitchMm * place.scale * 0.78, geometry.pitchMm * place.scale * 0.22],
      opacity: 0.22,
    },
  ];
}

/** In each row, the stretches without a bare cell: `from` up to but not including `to`. */
function* tiedStretches({
  columns,
  rows,
  cells,
}: Chart): Generator<{ row: number; from: number; to: number }> {
  for (let row = 0; row < rows; row++) {
    for (let c = 0; c < columns; c++) {
      if (cells[row * columns + c] === BARE) continue;
      const from = c;
      while (c < columns && cells[row * columns + c] !== BARE) c++;
      yield { row, from, to: c };
    }
  }
}

function cellsItem(
  { columns, rows, cells }: Chart,
  { pitchMm, rowHeightMm }: HangingGeometry,
  place: Place,
  colors: HangingPicture['colors'],
  tone: (color: string) => string,
): CellsItem {
  return {
    kind: 'cells',
    x: place.x(0),
    y: place.y(0),
    cellWidth: pitchMm * place.scale,
    cellHeight: rowHeightMm * place.scale,
    columns,
    rows,
    codes: cells,
    inks: Object.fromEntries(
      Object.entries(colors).map(([code, color]) => [code, { fill: tone(color), ink: color }]),
    ),
  };
}
