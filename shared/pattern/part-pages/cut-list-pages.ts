/**
 * The cut list: cords by their length, and pieces of yarn in bundles, each with a box to tick. Where the designer cuts pieces to
 * measure it also tells which piece lies in which bundle; else the pieces of a yarn are all alike, and their numbers tell nothing.
 */
import { codeOf } from '../../design/codes.ts';
import { type Bundle, type Bundles, bundlesOf } from '../../materials/bundles/bundles.ts';
import { usualFitting } from '../../materials/bundles/fitted-plan.ts';
import { planAsCut } from '../../materials/bundles/plan-as-cut.ts';
import { tyingOrder } from '../../tying/steps/tying-order.ts';
import { formatPercent } from '../../units/percent.ts';
import { drawSwatch } from '../chart-pages/key.ts';
import { fewestPages } from '../flow/fewest-pages.ts';
import { type Flow, heading, newFlow, paragraph } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { type TableCell, table } from '../flow/table.ts';
import { columnsFor } from '../flow/table-columns.ts';
import type { Item } from '../page/page.ts';
import { inks } from '../page/style.ts';
import type { PatternContext } from '../pattern-input.ts';
import { cutListWords } from '../words/cut-list-words.ts';
import { cordRanges } from './cord-ranges.ts';

/** Of a box to tick or a swatch, in ems of the text beside it. */
const BOX_EMS = 1.27;

export function cutListPages(context: PatternContext): Draft[] {
  const words = cutListWords[context.copy.language];
  const { chart, plan, design } = context;
  const isFitted = context.materials.tying.fitted;
  const cut = bundlesOf(tyingOrder(chart, planAsCut(design, plan)));
  return fewestPages((air) => {
    const flow = newFlow(context, words.title, air);
    note(flow, words.introduction, 0);
    cords(flow, context);
    if (cut.pieces > 0) {
      yarns(flow, context, cut, isFitted);
      if (isFitted) numbers(flow, context, cut);
    }
    return flow.drafts();
  });
}

function note(flow: Flow, text: string, after = 2): void {
  paragraph(flow, text, { color: inks.soft, sizeMm: flow.sizes.note, after });
}

function cords(flow: Flow, { materials, copy, figures }: PatternContext): void {
  const words = cutListWords[copy.language];
  const { enough } = figures;
  heading(flow, words.cords);
  const boxMm = BOX_EMS * flow.sizes.body;
  const rows = materials.cords.groups.map((group): TableCell[] => [
    tickBox(boxMm),
    cordRanges(group),
    figures.count(group.count),
    figures.cutLength(group.cutMm),
    enough.yarnLength(group.count * group.cutMm),
  ]);
  table(flow, columnsFor(flow, ['', ...words.cordHeads], rows, [boxMm + BOX_GAP_MM, 'rest']), rows);
  note(flow, words.mounting);
}

function yarns(flow: Flow, context: PatternContext, cut: Bundles, isFitted: boolean): void {
  const { copy, figures, materials, cellInks } = context;
  const words = cutListWords[copy.language];
  const { count, enough } = figures;
  heading(flow, words.yarn);
  const boxMm = BOX_EMS * flow.sizes.body;
  const longest = figures.cutLength(materials.tying.workingLengthMm);
  const about = isFitted
    ? words.fitted({
        reserve: formatPercent(usualFitting.reserve),
        step: figures.length(usualFitting.roundUpMm),
        longest,
        saved: cut.savedMm > 0 ? figures.spareYarnLength(cut.savedMm) : null,
      })
    : words.alike(longest, figures.cutLength(materials.tying.tailMm));
  note(flow, about);
  const names = yarnNames(context);
  const rows = cut.bundles.map(({ yarn, pieces, cutMm, totalMm }): TableCell[] => [
    tickBox(boxMm),
    { draw: (x, y) => drawSwatch(codeOf(yarn), x, y + 0.1, boxMm, cellInks) },
    names.get(yarn)!,
    count(pieces.length),
    figures.cutLength(cutMm),
    enough.yarnLength(totalMm),
    String(pieces[0]!.row),
  ]);
  const widths = [boxMm + BOX_GAP_MM, boxMm + BOX_GAP_MM, 'names'] as const;
  table(flow, columnsFor(flow, ['', '', ...words.yarnHeads], rows, widths), rows);
  note(flow, words.together(cut.pieces, count(cut.pieces), enough.yarnLength(cut.totalMm)));
}

/** A paragraph for each bundle, below its yarn: lists of numbers may be longer than a page. */
function numbers(flow: Flow, context: PatternContext, { bundles }: Bundles): void {
  const { copy, figures } = context;
  const words = cutListWords[copy.language];
  flow.need(NUMBERS_MM);
  heading(flow, words.numbers);
  note(flow, words.aboutNumbers);
  const names = yarnNames(context);
  bundles.forEach((bundle, i) => {
    if (bundle.yarn !== bundles[i - 1]?.yarn) {
      flow.need(NAME_MM);
      flow.y += 1.2;
      paragraph(flow, names.get(bundle.yarn)!, { face: 'sans-bold', after: 0.4 });
    }
    paragraph(flow, words.numbersOf(figures.cutLength(bundle.cutMm), numbersOf(bundle)), {
      sizeMm: flow.sizes.note,
      indent: BOX_EMS * flow.sizes.body + BOX_GAP_MM,
      after: 0.6,
    });
  });
}

/** A yarn's name stays with its first lines, and the heading with the first yarn. */
const NAME_MM = 18;
const NUMBERS_MM = 50;

function yarnNames({ design, printer }: PatternContext): ReadonlyMap<Bundle['yarn'], string> {
  return new Map(design.yarns.map(({ id, name }) => [id, printer.printable(name)]));
}

function tickBox(size: number): TableCell {
  return {
    draw: (x, y): Item[] => [
      { kind: 'box', x, y, width: size, height: size, radius: 0.6, stroke: inks.soft, strokeMm: 0.25 },
    ],
  };
}

/** Behind a box or a swatch. */
const BOX_GAP_MM = 2.8;

/** '1–4, 7'. */
function numbersOf({ pieces }: Bundle): string {
  const stretches: { from: number; to: number }[] = [];
  for (const { number } of pieces) {
    const last = stretches.at(-1);
    if (last?.to === number - 1) last.to = number;
    else stretches.push({ from: number, to: number });
  }
  return stretches.map(({ from, to }) => (from === to ? String(from) : `${from}–${to}`)).join(', ');
}
