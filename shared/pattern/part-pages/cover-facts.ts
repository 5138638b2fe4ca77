/**
 * The line of figures at the foot of the cover: size, cords and rows, yarns, time. Each is as wide as it needs, with equal gaps
 * between them; where they don't fit side by side, two stand below the other two. In both units the size has a line for each.
 */
import { textWidthMm } from '../faces/measure-text.ts';
import { sizeIn } from '../flow/size-in.ts';
import { label } from '../page/label.ts';
import type { Item } from '../page/page.ts';
import type { Area } from '../page/papers.ts';
import { sizeToFit } from '../page/size-to-fit.ts';
import { inks, type TypeScale, typeScales } from '../page/style.ts';
import type { PatternContext } from '../pattern-input.ts';
import { coverWords } from '../words/cover-words.ts';

export interface CoverFacts {
  readonly heightMm: number;
  readonly itemsAt: (top: number) => Item[];
}

interface Fact {
  readonly name: string;
  readonly value: string;
  /** Below the value; empty where there is no more to tell. */
  readonly more: string;
}

const GAP_MM = 6;

export function coverFacts(context: PatternContext, { x, width }: Pick<Area, 'x' | 'width'>): CoverFacts {
  const sizes = typeScales[context.copy.cells];
  const facts = factsOf(context);
  const widths = facts.map((fact) => widthOf(fact, sizes));
  const isOneLine = widths.reduce((sum, each) => sum + each + GAP_MM, -GAP_MM) <= width;
  const lines = isOneLine ? [facts] : [facts.slice(0, 2), facts.slice(2)];
  const places = isOneLine ? spread(widths, width) : [0, width / 2];
  const lineMm = lines.map((line) => heightOf(line, sizes));
  return {
    heightMm: lineMm.reduce((sum, each) => sum + each, 0),
    itemsAt: (top) =>
      lines.flatMap((line, row) => {
        const y = top + (row === 0 ? 0 : lineMm[0]!);
        return line.flatMap((fact, i) =>
          factAt(fact, x + places[i]!, y, isOneLine ? width : width / 2 - GAP_MM, sizes),
        );
      }),
  };
}

/** From the first at the left to the last at the right. */
function spread(widths: readonly number[], width: number): number[] {
  const gap = (width - widths.reduce((sum, each) => sum + each, 0)) / (widths.length - 1);
  let x = 0;
  return widths.map((each) => {
    const at = x;
    x += each + gap;
    return at;
  });
}

const ABOVE_MM = 4.2;

function valueMm({ lead }: TypeScale): number {
  return lead * 1.28;
}

function widthOf({ name, value, more }: Fact, sizes: TypeScale): number {
  return Math.max(
    textWidthMm(name, 'sans', sizes.small),
    textWidthMm(value, 'serif-bold', valueMm(sizes)),
    textWidthMm(more, 'sans', sizes.note),
  );
}

function heightOf(facts: readonly Fact[], sizes: TypeScale): number {
  const more = facts.some(({ more }) => more !== '') ? sizes.note * 1.6 : 0;
  return ABOVE_MM + sizes.small + valueMm(sizes) * 1.55 + more;
}

function factAt({ name, value, more }: Fact, x: number, y: number, room: number, sizes: TypeScale): Item[] {
  const nameY = y + ABOVE_MM + sizes.small;
  const valueY = nameY + valueMm(sizes) * 1.3;
  const sizeMm = sizeToFit(value, 'serif-bold', valueMm(sizes), room);
  return [
    label(x, nameY, name, { sizeMm: sizes.small, color: inks.soft, role: 'paragraph' }),
    label(x, valueY, value, { face: 'serif-bold', sizeMm }),
    ...(more === ''
      ? []
      : [
          label(x, valueY + sizes.note * 1.6, more, {
            sizeMm: sizeToFit(more, 'sans', sizes.note, room),
            color: inks.soft,
          }),
        ]),
  ];
}

function factsOf(context: PatternContext): Fact[] {
  const { materials, units, figures, copy } = context;
  const words = coverWords[copy.language];
  const { finished } = materials;
  const [size = '', more = ''] = sizeIn(units, copy.language, finished.widthMm, finished.knottedHeightMm);
  const told = (name: string, value: string): Fact => ({ name, value, more: '' });
  return [
    { name: words.size, value: size, more },
    told(words.cordsAndRows, `${figures.count(materials.columns)} × ${figures.count(materials.rows)}`),
    told(words.yarns, figures.count(materials.yarns.length)),
    told(words.time, words.about(figures.time(materials.totals.seconds))),
  ];
}
