/**
 * The finished hanging as an outline with its measures: dowel, picture and fringe, to scale. For the page on finishing and for the
 * papers that go with a hanging.
 */
import { type HungGeometry, legsY } from '../../chart/hanging/hung-geometry.ts';
import { type Box, type Place, placeIn } from '../../chart/hanging/place.ts';
import { textWidthMm } from '../faces/measure-text.ts';
import type { Figures } from '../flow/figures.ts';
import { label } from '../page/label.ts';
import type { PathStep, PlainItem } from '../page/page.ts';
import { inks, LEADING, ruleMm, sizes } from '../page/style.ts';
import { lighter } from '../page/tones.ts';

export interface OutlineInput {
  readonly geometry: HungGeometry;
  readonly figures: Pick<Figures, 'length'>;
  readonly accent: string;
  /** Em of the measures. */
  readonly sizeMm?: number;
  /** Outline and measures stay inside. */
  readonly box: Box;
}

/** Measures stand this far from what they measure. */
const OFF_MM = 3;

export interface Outline {
  readonly items: PlainItem[];
  readonly place: Place;
  /** Below the measures. */
  readonly bottom: number;
}

export function drawOutline({ geometry, figures, accent, sizeMm = sizes.small, box }: OutlineInput): Outline {
  const lineMm = sizeMm * LEADING;
  const { widthMm, heightMm, bounds, dowel } = geometry;
  const fringe = bounds.bottom - heightMm;
  const heights = [heightMm, ...(fringe > 0 ? [fringe] : [])].map((mm) => linesOf(figures.length(mm)));
  const beside = heights.flat().reduce((most, text) => Math.max(most, widthOf(text, sizeMm)), 0) + OFF_MM + 4;
  const width = linesOf(figures.length(widthMm));
  const below = OFF_MM + width.length * lineMm + 6;
  const room: Box = {
    x: box.x,
    y: box.y,
    width: Math.max(box.width - beside, 1),
    height: Math.max(box.height - below, 1),
  };
  const place = placeIn(room, geometry);
  const right = place.x(Math.max(widthMm, dowel.x + dowel.length)) + OFF_MM;
  const [top, last, end] = [place.y(0), place.y(heightMm), place.y(bounds.bottom)];
  const stretches = [[top, last] as const, ...(fringe > 0 ? [[last, end] as const] : [])];
  const placed = apart(
    stretches.map(([from, to], i) => ({ middle: (from + to) / 2, height: heights[i]!.length * lineMm })),
  );
  const lowest = placed.reduce((most, { middle, height }) => Math.max(most, middle + height / 2), end);
  const bottom = Math.max(end + OFF_MM, lowest + 1);
  return {
    place,
    bottom: bottom + width.length * lineMm + 2,
    items: [
      ...shape(geometry, place, accent),
      ...stretches.flatMap(([from, to], i) =>
        upright({ x: right, from, to }, heights[i]!, placed[i]!.middle, sizeMm),
      ),
      ...level({ from: place.x(0), to: place.x(widthMm), y: bottom }, width, box, sizeMm),
    ],
  };
}

/** Figures one below the other, moved away from each other where they would overlap. */
function apart(figures: readonly { middle: number; height: number }[]): { middle: number; height: number }[] {
  const [first, second] = figures;
  if (!first || !second) return [...figures];
  const lacking = (first.height + second.height) / 2 + 0.6 - (second.middle - first.middle);
  if (lacking <= 0) return [first, second];
  return [
    { ...first, middle: first.middle - lacking / 2 },
    { ...second, middle: second.middle + lacking / 2 },
  ];
}

