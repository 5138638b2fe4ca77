/** What to measure on a swatch, in the order of work, as sentences with figures in the maker's units. */
import type { Design } from '../design/design.ts';
import type { Swatch } from '../design/schema.ts';
import { formatLength } from '../units/length.ts';
import type { Units } from '../units/units.ts';
import { gaugeOf, knotMm, sizeOf } from './gauge.ts';

export interface SwatchInstruction {
  /** The fields of a swatch that are filled in from it; none where nothing is measured. */
  readonly fields: readonly (keyof Swatch)[];
  readonly sentence: string;
}

/** `swatch`: the design to tie, see `swatch-design.ts`. Figures that are 'about' follow from the gauge so far. */
export function swatchInstructions(swatch: Design, units: Units): SwatchInstruction[] {
  const gauge = gaugeOf(swatch);
  const { widthMm, knottedHeightMm } = sizeOf(swatch, gauge);
  const { columns, rows, tying } = swatch;
  const show = (mm: number) => formatLength(mm, units);
  const { name: ground, ...yarn } = swatch.yarns.find(({ id }) => id === swatch.ground)!;
  const piece = measuredPiece(swatch, knotMm(swatch, yarn, gauge));
  const tail = show(tying.tailMm);
  return [
    {
      fields: ['cordBeforeMm'],
      sentence: `Before you begin row 1, pull one cord in the middle straight and mark it twice, just under its head and ${show(markedMm(knottedHeightMm))} below: that is the cord before tying.`,
    },
    {
      fields: ['yarnMm', 'knots'],
      sentence: `Cut a piece of ${ground} exactly ${show(piece.cutMm)} long and begin row 1 with it, leaving a tail of ${tail}. Tie until about ${tail} of it is left, and count its knots: about ${piece.knots}. The yarn they took is ${show(piece.cutMm)} less both tails as you measure them.`,
    },
    { fields: [], sentence: `Finish all ${rows} rows, and let the swatch hang for a night.` },
    {
      fields: ['widthMm', 'cords'],
      sentence: `Lay it flat without pulling and measure across all ${columns} cords, near the top, in the middle and near the bottom: about ${show(widthMm)}. Enter the mean, and ${columns} cords.`,
    },
    {
      fields: ['heightMm', 'rows'],
      sentence: `Measure down all ${rows} rows, at both sides and in the middle: about ${show(knottedHeightMm)}. Enter the mean, and ${rows} rows.`,
    },
    {
      fields: ['cordAfterMm'],
      sentence: `Measure between the two marks on the cord again: that is the cord after tying.`,
    },
    {
      fields: [],
      sentence:
        'Tie two or three swatches, on different days: each makes the figures surer, and shows how far they scatter.',
    },
  ];
}

/** A stretch of cord that surely lies within the knotted part, in whole centimetres. */
function markedMm(knottedHeightMm: number): number {
  return Math.max(10, 10 * Math.floor((0.8 * knottedHeightMm) / 10));
}

/** As long as the maker's pieces are, but no longer than the rows of ground alone take; in whole centimetres. */
function measuredPiece(
  { columns, rows, tying }: Design,
  oneKnotMm: number,
): { cutMm: number; knots: number } {
  const tails = 2 * tying.tailMm;
  const wholeMm = Math.min(tying.workingLengthMm, columns * (rows / 2) * oneKnotMm + tails);
  const cutMm = 10 * Math.floor(wholeMm / 10);
  return { cutMm, knots: Math.max(1, Math.floor((cutMm - tails) / oneKnotMm)) };
}
