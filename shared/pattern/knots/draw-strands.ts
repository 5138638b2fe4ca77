/**
 * Strands as page items, from back to front. Each strand is cut between its crossings, so that every piece holds one
 * crossing and has one height; a piece that lies on top is drawn over a broader stroke in the paper's colour, which
 * leaves a small gap in what goes behind. Nothing is left to the order in which strands are written down.
 */
import type { PathItem, PathStep } from '../page.ts';
import { inks } from '../style.ts';
import { crossingsOf } from './crossings.ts';
import { type Along, type Bend, curveThrough, directionAt, pathBetween, pointAt } from './curve.ts';
import { looks, twistMarks } from './looks.ts';
import { diametersMm, type Strand } from './strand.ts';

/** Paper left free on both sides of what lies on top. */
const GAP_MM = 0.45;

/** Pieces of one strand overlap by this, so that no seam shows between them. */
const SEAM: Along = 0.012;

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
    ...pieces.sort((a, b) => a.height - b.height).flatMap(drawPiece),
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

function drawPiece({ strand, curve, from, to, isOver }: Piece): PathItem[] {
  const { material } = strand;
  const { edge, body, edgeMm } = looks[material];
  const diameter = diametersMm[material];
  const isWhole = from === 0 && to === curve.length;
  const round = isWhole && strand.from === 'round' && strand.to === 'round';
  const stroke = (steps: readonly PathStep[], color: string, widthMm: number): PathItem => ({
    kind: 'path',
    steps,
    stroke: color,
    strokeMm: widthMm,
    ...(round && { cap: 'round' }),
  });
  const steps = pathBetween(curve, Math.max(from - SEAM, 0), Math.min(to + SEAM, curve.length));
  return [
    ...(isOver
      ? [stroke(pathBetween(curve, from + SEAM, to - SEAM), inks.paper, diameter + 2 * GAP_MM)]
      : []),
    stroke(steps, edge, diameter),
    stroke(steps, body, diameter - 2 * edgeMm),
    ...twistMarks(material, curve, from, to, diameter),
    ...(from === 0 && strand.from === 'cut' ? [cutEnd(curve, 0, diameter, edge)] : []),
    ...(to === curve.length && strand.to === 'cut' ? [cutEnd(curve, curve.length, diameter, edge)] : []),
  ];
}

/** The head of an arrow just beyond the end. */
function arrow(curve: readonly Bend[]): PathItem {
  const { x, y } = pointAt(curve, curve.length);
  const way = directionAt(curve, curve.length);
  const place = (along: number, across: number): [number, number] => [
    x + way.x * along - way.y * across,
    y + way.y * along + way.x * across,
  ];
  const steps: PathStep[] = [
    ['M', ...place(0.6, -1.7)],
    ['L', ...place(3.9, 0)],
    ['L', ...place(0.6, 1.7)],
    ['Z'],
  ];
  return { kind: 'path', steps, fill: inks.text };
}

/** Closes the outline where a strand was cut off. */
function cutEnd(curve: readonly Bend[], along: Along, diameter: number, color: string): PathItem {
  const { x, y } = pointAt(curve, along);
  const way = directionAt(curve, along);
  const half = diameter / 2;
  const steps: PathStep[] = [
    ['M', x - way.y * half, y + way.x * half],
    ['L', x + way.y * half, y - way.x * half],
  ];
  return { kind: 'path', steps, stroke: color, strokeMm: 0.4 };
}
