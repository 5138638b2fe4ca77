/**
 * The template of the fringe as a drawing: the last row, the cords below it, and the line along which they are cut. It is drawn
 * in true size or to scale, whole or a window of it. In the template, x counts from the left edge of cord 1 and y from the
 * last row down, in mm.
 */
import { clipLine, type Point } from '../page/clip-line.ts';
import { label } from '../page/label.ts';
import type { PathStep, PlainItem } from '../page/page.ts';
import type { Area } from '../page/papers.ts';
import { inks, ruleMm } from '../page/style.ts';

export interface FringeTemplate {
  /** Of each cord, from left to right. */
  readonly lengthsMm: readonly number[];
  readonly pitchMm: number;
}

export interface PlacedTemplate {
  /** What of the template is drawn. */
  readonly window: Area;
  /** Where the window's upper left corner stands on the page. */
  readonly x: number;
  readonly y: number;
  /** Mm of the page to one of the template. */
  readonly scale: number;
  /** Of the line to cut along. */
  readonly accent: string;
  /** Em of the numbers of the cords; none where 0. */
  readonly numberMm: number;
}

/** What the numbers above the last row take, in mm of the page. */
export const NUMBERS_MM = 5;

export function templateSize({ lengthsMm, pitchMm }: FringeTemplate): { width: number; height: number } {
  return {
    width: lengthsMm.length * pitchMm,
    height: lengthsMm.reduce((a, b) => Math.max(a, b), 0),
  };
}

/** Whether a cord (from 0) is numbered and its length told: the first, each fifth, and the last. */
export function isTold(column: number, columns: number): boolean {
  return column === 0 || column === columns - 1 || (column + 1) % 5 === 0;
}

export function drawTemplate(template: FringeTemplate, placed: PlacedTemplate): PlainItem[] {
  const { lengthsMm } = template;
  const { window, accent } = placed;
  const middles = lengthsMm.map((_, column) => (column + 0.5) * template.pitchMm);
  const cords = (told: boolean) =>
    lengthsMm.flatMap((length, column) => {
      const x = middles[column]!;
      if (isTold(column, lengthsMm.length) !== told || !isWithin(x, window)) return [];
      return clipLine(
        [
          { x, y: 0 },
          { x, y: length },
        ],
        window,
      );
    });
  const { width } = templateSize(template);
  const lastRow = clipLine(
    [
      { x: 0, y: 0 },
      { x: width, y: 0 },
    ],
    window,
  );
  const line = (steps: readonly PathStep[], stroke: string, strokeMm: number): PlainItem[] =>
    steps.length === 0 ? [] : [{ kind: 'path', steps: moved(steps, placed), stroke, strokeMm }];
  return [
    ...line(cords(false), inks.hair, ruleMm.thin),
    ...line(cords(true), inks.soft, ruleMm.thin),
    ...line(lastRow, inks.text, ruleMm.fifth),
    ...line(clipLine(outline(template, middles), window), accent, 0.5),
    ...(window.y <= 0 && placed.numberMm > 0 ? numbers(middles, placed) : []),
  ];
}

/** A window holds what lies on its left edge, and leaves what lies on its right one to its neighbour. */
function isWithin(x: number, { x: left, width }: Area): boolean {
  return x >= left && x < left + width;
}

/** From edge to edge of the hanging. */
function outline({ lengthsMm, pitchMm }: FringeTemplate, middles: readonly number[]): Point[] {
  const points = lengthsMm.map((y, column): Point => ({ x: middles[column]!, y }));
  return [
    { x: 0, y: lengthsMm[0] ?? 0 },
    ...points,
    { x: lengthsMm.length * pitchMm, y: lengthsMm.at(-1) ?? 0 },
  ];
}

/** Above the last row; where they would stand too close, only as many as there is room for. */
function numbers(middles: readonly number[], { window, x, y, scale, numberMm }: PlacedTemplate): PlainItem[] {
  const items: PlainItem[] = [];
  let free = Number.NEGATIVE_INFINITY;
  middles.forEach((middle, column) => {
    if (!isTold(column, middles.length) || !isWithin(middle, window)) return;
    const at = x + (middle - window.x) * scale;
    const half = String(column + 1).length * numberMm * 0.3;
    if (at - half < free) return;
    free = at + half + 1;
    items.push(
      label(at, y - 1.2, String(column + 1), {
        sizeMm: numberMm,
        color: inks.soft,
        align: 'center',
        role: 'aside',
      }),
    );
  });
  return items;
}

function moved(steps: readonly PathStep[], { window, x, y, scale }: PlacedTemplate): PathStep[] {
  return steps.map((step): PathStep => {
    if (step[0] !== 'M' && step[0] !== 'L') return step;
    return [step[0], x + (step[1] - window.x) * scale, y + (step[2] - window.y) * scale];
  });
}
