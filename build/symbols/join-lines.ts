import type { Segment } from './lines.ts';

/** Strokes as sets of unit steps, so that overlapping ones on one line merge; then as the longest lines again. */
export function joinLines(segments: readonly Segment[]): number[][] {
  const units = new Map<string, { x: number; y: number; dx: number; dy: number }>();
  for (const segment of segments) {
    const [x1, y1, x2, y2] = forward(segment);
    const steps = greatestStep(x2 - x1, y2 - y1);
    const dx = (x2 - x1) / steps;
    const dy = (y2 - y1) / steps;
    for (let i = 0; i < steps; i++) {
      const unit = { x: x1 + dx * i, y: y1 + dy * i, dx, dy };
      units.set(unitKey(unit), unit);
    }
  }
  const lines: number[][] = [];
  for (const unit of [...units.values()].sort(
    (a, b) => a.x - b.x || a.y - b.y || a.dx - b.dx || a.dy - b.dy,
  )) {
    const { x, y, dx, dy } = unit;
    if (units.has(unitKey({ x: x - dx, y: y - dy, dx, dy }))) continue;
    let steps = 1;
    while (units.has(unitKey({ x: x + dx * steps, y: y + dy * steps, dx, dy }))) steps++;
    lines.push([x, y, x + dx * steps, y + dy * steps]);
  }
  return lines;
}

function unitKey({ x, y, dx, dy }: { x: number; y: number; dx: number; dy: number }): string {
  return `${x} ${y} ${dx} ${dy}`;
}

function forward([x1, y1, x2, y2]: Segment): Segment {
  return x2 > x1 || (x2 === x1 && y2 > y1) ? [x1, y1, x2, y2] : [x2, y2, x1, y1];
}

/** The greatest common divisor of two lengths of which at most one is zero. */
function greatestStep(a: number, b: number): number {
  return b === 0 ? Math.abs(a) : greatestStep(b, a % b);
}
