/**
 * Shapes to draw the demo designs with: each says whether a point lies in it. Points are in cells across, and in
 * cells of the same length down, so that a circle is round in the finished hanging.
 */
export type Shape = (x: number, y: number) => boolean;

export function circle(cx: number, cy: number, radius: number): Shape {
  return ellipse(cx, cy, radius, radius);
}

export function ellipse(cx: number, cy: number, rx: number, ry: number): Shape {
  return (x, y) => ((x - cx) / rx) ** 2 + ((y - cy) / ry) ** 2 <= 1;
}

export function box(x1: number, y1: number, x2: number, y2: number): Shape {
  return (x, y) => x >= x1 && x < x2 && y >= y1 && y < y2;
}

/** Even-odd, corners as x, y pairs. */
export function polygon(...corners: readonly (readonly [number, number])[]): Shape {
  return (x, y) => {
    let inside = false;
    corners.forEach(([x1, y1], i) => {
      const [x2, y2] = corners[(i + 1) % corners.length]!;
      if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) inside = !inside;
    });
    return inside;
  };
}

/** A line of a given thickness through points. */
export function stroke(thickness: number, ...points: readonly (readonly [number, number])[]): Shape {
  return (x, y) =>
    points.slice(1).some(([x2, y2], i) => {
      const [x1, y1] = points[i]!;
      const along = ((x - x1) * (x2 - x1) + (y - y1) * (y2 - y1)) / ((x2 - x1) ** 2 + (y2 - y1) ** 2 || 1);
      const t = Math.min(1, Math.max(0, along));
      return Math.hypot(x - x1 - t * (x2 - x1), y - y1 - t * (y2 - y1)) <= thickness / 2;
    });
}

export function below(edge: (x: number) => number): Shape {
  return (x, y) => y >= edge(x);
}

export function mirrored(shape: Shape, axis: number): Shape {
  return (x, y) => shape(x, y) || shape(2 * axis - x, y);
}

export function both(a: Shape, b: Shape): Shape {
  return (x, y) => a(x, y) && b(x, y);
}

/** Waves of several lengths, in order of `[length, height, shift]`, around `level`. */
export function waves(
  level: number,
  ...parts: readonly (readonly [number, number, number])[]
): (x: number) => number {
  return (x) =>
    parts.reduce(
      (y, [length, height, shift]) => y + height * Math.sin((x / length + shift) * 2 * Math.PI),
      level,
    );
}
