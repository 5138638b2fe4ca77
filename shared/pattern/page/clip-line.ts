/** Lines cut to a window: what of a way from point to point lies inside it, as steps of a path. */
import type { PathStep } from './page.ts';
import type { Area } from './papers.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The parts of the way through `points` that lie in the window; its edges belong to it. */
export function clipLine(points: readonly Point[], window: Area): PathStep[] {
  const steps: PathStep[] = [];
  let pen: Point | null = null;
  for (let i = 1; i < points.length; i++) {
    const inside = clipSegment(points[i - 1]!, points[i]!, window);
    if (!inside) continue;
    const [from, to] = inside;
    if (!pen || pen.x !== from.x || pen.y !== from.y) steps.push(['M', from.x, from.y]);
    steps.push(['L', to.x, to.y]);
    pen = to;
  }
  return steps;
}

/** By the method of Liang and Barsky (ACM Transactions on Graphics 3, 1984); null where nothing lies inside. */
function clipSegment(a: Point, b: Point, { x, y, width, height }: Area): [Point, Point] | null {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  let from = 0;
  let to = 1;
  for (const [step, room] of [
    [-dx, a.x - x],
    [dx, x + width - a.x],
    [-dy, a.y - y],
    [dy, y + height - a.y],
  ] as const) {
    if (step === 0) {
      if (room < 0) return null;
      continue;
    }
    const at = room / step;
    if (step < 0) from = Math.max(from, at);
    else to = Math.min(to, at);
  }
  if (from > to) return null;
  return [along(a, b, from), along(a, b, to)];
}

/** The ends themselves where the whole line lies inside, so that neighbours meet. */
function along(a: Point, b: Point, share: number): Point {
  if (share === 0) return a;
  if (share === 1) return b;
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}
