/**
 * Drawings that carry a meaning of their own, and so are no plain marks for a yarn: faces, arrows (rows have arrows),
 * crosses of faiths, hooks and bolts of movements.
 */
import type { Symmetry } from './calm.ts';
import { crosses, direction, type Line, touches } from './lines.ts';
import type { Drawing } from './raster.ts';

const avoided = [isFace, isArrow, isPendant, isBolt, isCappedCross, isFaithCross];

export function isAvoided(drawing: Drawing, symmetry: Symmetry): boolean {
  return avoided.some((is) => is(drawing, symmetry));
}

/** Two dots side by side above everything else. */
function isFace({ strokes, dots, fills }: Drawing, { leftRight, upDown }: Symmetry): boolean {
  if (!leftRight || upDown || dots.length < 2 || strokes.length + fills.length === 0) return false;
  const top = Math.min(...dots.map(([, y]) => y!));
  const eyes = dots.filter(([, y]) => y === top).length === 2;
  return eyes && [...strokes, ...fills].flat().every((at, i) => i % 2 === 0 || at > top);
}

/** One or two shafts with two slanted strokes that run into them from both sides, or stand beside their ends. */
function isArrow({ strokes, dots, fills }: Drawing, { leftRight, upDown }: Symmetry): boolean {
  const slanted = strokes.filter((line) => !direction(line).includes(0));
  const shafts = strokes.length - slanted.length;
  if (leftRight !== upDown && slanted.length === 2 && dots.length + fills.length === 0) {
    if (shafts === 1 && strokes.some((line) => isMiddle(line))) return true;
    // Two shafts beside a chevron read as an arrow, or as an M or W whose parts stand apart.
    const upright = strokes.filter((line) => !slanted.includes(line));
    if (shafts === 2 && upright.every((line) => direction(line)[leftRight ? 0 : 1] === 0)) return true;
  }
  return strokes.some((shaft) => {
    const [dx, dy] = direction(shaft);
    const barbs = strokes.filter((line) => line !== shaft && touches(line, shaft) && !crosses(line, shaft));
    const oblique = barbs.filter((line) => {
      const [bx, by] = direction(line);
      const cosine = Math.abs(dx * bx + dy * by) / (Math.hypot(dx, dy) * Math.hypot(bx, by));
      return cosine > 0.3 && cosine < 0.95;
    });
    return oblique.length >= 2;
  });
}

function isMiddle([x1, y1, x2, y2]: Line): boolean {
  return (x1 === 2 && x2 === 2) || (y1 === 2 && y2 === 2);
}

/** One line with two dots at one end of it, side by side. */
function isPendant({ strokes, dots, fills }: Drawing, { leftRight, upDown }: Symmetry): boolean {
  if (leftRight === upDown || fills.length > 0 || dots.length !== 2 || strokes.length !== 1) return false;
  return isMiddle(strokes[0]!);
}

/** Two filled triangles that touch, turned about the middle: a bolt. */
function isBolt({ fills }: Drawing, { leftRight, halfTurn }: Symmetry): boolean {
  if (!halfTurn || leftRight) return false;
  const corners = fills.flatMap((fill) =>
    fill.flatMap((x, i) => (i % 2 === 0 ? [`${x} ${fill[i + 1]}`] : [])),
  );
  return fills.some((fill) => fill.length === 6) && new Set(corners).size < corners.length;
}

/** Arms with a bar across each end. */
function isCappedCross({ strokes }: Drawing): boolean {
  return strokes.some((stem) => {
    const square = strokes.filter((line) => isSquareTo(line, stem));
    const [from, to] = [stem.slice(0, 2), stem.slice(2)];
    const caps = [from, to].map((end) =>
      square.some((line) => touches(line, [...end, ...end]) && line !== stem),
    );
    return caps.every(Boolean) && square.some((line) => crosses(line, stem));
  });
}

/** One line crossed by others at right angles, apart from the even cross whose four arms are alike. */
function isFaithCross({ strokes, dots, fills }: Drawing, { leftRight, diagonal }: Symmetry): boolean {
  if (dots.length + fills.length > 0 || (leftRight && diagonal)) return false;
  return strokes.some((stem) => {
    const others = strokes.filter((line) => line !== stem);
    return others.length > 0 && others.every((line) => isSquareTo(line, stem) && crosses(line, stem));
  });
}

function isSquareTo(a: Line, b: Line): boolean {
  const [ax, ay] = direction(a);
  const [bx, by] = direction(b);
  return ax * bx + ay * by === 0;
}
