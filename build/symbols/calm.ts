/** Which drawings look calm beside one another in a field of cells: a question of symmetry and of few parts. */
import type { Candidate } from './candidates.ts';
import { touches } from './lines.ts';
import { twins } from './moves.ts';
import type { Drawing } from './raster.ts';

export interface Symmetry {
  leftRight: boolean;
  upDown: boolean;
  halfTurn: boolean;
  diagonal: boolean;
  antiDiagonal: boolean;
}

/** The more a drawing repeats itself, the more parts it may have; without any mirror it is never calm. */
export function isCalm(drawing: Candidate): boolean {
  const { leftRight, upDown, diagonal, antiDiagonal } = symmetryOf(drawing);
  const { parts, fills, dots, strokes } = drawing;
  const steep = steepStrokes(drawing);
  const mirrors = [leftRight, upDown, diagonal, antiDiagonal].filter(Boolean).length;
  if (dots.length > 5 || (fills.length > 0 && steep > 0)) return false;
  if (new Set(fills.map(areaOf)).size > 1) return false;
  const throughMiddle = strokes.filter((line) => touches(line, [2, 2, 2, 2])).length;
  if (throughMiddle > 2) return false;
  if (mirrors === 4) return parts <= 8 && steep === 0;
  if (mirrors === 2) return parts <= 6 && (steep === 0 || leftRight);
  if (leftRight) return parts <= 4;
  if (upDown) return parts <= 4 && steep === 0;
  return (diagonal || antiDiagonal) && dots.length === 0 && steep === 0 && isOneFigure(drawing);
}

/** One filled shape alone, or two strokes that hang together. */
function isOneFigure({ fills, strokes }: Drawing): boolean {
  if (fills.length > 0) return fills.length === 1 && strokes.length === 0;
  if (strokes.length > 2) return false;
  return strokes.every((line) => strokes.some((other) => other !== line && touches(other, line)));
}

function areaOf(fill: readonly number[]): number {
  let twice = 0;
  for (let i = 0; i < fill.length; i += 2) {
    const j = (i + 2) % fill.length;
    twice += fill[i]! * fill[j + 1]! - fill[j]! * fill[i + 1]!;
  }
  return Math.abs(twice);
}

/** Parts, directions and kinds: an eye needs longer for each. Lower is calmer. */
export function unrestOf(drawing: Candidate): number {
  const { strokes, parts, dots, fills } = drawing;
  const directions = new Set(
    strokes.map(([x1, y1, x2, y2]) => Math.abs(Math.atan2(y2! - y1!, x2! - x1!)).toFixed(2)),
  ).size;
  const kinds = Number(strokes.length > 0) + Number(dots.length > 0) + Number(fills.length > 0);
  const { leftRight, upDown, diagonal, antiDiagonal } = symmetryOf(drawing);
  const mirrors = [leftRight, upDown, diagonal, antiDiagonal].filter(Boolean).length;
  const lopsided = mirrors === 4 ? -2 : mirrors === 2 ? -1 : leftRight ? 0 : upDown ? 0.5 : 1.5;
  return parts * 0.7 + directions * 0.7 + steepStrokes(drawing) * 0.5 + kinds + lopsided;
}

function steepStrokes({ strokes }: Drawing): number {
  return strokes.filter(([x1, y1, x2, y2]) => {
    const [dx, dy] = [Math.abs(x2! - x1!), Math.abs(y2! - y1!)];
    return dx !== 0 && dy !== 0 && dx !== dy;
  }).length;
}

export function symmetryOf(drawing: Drawing): Symmetry {
  const [own, leftRight, upDown, halfTurn, diagonal, antiDiagonal] = twins(drawing).map(keyOf);
  return {
    leftRight: leftRight === own,
    upDown: upDown === own,
    halfTurn: halfTurn === own,
    diagonal: diagonal === own,
    antiDiagonal: antiDiagonal === own,
  };
}

/** The same for the same drawing, whichever way its lines and polygons are listed. */
function keyOf({ strokes, dots, fills }: Drawing): string {
  const corners = (points: readonly number[]) =>
    points
      .flatMap((x, i) => (i % 2 === 0 ? [`${x},${points[i + 1]}`] : []))
      .sort()
      .join(' ');
  return [strokes, dots, fills].map((list) => list.map(corners).sort().join(';')).join('|');
}