/** '34.5 cm (13 1/2 in)' on two lines. */
function linesOf(measure: string): string[] {
  return measure.split(/ (?=\()/);
}

function widthOf(text: string, sizeMm: number): number {
  return textWidthMm(text, 'sans-bold', sizeMm);
}

function shape(geometry: HungGeometry, place: Place, accent: string): PlainItem[] {
  const { widthMm, heightMm, dowel, hanger: h, cordEndsMm, pitchMm, headsX } = geometry;
  const line = { stroke: inks.text, strokeMm: 0.3 };
  const rise = place.y(h.y + ((h.topY - h.y) * 4) / 3);
  const reach = (share: number) => place.x(h.fromX + (h.toX - h.fromX) * share);
  const height = dowel.diameter * place.scale;
  const ends = cordEndsMm.map(
    (end, column): PathStep => ['L', place.x((column + 0.5) * pitchMm), place.y(end)],
  );
  const outline: PathStep[] = [
    ['M', place.x(0), place.y(heightMm)],
    ['L', place.x(0), place.y(cordEndsMm[0] ?? heightMm)],
    ...ends,
    ['L', place.x(widthMm), place.y(cordEndsMm.at(-1) ?? heightMm)],
    ['L', place.x(widthMm), place.y(heightMm)],
  ];
  return [
    {
      kind: 'path',
      steps: [
        ['M', place.x(h.fromX), place.y(h.y)],
        ['C', reach(0.3), rise, reach(0.7), rise, place.x(h.toX), place.y(h.y)],
      ],
      stroke: inks.soft,
      strokeMm: 0.3,
    },
    // Heads and cords, down to row 1.
    {
      kind: 'path',
      steps: [
        ['M', place.x(headsX[0]), place.y(dowel.y)],
        ['L', place.x(headsX[1]), place.y(dowel.y)],
        ['L', place.x(headsX[1]), place.y(legsY(geometry))],
        ['L', place.x(widthMm), place.y(0)],
        ['L', place.x(0), place.y(0)],
        ['L', place.x(headsX[0]), place.y(legsY(geometry))],
        ['Z'],
      ],
      fill: inks.linen,
      ...line,
    },
    {
      kind: 'box',
      x: place.x(dowel.x),
      y: place.y(dowel.y),
      width: dowel.length * place.scale,
      height,
      radius: height / 2,
      fill: inks.paper,
      ...line,
    },
    { kind: 'path', steps: outline, fill: inks.linen, ...line },
    {
      kind: 'box',
      x: place.x(0),
      y: place.y(0),
      width: widthMm * place.scale,
      height: heightMm * place.scale,
      fill: lighter(accent, 0.85),
      ...line,
    },
  ];
}

/** A measure from top to bottom, its figure at the right. */
function upright(
  { x, from: top, to: bottom }: { x: number; from: number; to: number },
  lines: readonly string[],
  middle: number,
  sizeMm: number,
): PlainItem[] {
  const lineMm = sizeMm * LEADING;
  const first = middle - ((lines.length - 1) * lineMm) / 2 + sizeMm * 0.36;
  return [
    measure([
      ['M', x, top],
      ['L', x, bottom],
      ['M', x - 1, top],
      ['L', x + 1, top],
      ['M', x - 1, bottom],
      ['L', x + 1, bottom],
    ]),
    ...lines.map((text, i) => label(x + 2, first + i * lineMm, text, { face: 'sans-bold', sizeMm })),
  ];
}

/** A measure from left to right, its figure below, within the box. */
function level(
  { from: left, to: right, y }: { from: number; to: number; y: number },
  lines: readonly string[],
  box: Box,
  sizeMm: number,
): PlainItem[] {
  return [
    measure([
      ['M', left, y],
      ['L', right, y],
      ['M', left, y - 1],
      ['L', left, y + 1],
      ['M', right, y - 1],
      ['L', right, y + 1],
    ]),
    ...lines.map((text, i) => {
      const half = widthOf(text, sizeMm) / 2;
      const middle = Math.min(Math.max((left + right) / 2, box.x + half), box.x + box.width - half);
      return label(middle, y + 1 + (i + 1) * sizeMm * LEADING, text, {
        face: 'sans-bold',
        sizeMm,
        align: 'center',
      });
    }),
  ];
}

function measure(steps: PathStep[]): PlainItem {
  return { kind: 'path', steps, stroke: inks.text, strokeMm: ruleMm.thin };
}
