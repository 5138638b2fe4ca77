/**
 * What to buy and what to cut. Every figure is what the maker must have, so it is rounded up; how it came about
 * (measured or estimated, which tails, which margin) stands above it.
 */

import { codeOf } from '../../design/codes.ts';
import type { Yarn } from '../../design/schema.ts';
import { mmPerInch } from '../../units/length.ts';
import { drawSwatch } from '../chart-pages/key.ts';
import { chosenParts } from '../chosen-parts.ts';
import { textOf } from '../first-texts.ts';
import { fewestPages } from '../flow/fewest-pages.ts';
import { type Flow, heading, newFlow, paragraph } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { type TableCell, table } from '../flow/table.ts';
import { columnsFor } from '../flow/table-columns.ts';
import { inks } from '../page/style.ts';
import type { PageNumbers, PatternContext } from '../pattern-input.ts';
import { careWords } from '../words/care-words.ts';
import { materialsWords } from '../words/materials-words.ts';
import { cordRanges } from './cord-ranges.ts';

export function materialsPages(context: PatternContext, at: PageNumbers): Draft[] {
  const words = materialsWords[context.copy.language];
  return fewestPages((air) => {
    const flow = newFlow(context, words.title, air);
    note(flow, basis(context), 0);
    yarns(flow, context);
    cord(flow, context);
    dowelAndTools(flow, context);
    notes(flow, context);
    cautions(flow, context, at);
    return flow.drafts();
  });
}

/** Short: they have a page of their own, unless the designer has left it out. */
function cautions(flow: Flow, { design, copy, figures, materials }: PatternContext, at: PageNumbers): void {
  const words = careWords[copy.language];
  heading(flow, words.takeCare);
  if (chosenParts(design).includes('care')) {
    const page = at.first('care') ?? 1;
    paragraph(flow, words.readFirst(page), { link: page });
  } else paragraph(flow, words.inShort(figures.enough.mass(materials.totals.massG)));
}

function note(flow: Flow, text: string, after?: number): void {
  paragraph(flow, text, {
    color: inks.soft,
    sizeMm: flow.sizes.note,
    ...(after !== undefined && { after }),
  });
}

/** How the figures came about, in words. */
function basis({ materials, units, copy, figures }: PatternContext): string {
  const { gauge, tying, finished, totals } = materials;
  const words = materialsWords[copy.language];
  const inches = units === 'us';
  const share = inches ? (4 * mmPerInch) / 100 : 1;
  return [
    words.gauge({
      from: gauge.basis.size.from,
      cords: figures.number(gauge.knotsPer10Cm * share),
      rows: figures.number(gauge.rowsPer10Cm * share),
      inches,
      share: wholePercent(finished.uncertain.widthMm.share),
    }),
    words.knot(gauge.yarnFactorSource === 'measured', wholePercent(totals.uncertain.yarnUsedMm.share)),
    words.pieces({
      fitted: tying.fitted,
      length: figures.cutLength(tying.workingLengthMm),
      tail: figures.cutLength(tying.tailMm),
      margin: figures.number(tying.margin * 100),
    }),
  ].join(' ');
}

/** Rounded up: no figure is told as surer than it is. */
function wholePercent(share: number): string {
  return `${Math.ceil(share * 100 - 1e-9)} %`;
}

const SWATCH_EMS = 1.3;

