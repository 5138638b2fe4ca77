/** Small cards, a sheet full of them: labels with the fibres, and tags with the price. */

import type { Draft } from '../flow/page-foot.ts';
import { label } from '../page/label.ts';
import { markIn } from '../page/mark.ts';
import type { Item, PathStep } from '../page/page.ts';
import { type Area, bodyOf, FOOT_MM } from '../page/papers.ts';
import { sizeToFit } from '../page/size-to-fit.ts';
import { inks, ruleMm, sizes } from '../page/style.ts';
import { yarnBand } from '../part-pages/yarn-band.ts';
import type { PatternContext } from '../pattern-input.ts';
import { hangingWords } from '../words/hanging-words.ts';
import { cardsIn } from './cards.ts';
import { newColumn, told } from './column.ts';
import { makerOf } from './maker.ts';

const CARD = { width: 55, height: 78 } as const;
const PAD_MM = 5;
/** Above the cards, for a sentence. */
const HEAD_MM = 12;
/** A hole for string or ribbon, and how far its middle is from the upper edge. */
const HOLE = { radiusMm: 2.5, fromTopMm: 7 } as const;

export function fibreLabel(context: PatternContext): Draft[] {
  const words = hangingWords[context.copy.language];
  return sheetOf(context, words.titles['fibre-label'], words.cutLabels, (card) => fibres(context, card));
}

export function priceTag(context: PatternContext): Draft[] {
  const words = hangingWords[context.copy.language];
  return sheetOf(context, words.titles['price-tag'], words.cutTags, (card) => price(context, card));
}

function sheetOf(
  { sheet }: PatternContext,
  title: string,
  sentence: string,
  draw: (card: Area) => Item[],
): Draft[] {
  const body = bodyOf(sheet);
  const head = newColumn({ ...body, height: HEAD_MM });
  head.text(sentence, { sizeMm: sizes.small, color: inks.soft, lines: 2 });
  const rest = { ...body, y: body.y + HEAD_MM, height: body.height + FOOT_MM - HEAD_MM };
  return [{ sheet, title, items: [...head.items, ...cardsIn(rest, CARD, draw)], withoutFoot: true }];
}

function inside({ x, y, width, height }: Area): Area {
  return { x: x + PAD_MM, y: y + PAD_MM, width: width - 2 * PAD_MM, height: height - 2 * PAD_MM };
}

function fibres(context: PatternContext, card: Area): Item[] {
  const { design, printer, copy, accent, materials, figures } = context;
  const words = hangingWords[copy.language];
  const { cordFibre = '', yarnFibre = '' } = design.pattern?.labels ?? {};
  const { finished } = materials;
  const column = newColumn(inside(card));
  column.text(printer.printable(design.title, 'serif-bold'), {
    face: 'serif-bold',
    sizeMm: sizes.lead,
    lines: 2,
  });
  column.skip(1.2);
  column.rule(accent, 0.6);
  column.skip(1.6);
  column.text(words.fibre.head, { sizeMm: sizes.small, face: 'sans-bold', color: accent });
  column.skip(0.6);
  told(column, words.fibre.cord, printer.printable(cordFibre));
  told(column, words.fibre.yarn, printer.printable(yarnFibre));
  told(column, words.fibre.dowel, words.fibre.wood);
  const size = [finished.widthMm, finished.heightWithFringeMm].map((mm) => figures.length(mm));
  told(column, words.fibre.size, size.join(' × '));
  column.text(words.fibre.rules, { sizeMm: sizes.foot, color: inks.soft });
  const { name } = makerOf(context);
  if (name) column.text(words.madeBy(name), { sizeMm: sizes.foot, color: inks.soft });
  return column.items;
}

/** A price that rests on something untold is left to be written by hand. */
function price(context: PatternContext, card: Area): Item[] {
  const { design, printer, copy, accent, materials, figures } = context;
  const words = hangingWords[copy.language];
  const { retail, currency } = materials.cost;
  const inner = inside(card);
  const middle = card.x + card.width / 2;
  const below = card.y + HOLE.fromTopMm + HOLE.radiusMm + 4;
  const mark = markIn(context, { x: middle - 10, y: below, width: 20, height: 10 }, 'top left');
  const column = newColumn({ ...inner, y: below, height: inner.y + inner.height - below - 22 });
  if (mark) column.skip(12);
  const center = { align: 'center' } as const;
  column.text(printer.printable(design.title, 'serif-bold'), {
    ...center,
    face: 'serif-bold',
    sizeMm: sizes.lead,
    lines: 3,
  });
  column.text(words.handmade, { ...center, sizeMm: sizes.small, color: inks.soft });
  const { finished } = materials;
  const size = [finished.widthMm, finished.heightWithFringeMm].map((mm) => figures.length(mm));
  column.text(size.join(' × '), { ...center, sizeMm: sizes.small, color: inks.soft, lines: 2 });
  const { name } = makerOf(context);
  const foot = inner.y + inner.height;
  const figure = retail.whole ? figures.money(retail.amount, currency ?? undefined) : '';
  return [
    ...hole(middle, card.y + HOLE.fromTopMm),
    ...(mark ? [{ ...mark, x: middle - mark.width / 2 }] : []),
    ...column.items,
    ...yarnBand(materials, { x: middle - 14, y: foot - 21, width: 28, height: 2 }),
    label(middle, foot - 15, words.price, { ...center, sizeMm: sizes.foot, color: inks.soft }),
    ...(figure
      ? [
          label(middle, foot - 7, figure, {
            ...center,
            face: 'serif-bold',
            sizeMm: sizeToFit(figure, 'serif-bold', sizes.pageTitle * 0.8, inner.width),
            color: accent,
          }),
        ]
      : [
          {
            kind: 'rule' as const,
            x1: inner.x + 6,
            y1: foot - 6.4,
            x2: inner.x + inner.width - 6,
            y2: foot - 6.4,
            widthMm: ruleMm.thin,
            color: inks.soft,
          },
        ]),
    ...(name
      ? [
          label(middle, foot - 0.8, name, {
            ...center,
            sizeMm: sizeToFit(name, 'sans', sizes.foot, inner.width),
            color: inks.soft,
          }),
        ]
      : []),
  ];
}

/** How far a circle's handles reach, of its radius. */
const ROUND = 0.5523;

function hole(x: number, y: number): Item[] {
  const r = HOLE.radiusMm;
  const k = r * ROUND;
  const steps: PathStep[] = [
    ['M', x + r, y],
    ['C', x + r, y + k, x + k, y + r, x, y + r],
    ['C', x - k, y + r, x - r, y + k, x - r, y],
    ['C', x - r, y - k, x - k, y - r, x, y - r],
    ['C', x + k, y - r, x + r, y - k, x + r, y],
    ['Z'],
  ];
  return [{ kind: 'path', steps, stroke: inks.soft, strokeMm: ruleMm.thin }];
}
