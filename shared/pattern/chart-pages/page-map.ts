/** All chart pages as small boxes with their numbers, this one framed; filled, where there is no room for numbers. */

import { label } from '../page/label.ts';
import type { Item, PlainItem } from '../page/page.ts';
import type { Area } from '../page/papers.ts';
import { stamped } from '../page/stamped.ts';
import { inks } from '../page/style.ts';
import type { MapScale } from './print-scale.ts';
import { longest, type Split } from './split-chart.ts';

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
  const frame: Frame = { x, y: top, width, height, numberMm: scale.numberMm, accent };
  const places = Array.from({ length: down * across }, (_, i) =>
    boxAt(frame, i % across, Math.floor(i / across)),
  );
  const headed = label(x, y + headingMm * 0.8, heading, {
    face: 'serif-bold',
    sizeMm: headingMm,
    role: 'aside',
  });
  const numbers = places.map((box, i) => numberIn(frame, box, firstPage + i));
  return [
    ...stamped([headed, ...places.map((box) => pageBox(frame, box))], x, y),
    // Below the numbers, so that they can be written into the file once for all pages.
    hereBox(frame, places[downAt * across + acrossAt]!, hasRoom ? inks.linen : accent),
    ...(hasRoom ? stamped(numbers, x, y) : []),
  ];
}

/** Of the map: its top left corner, the size of a page in it, and what pages are drawn with. */
interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly numberMm: number;
  readonly accent: string;
}

function boxAt({ x, y, width, height }: Frame, across: number, down: number): Area {
  return { x: x + across * width, y: y + down * height, width, height };
}

function pageBox({ height }: Frame, box: Area): PlainItem {
  return {
    kind: 'box',
    ...box,
    fill: inks.paper,
    stroke: inks.soft,
    strokeMm: Math.min(0.25, height / 8),
  };
}

/** The page that the map stands on: a heavy frame, seen in one colour too. */
function hereBox({ height, width, accent }: Frame, { x, y }: Area, fill: string): PlainItem {
  const strokeMm = Math.min(0.8, height / 5, width / 5);
  return {
    kind: 'box',
    x: x + strokeMm / 2,
    y: y + strokeMm / 2,
    width: width - strokeMm,
    height: height - strokeMm,
    fill,
    stroke: accent,
    strokeMm,
  };
}

function numberIn({ numberMm }: Frame, { x, y, width, height }: Area, page: number): PlainItem {
  return label(x + width / 2, y + height / 2 + numberMm * 0.355, String(page), {
    sizeMm: numberMm,
    color: inks.text,
    align: 'center',
    role: 'aside',
  });
}
