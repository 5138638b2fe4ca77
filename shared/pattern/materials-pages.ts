/**
 * What to buy and what to cut. Every figure is what the maker must have, so it is rounded up; how it came about
 * (measured or estimated, which tails, which margin) stands above it.
 */

import { codeOf } from '../design/codes.ts';
import type { CordGroup } from '../materials/materials.ts';
import { formatLength, mmPerInch } from '../units/length.ts';
import { formatMass } from '../units/mass.ts';
import { formatThickness } from '../units/thickness.ts';
import { formatYarnLength } from '../units/yarn-length.ts';
import { counted, grouped } from './counted.ts';
import { type Flow, figureWidth, heading, newFlow, paragraph, type TableCell, table } from './flow.ts';
import { drawSwatch } from './key.ts';
import type { Draft } from './page-foot.ts';
import type { PatternContext } from './pattern-input.ts';
import { inks, sizes } from './style.ts';
import { careWords } from './words/care-words.ts';

const enough = { enough: true } as const;

export function materialsPages(context: PatternContext): Draft[] {
  const flow = newFlow(context, 'Materials');
  paragraph(flow, basis(context), { color: inks.soft, sizeMm: sizes.note, after: 0 });
  yarns(flow, context);
  cord(flow, context);
  dowelAndTools(flow, context);
  const care = careWords[context.copy.language];
  heading(flow, care.takeCare);
  paragraph(flow, care.inShort(formatMass(context.materials.totals.massG, context.units, enough)));
  return flow.drafts();
}

/** How the figures came about, in words. */
function basis({ materials: { gauge, tying }, units }: PatternContext): string {
  const over =
    units === 'us' ? { words: '4 in', share: (4 * mmPerInch) / 100 } : { words: '10 cm', share: 1 };
  const pitch = round(gauge.knotsPer10Cm * over.share);
  const rows = round(gauge.rowsPer10Cm * over.share);
  const size =
    gauge.source === 'measured'
      ? `Gauge, measured on a swatch: ${pitch} cords across and ${rows} rows down to ${over.words}.`
      : `Gauge, an estimate from the thickness of cord and yarn (±): about ${pitch} cords across and ${rows} rows down to ${over.words}. Tie a swatch first; sizes and lengths change with it.`;
  const yarn =
    gauge.yarnFactorSource === 'measured'
      ? 'Yarn per knot is measured on a swatch.'
      : 'Yarn per knot is an estimate (±), not yet measured.';
  return `${size} ${yarn} Pieces are cut ${formatLength(tying.workingLengthMm, units, enough)} long, with a tail of ${formatLength(tying.tailMm, units, enough)} at each end. Skeins hold a margin of ${round(tying.margin * 100)} %.`;
}

function round(value: number): string {
  return String(Number(value.toFixed(1)));
}

function yarns(flow: Flow, { materials, units, printer, cellInks, design }: PatternContext): void {
  heading(flow, 'Yarn');
  const { tying } = materials;
  const skeinOf = new Map(design.yarns.map(({ id, skeinG }) => [id, formatMass(skeinG, units)]));
  const rows = materials.yarns.map((yarn): TableCell[] => [
    { draw: (x, y) => drawSwatch(codeOf(yarn.id), x, y + 0.4, 4.2, cellInks) },
    printer.printable(yarn.name),
    grouped(yarn.knots),
    grouped(yarn.strands),
    grouped(yarn.pieces),
    formatYarnLength(yarn.cutMm, units, enough),
    formatMass(yarn.massG, units, enough),
    `${yarn.skeins} × ${skeinOf.get(yarn.id) ?? ''}`,
  ]);
  const heads = [
    '',
    'yarn',
    'knots',
    'strands',
    `pieces of ${formatLength(tying.workingLengthMm, units, enough)}`,
    'cut from the ball',
    'mass',
    'skeins',
  ];
  table(flow, columnsFor(heads, rows, [7.5, null]), rows);
  const { totals } = materials;
  paragraph(
    flow,
    `Together ${counted(totals.knots, 'knot')}, ${formatYarnLength(totals.yarnCutMm, units, enough)} and ${formatMass(totals.yarnMassG, units, enough)} of yarn; ${counted(totals.looseEnds, 'loose end')} at the back, and at most ${counted(totals.liveMax, 'strand')} hanging at once. Buy all skeins of one yarn from one dye lot.`,
    { color: inks.soft, sizeMm: sizes.note },
  );
}

/** Figures are as wide as they need; the first columns may be given, null for the one that takes the rest. */
function columnsFor(
  heads: readonly string[],
  rows: readonly TableCell[][],
  first: readonly (number | null)[],
) {
  return heads.map((head, i) => {
    if (i < first.length) {
      const width = first[i];
      return width === null || width === undefined ? { head } : { head, width };
    }
    const figures = rows.map((row) => row[i]).filter((cell) => typeof cell === 'string');
    return { head, width: figureWidth(head, figures), align: 'right' as const };
  });
}

function cord(flow: Flow, { materials: { cords }, units, printer }: PatternContext): void {
  const name = printer.printable(cords.name);
  const title = `Cord${name ? `: ${name}` : ''}, ${formatThickness(cords.diameterMm, units)}`;
  heading(flow, title.length > 60 ? 'Cord' : title);
  if (title.length > 60) paragraph(flow, title);
  const rows = cords.groups.map((group): TableCell[] => [
    columnsOf(group),
    grouped(group.count),
    formatLength(group.cutMm, units, enough),
    formatYarnLength(group.count * group.cutMm, units, enough),
  ]);
  table(flow, columnsFor(['for cords', 'pieces', 'length each', 'together'], rows, [null]), rows);
  const spare =
    cords.spareLegs === 1
      ? ' The number of cords is odd: the last cut cord has one leg too many. Leave it hanging behind the work, and trim it at the end.'
      : '';
  const spread = cords.headsSpread
    ? ` A lark's head is about ${formatLength(cords.headWidthMm, units)} wide, more than its two cords take in the picture: the heads spread on the dowel, and the cords fan in to the first row.`
    : '';
  paragraph(
    flow,
    `${counted(cords.cutCords, 'cut cord')}, ${formatYarnLength(cords.totalMm, units, enough)} and ${formatMass(cords.massG, units, enough)} in all. Each is folded in half over the dowel and gives two cords.${spare}${spread}`,
    { color: inks.soft, sizeMm: sizes.note },
  );
}

function columnsOf({ columns }: CordGroup): string {
  const parts = columns.map(({ from, to }) => (from === to ? `${from}` : `${from}–${to}`));
  return parts.join(', ');
}

function dowelAndTools(flow: Flow, { materials: { dowel }, units }: PatternContext): void {
  heading(flow, 'Dowel and tools');
  paragraph(
    flow,
    `A dowel ${formatThickness(dowel.diameterMm, units)} thick and at least ${formatLength(dowel.minLengthMm, units, enough)} long: the width of the picture and ${formatLength(dowel.overhangMm, units)} at each end. A length of cord to hang it from.`,
  );
  paragraph(
    flow,
    'Sharp scissors, a tape measure, a comb for the fringe, and a clip or bobbin for each hanging strand if you like. A blunt needle for loose ends.',
  );
}
