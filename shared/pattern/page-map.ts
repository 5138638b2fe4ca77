/** All chart pages as small boxes with their numbers, this one filled. */

import { label } from './label.ts';
import type { Item, PlainItem } from './page.ts';
import type { MapScale } from './print-scale.ts';
import { longest, type Split } from './split-chart.ts';
import { stamped } from './stamped.ts';
import { inks } from './style.ts';

interface MapPlace {
  /** Top left corner of the map with its heading. */
  readonly x: number;
  readonly y: number;
  readonly heading: string;
  /** Of the page that it stands on. */
  readonly accent: string;
  readonly scale: MapScale;
  /** Em of the heading, and what it takes. */
  readonly headingMm: number;
  readonly headMm: number;
}

/** `acrossAt`, `downAt` (from 0): the page that it stands on. */
export function pageMap(
  firstPage: number,
  split: Split,
  acrossAt: number,
  downAt: number,
  { x, y, heading, accent, scale, headingMm, headMm }: MapPlace,
): Item[] {
  const top = y + headMm;
  const across = split.across.length;
  const down = split.down.length;
  const cellAspect =
    (longest(split.across) * split.cellWidth) / Math.max(longest(split.down) * split.cellHeight, 0.001);
  const height = Math.min(
    (scale.height - headMm - 0.6) / down,
    scale.width / across / cellAspect,
    scale.mostBoxMm,
  );
  // Pages of a very long or very wide chart are not drawn in proportion: their boxes would be slivers.
  const width = Math.max(height * cellAspect, Math.min(5, scale.width / across));
  const digits = String(firstPage + across * down - 1).length;
  const hasRoom = scale.numberMm <= Math.min(height * 0.85, width / (0.6 * digits + 0.3));
  const numberMm = hasRoom ? scale.numberMm : 0;
  const frame: Frame = { x, y: top, width, height, numberMm, accent };
  const pages = Array.from({ length: down }, (_, d) =>
    Array.from({ length: across }, (_, a) => pageBox(frame, firstPage + d * across + a, a, d, false)),
  );
  const headed = label(x, y + headingMm * 0.8, heading, {
    face: 'serif-bold',
    sizeMm: headingMm,
    role: 'aside',
  });
  return [
    ...stamped([headed, ...pages.flat(2)], x, y),
    ...pageBox(frame, firstPage + downAt * across + acrossAt, acrossAt, downAt, true),
  ];
}

/** Of the map: its top left corner, the size of a page in it, and what pages are drawn with. */
interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** 0 where there is no room for numbers. */
  readonly numberMm: number;
  readonly accent: string;
}

function pageBox(frame: Frame, page: number, across: number, down: number, isHere: boolean): PlainItem[] {
  const { width, height, numberMm, accent } = frame;
  const box = { x: frame.x + across * width, y: frame.y + down * height, width, height };
  const drawn: PlainItem = {
    kind: 'box',
    ...box,
    fill: isHere ? accent : inks.paper,
    stroke: inks.soft,
    strokeMm: Math.min(0.25, height / 8),
  };
  if (numberMm === 0) return [drawn];
  const number = label(box.x + width / 2, box.y + height / 2 + numberMm * 0.355, String(page), {
    face: isHere ? 'sans-bold' : 'sans',
    sizeMm: numberMm,
    color: isHere ? inks.paper : inks.soft,
    align: 'center',
    role: 'aside',
  });
  return [drawn, number];
}