function yarns(flow: Flow, context: PatternContext): void {
  const { materials, printer, cellInks, design, copy, figures } = context;
  const words = materialsWords[copy.language];
  heading(flow, words.yarn);
  const { tying, totals } = materials;
  const { count, enough } = figures;
  const skeinOf = new Map(design.yarns.map(({ id, skeinG }) => [id, figures.mass(skeinG)]));
  const rows = materials.yarns.map((yarn): TableCell[] => [
    { draw: (x, y) => drawSwatch(codeOf(yarn.id), x, y + 0.2, SWATCH_EMS * flow.sizes.body, cellInks) },
    printer.printable(yarn.name),
    count(yarn.knots),
    count(yarn.strands),
    count(yarn.pieces),
    enough.yarnLength(yarn.cutMm),
    enough.mass(yarn.massG),
    `${yarn.skeins} × ${skeinOf.get(yarn.id) ?? ''}`,
  ]);
  const heads = ['', ...words.yarnHeads(tying.fitted ? null : figures.cutLength(tying.workingLengthMm))];
  table(flow, columnsFor(flow, heads, rows, [SWATCH_EMS * flow.sizes.body + 3, 'rest']), rows);
  const together = words.together({
    knots: count(totals.knots),
    isOneKnot: totals.knots === 1,
    length: enough.yarnLength(totals.yarnCutMm),
    mass: enough.mass(totals.yarnMassG),
    looseEnds: count(totals.looseEnds),
    live: totals.liveMax,
  });
  note(flow, [...kinds(context), together].join(' '));
}

/** What yarn to look for in a shop: a line for each kind of it, those of the first yarn first. */
function kinds({ materials, design, printer, copy, figures }: PatternContext): string[] {
  const words = materialsWords[copy.language];
  const used = new Set(materials.yarns.map(({ id }) => id));
  const fibre = printer.printable(design.pattern?.labels?.yarnFibre?.trim() ?? '');
  const alike = new Map<string, Yarn[]>();
  for (const yarn of design.yarns) {
    if (!used.has(yarn.id)) continue;
    const kind = [yarn.diameterMm, yarn.metresPer100G, yarn.skeinG].join(' ');
    alike.set(kind, [...(alike.get(kind) ?? []), yarn]);
  }
  return [...alike.values()].map((yarns) => {
    const { diameterMm, metresPer100G, skeinG } = yarns[0]!;
    const names = alike.size === 1 ? [] : yarns.map(({ name }) => printer.printable(name));
    const skeinMm = (metresPer100G / 100) * skeinG * 1000;
    return words.kind(names, figures.thickness(diameterMm), figures.yarnLength(skeinMm), fibre);
  });
}

function cord(flow: Flow, { materials: { cords }, printer, copy, figures }: PatternContext): void {
  const words = materialsWords[copy.language];
  const { enough } = figures;
  heading(flow, words.cord(printer.printable(cords.name), figures.thickness(cords.diameterMm)));
  const rows = cords.groups.map((group): TableCell[] => [
    cordRanges(group),
    figures.count(group.count),
    figures.cutLength(group.cutMm),
    enough.yarnLength(group.count * group.cutMm),
  ]);
  table(flow, columnsFor(flow, words.cordHeads, rows, ['rest']), rows);
  const sentences = [
    words.cordsTogether(
      cords.cutCords,
      figures.count(cords.cutCords),
      enough.yarnLength(cords.totalMm),
      enough.mass(cords.massG),
    ),
    ...(cords.spareLegs === 1 ? [words.spare] : []),
    ...(cords.headsSpread ? [words.spread(figures.length(cords.headWidthMm))] : []),
  ];
  note(flow, sentences.join(' '));
}

function dowelAndTools(flow: Flow, { materials: { dowel, finished }, copy, figures }: PatternContext): void {
  const words = materialsWords[copy.language];
  const hungMm = dowel.minLengthMm - 2 * dowel.overhangMm;
  heading(flow, words.dowelAndTools);
  paragraph(
    flow,
    words.dowel(
      figures.thickness(dowel.diameterMm),
      figures.enough.length(dowel.minLengthMm),
      figures.length(dowel.overhangMm),
      hungMm > finished.widthMm + 1e-6,
    ),
  );
  paragraph(flow, words.tools);
}

/** The designer's own, where there are any. */
function notes(flow: Flow, context: PatternContext): void {
  const text = textOf(context, 'notes');
  if (text === '') return;
  heading(flow, materialsWords[context.copy.language].notes);
  for (const line of text.split('\n')) paragraph(flow, context.printer.printable(line));
}
