/** A point of the lattice: x, y. */
export type Point = readonly [number, number];
/** A straight stroke on the lattice: x1, y1, x2, y2. */
export type Segment = readonly [number, number, number, number];
/** The same, where its length is not known to the compiler. */
export type Line = readonly number[];

/** From the first end of a line to the second. */
export function direction([x1, y1, x2, y2]: Line): [number, number] {
  return [x2! - x1!, y2! - y1!];
}

/** Twice the area of the triangle from a line to a point: zero on the line. */
function side([x1, y1, x2, y2]: Line, x: number, y: number): number {
  return (x2! - x1!) * (y - y1!) - (y2! - y1!) * (x - x1!);
}

/** Each passes through the other's inside. */
export function crosses(a: Line, b: Line): boolean {
  return (
    side(a, b[0]!, b[1]!) * side(a, b[2]!, b[3]!) < 0 && side(b, a[0]!, a[1]!) * side(b, a[2]!, a[3]!) < 0
  );
}

/** They share at least a point. */
export function touches(a: Line, b: Line): boolean {
  return crosses(a, b) || ends(a).some((end) => isOn(b, end)) || ends(b).some((end) => isOn(a, end));
}

function ends([x1, y1, x2, y2]: Line): [number, number][] {
  return [
    [x1!, y1!],
    [x2!, y2!],
  ];
}

function isOn(line: Line, [x, y]: [number, number]): boolean {
  const [x1, y1, x2, y2] = line as [number, number, number, number];
  const within = (x - x1) * (x - x2) <= 0 && (y - y1) * (y - y2) <= 0;
  return within && side(line, x, y) === 0;
}
