/** The marks that say which page goes on where: beside the chart's edges, and in words at the foot. */

import { textWidthMm } from '../faces/measure-text.ts';
import { label } from '../page/label.ts';
import type { Item, PathStep, TextItem } from '../page/page.ts';
import type { Side } from '../words/chart-words.ts';
import { arrow, cordNumbersMm } from './chart-block.ts';
import type { Split, Stretch } from './split-chart.ts';

/** Page numbers of the pages around this one; 0 where there is none. */
export interface Neighbours {
  readonly left: number;
  readonly right: number;
  readonly above: number;
  readonly below: number;
}

/** Those that are there, in the order in which they are told. */
export function neighbourList({ left, right, above, below }: Neighbours): [side: Side, page: number][] {
  const sides: [Side, number][] = [
    ['left', left],
    ['right', right],
    ['above', above],
    ['below', below],
  ];
  return sides.filter(([, page]) => page > 0);
}

interface Placed {
  readonly x: number;
  readonly y: number;
  readonly across: Stretch;
  readonly down: Stretch;
  readonly split: Split;
  /** 'page 6'. */
  readonly joins: (page: number) => string;
  readonly sizeMm: number;
  readonly accent: string;
  /** Em of the cords' numbers, which lie between the marks and the cells. */
  readonly numberMm: number;
}

/** 'page 6' and an arrow, outside the numbers, at the corner or middle next to that page. */
export function joinMarks(pages: Neighbours, placed: Placed): Item[] {
  const { x, y, across, down, split, joins, sizeMm, numberMm, accent } = placed;
  const numbersMm = cordNumbersMm(numberMm);
  const width = (across.end - across.first) * split.cellWidth;
  const height = (down.end - down.first) * split.cellHeight;
  const aboveY = y - numbersMm - sizeMm * 0.5;
  const belowY = y + height + numbersMm + sizeMm * 1.15;
  const text = (page: number, at: number, baseline: number, align: TextItem['align']): Item =>
    label(at, baseline, joins(page), {
      face: 'sans-bold',
      sizeMm,
      color: accent,
      align,
      role: 'aside',
    });
  const mark = (steps: PathStep[]): Item => ({
    kind: 'path',
    steps,
    stroke: accent,
    strokeMm: 0.3,
    cap: 'round',
  });
  const level = sizeMm * 0.32;
  const shaftMm = sizeMm * 1.1;
  const items: Item[] = [];
  for (const baseline of [aboveY, belowY]) {
    if (pages.left) {
      items.push(
        mark(arrow(x + shaftMm, x, baseline - level, sizeMm)),
        text(pages.left, x + shaftMm + 1, baseline, 'left'),
      );
    }
    if (pages.right) {
      const end = x + width;
      items.push(
        mark(arrow(end - shaftMm, end, baseline - level, sizeMm)),
        text(pages.right, end - shaftMm - 1, baseline, 'right'),
      );
    }
  }
  for (const [page, baseline, way] of [
    [pages.above, aboveY, -1],
    [pages.below, belowY, 1],
  ] as const) {
    if (!page) continue;
    const middle = x + width / 2;
    const half = textWidthMm(joins(page), 'sans-bold', sizeMm) / 2;
    items.push(
      mark(upright(middle - half - sizeMm * 0.2, baseline, way, sizeMm)),
      text(page, middle + 1, baseline, 'center'),
    );
  }
  return items;
}

/** An arrow up (-1) or down (1) beside a line of text. */
function upright(x: number, baseline: number, way: 1 | -1, sizeMm: number): PathStep[] {
  const from = baseline - sizeMm * (way === 1 ? 0.82 : -0.07);
  const to = baseline - sizeMm * (way === 1 ? -0.07 : 0.82);
  const wing = sizeMm * 0.24;
  return [
    ['M', x, from],
    ['L', x, to],
    ['M', x - wing, to - way * wing * 1.15],
    ['L', x, to],
    ['L', x + wing, to - way * wing * 1.15],
  ];
}
