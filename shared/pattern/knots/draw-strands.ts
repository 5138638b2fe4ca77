/**
 * Strands as page items, from back to front. Each strand is cut between its crossings, so that every piece holds one
 * crossing and has one height; a piece that lies on top is drawn over a broader stroke in the paper's colour, which
 * leaves a small gap in what goes behind. Nothing is left to the order in which strands are written down.
 */
import type { PathItem, PathStep } from '../page/page.ts';
import { inks } from '../page/style.ts';
import { crossingsOf } from './crossings.ts';
import {
  type Along,
  type Bend,
  curveThrough,
  directionAt,
  pathBetween,
  placeAfterMm,
  pointAt,
} from './curve.ts';
import { looks, twistMarks } from './looks.ts';
import { diametersMm, type Strand } from './strand.ts';

/** Paper left free on both sides of what lies on top. */
const GAP_MM = 0.45;

/** Pieces of one strand overlap by this, so that no seam shows between them. */
const SEAM_MM = 0.08;

interface Piece {
  readonly strand: Strand;
  readonly curve: readonly Bend[];
  readonly from: Along;
  readonly to: Along;
  readonly height: number;
  readonly isOver: boolean;
}

export function drawStrands(strands: readonly Strand[]): PathItem[] {
  const curves = strands.map(({ through }) => curveThrough(through));
  const passes = crossingsOf(curves).flatMap(({ over, under }) => [
    { ...over, isOver: true },
    { ...under, isOver: false },
  ]);
  const pieces = strands.flatMap((strand, i) =>
    piecesOf(
      strand,
      curves[i]!,
      passes.filter(({ curve }) => curve === i).sort((a, b) => a.along - b.along),
    ),
  );
  return [
    ...alike(pieces.sort((a, b) => a.height - b.height)).flatMap(drawTogether),
    ...strands.flatMap(({ to }, i) => (to === 'moves' ? [arrow(curves[i]!)] : [])),
  ];
}

/** Neighbouring pieces of one height and kind stay in one. */
function piecesOf(
  strand: Strand,
  curve: readonly Bend[],
  passes: readonly { along: Along; height: number; isOver: boolean }[],
): Piece[] {
  const whole = { strand, curve, from: 0, to: curve.length };
  if (passes.length === 0) return [{ ...whole, height: strand.through[0]![2], isOver: false }];
  const pieces: Piece[] = [];
  passes.forEach(({ along, height, isOver }, i) => {
    const next = passes[i + 1];
    const to = next ? (along + next.along) / 2 : curve.length;
    const before = pieces.at(-1);
    if (before && before.isOver === isOver && Math.abs(before.height - height) < 0.01) {
      pieces[pieces.length - 1] = { ...before, to };
    } else pieces.push({ ...whole, from: before?.to ?? 0, to, height, isOver });
  });
  return pieces;
}

/** Pieces of one height never cross: neighbours in the order that look alike can be drawn at one go. */
function alike(sorted: readonly Piece[]): Piece[][] {
  const groups: Piece[][] = [];
  for (const piece of sorted) {
    const group = groups.at(-1);
    const first = group?.[0];
    if (
      group &&
      first &&
      first.height === piece.height &&
      first.strand.material === piece.strand.material &&
      isRound(first) === isRound(piece)
    ) {
      group.push(piece);
    } else groups.push([piece]);
  }
  return groups;
}

function isRound({ strand }: Piece): boolean {
  return strand.from === 'round' && strand.to === 'round';
}

function drawTogether(pieces: readonly Piece[]): PathItem[] {
  const first = pieces[0]!;
  const { material } = first.strand;
  const { edge, body, edgeMm } = looks[material];
  const diameter = diametersMm[material];
  const stroke = (parts: readonly Piece[], longerMm: number, color: string, widthMm: number): PathItem => ({
    kind: 'path',
    steps: parts.flatMap((piece) => lengthened(piece, longerMm)),
    stroke: color,
    strokeMm: widthMm,
    ...(isRound(first) && { cap: 'round' }),
  });
  const onTop = pieces.filter(({ isOver }) => isOver);
  return [
    stroke(onTop, -SEAM_MM, inks.paper, diameter + 2 * GAP_MM),
    stroke(pieces, SEAM_MM, edge, diameter),
    // Longer than the edge, whose end would else show as a line across the strand.
    stroke(pieces, 2 * SEAM_MM, body, diameter - 2 * edgeMm),
    twistMarks(material, pieces, diameter),
    cutEnds(pieces, diameter, edge),
  ].filter(({ steps }) => steps.length > 0);
}

/** A piece with this much more at both its ends, but no more than the strand has; with less, nothing may be left. */
function lengthened({ curve, from, to }: Piece, mm: number): PathStep[] {
  const start = placeAfterMm(curve, from, -mm);
  const end = placeAfterMm(curve, to, mm);
  return start < end ? pathBetween(curve, start, end) : [];
}

/** Closes the outline where a strand was cut off. */
function cutEnds(pieces: readonly Piece[], diameter: number, color: string): PathItem {
  const steps = pieces.flatMap(({ strand, curve, from, to }) => [
    ...(from === 0 && strand.from === 'cut' ? acrossStrand(curve, 0, diameter / 2) : []),
    ...(to === curve.length && strand.to === 'cut' ? acrossStrand(curve, to, diameter / 2) : []),
  ]);
  return { kind: 'path', steps, stroke: color, strokeMm: 0.4 };
}

function acrossStrand(curve: readonly Bend[], along: Along, half: number): PathStep[] {
  const place = beside(curve, along);
  return [
    ['M', ...place(0, -half)],
    ['L', ...place(0, half)],
  ];
}

/** The head of an arrow just beyond the end. */
function arrow(curve: readonly Bend[]): PathItem {
  const place = beside(curve, curve.length);
  const steps: PathStep[] = [
    ['M', ...place(0.6, -1.7)],
    ['L', ...place(3.9, 0)],
    ['L', ...place(0.6, 1.7)],
    ['Z'],
  ];
  return { kind: 'path', steps, fill: inks.text };
}

/** Places near one of a curve, by how far along the strand and across it they lie, in mm. */
function beside(curve: readonly Bend[], along: Along): (onward: number, across: number) => [number, number] {
  const { x, y } = pointAt(curve, along);
  const way = directionAt(curve, along);
  return (onward, across) => [x + way.x * onward - way.y * across, y + way.y * onward + way.x * across];
}
