/** What to measure on a swatch, in the order of work, as sentences with figures in the maker's units. */
import type { Design } from '../design/design.ts';
import type { Swatch } from '../design/schema.ts';
import { formatCutLength } from '../units/cut-length.ts';
import { formatLength, mmPerInch } from '../units/length.ts';
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
  // What is measured off is a whole number on the maker's own tape.
  const markMm = units === 'us' ? mmPerInch : 10;
  const piece = measuredPiece(swatch, knotMm(swatch, yarn, gauge), markMm);
  const tail = formatCutLength(tying.tailMm, units);
  return [
    {
      fields: ['cordBeforeMm'],
      sentence: `Before you begin row 1, pull one cord in the middle straight and mark it twice, just under its head and ${show(markedMm(knottedHeightMm, markMm))} below: that is the cord before tying.`,
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

/** A stretch of cord that surely lies within the knotted part, in whole marks of the tape. */
function markedMm(knottedHeightMm: number, markMm: number): number {
  return markMm * Math.max(1, Math.floor((0.8 * knottedHeightMm) / markMm));
}

/** As long as the maker's pieces are, but no longer than the rows of ground alone take; in whole marks of the tape. */
function measuredPiece(
  { columns, rows, tying }: Design,
  oneKnotMm: number,
  markMm: number,
): { cutMm: number; knots: number } {
  const tails = 2 * tying.tailMm;
  const wholeMm = Math.min(tying.workingLengthMm, columns * (rows / 2) * oneKnotMm + tails);
  const cutMm = markMm * Math.max(1, Math.floor(wholeMm / markMm + noise));
  return { cutMm, knots: Math.max(1, Math.floor((cutMm - tails) / oneKnotMm)) };
}

/** Keeps 60 in from falling short of itself. */
const noise = 1e-6;
