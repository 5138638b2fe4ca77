/**
 * Where the lines of strands cross on the paper, a strand with itself included, and which of the two lies on top. Found
 * by intersecting the lines; the higher one is on top, so a drawing can't contradict itself.
 */
import { type Along, type Bend, placesAlong, pointAt } from './curve.ts';

export interface Crossing {
  /** On top: which curve (from 0), and where on it. */
  readonly over: Pass;
  readonly under: Pass;
}

export interface Pass {
  readonly curve: number;
  readonly along: Along;
  readonly height: number;
}

/** Chords to a bend: their sag is a few hundredths of a millimetre, less than any printer shows. */
const CHORDS = 12;

interface Chord {
  readonly curve: number;
  readonly from: Along;
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
}

/** All crossings, in the order of the first curve of each two, and along it. */
export function crossingsOf(curves: readonly (readonly Bend[])[]): Crossing[] {
  const bends = curves.flatMap(bendsWithChords);
  const found: Crossing[] = [];
  bends.forEach((a, i) => {
    for (let j = i + 1; j < bends.length; j++) {
      const b = bends[j]!;
      if (a.right < b.left || b.right < a.left || a.bottom < b.top || b.bottom < a.top) continue;
      for (const p of a.chords) for (const q of b.chords) meet(p, q, curves, found);
    }
  });
  return found;
}

function bendsWithChords(curve: readonly Bend[], index: number) {
  const places = placesAlong(curve, CHORDS).map((along) => ({ along, ...pointAt(curve, along) }));
  return curve.map((_, bend) => {
    const own = places.slice(bend * CHORDS, (bend + 1) * CHORDS + 1);
    const xs = own.map(({ x }) => x);
    const ys = own.map(({ y }) => y);
    return {
      left: Math.min(...xs),
      right: Math.max(...xs),
      top: Math.min(...ys),
      bottom: Math.max(...ys),
      chords: own.slice(1).map((to, i): Chord => {
        const from = own[i]!;
        return { curve: index, from: from.along, ax: from.x, ay: from.y, bx: to.x, by: to.y };
      }),
    };
  });
}

function meet(p: Chord, q: Chord, curves: readonly (readonly Bend[])[], found: Crossing[]): void {
  // The end of one chord is the start of the next: that is no crossing.
  if (p.curve === q.curve && Math.abs(p.from - q.from) < 1.5 / CHORDS) return;
  const [px, py, qx, qy] = [p.bx - p.ax, p.by - p.ay, q.bx - q.ax, q.by - q.ay];
  const area = px * qy - py * qx;
  if (area === 0) return;
  const t = ((q.ax - p.ax) * qy - (q.ay - p.ay) * qx) / area;
  const u = ((q.ax - p.ax) * py - (q.ay - p.ay) * px) / area;
  // Half open, so that a crossing at the joint of two chords counts once.
  if (t < 0 || t >= 1 || u < 0 || u >= 1) return;
  const pass = (chord: Chord, share: number): Pass => {
    const along = chord.from + share / CHORDS;
    return { curve: chord.curve, along, height: pointAt(curves[chord.curve]!, along).height };
  };
  const [a, b] = [pass(p, t), pass(q, u)];
  found.push(a.height >= b.height ? { over: a, under: b } : { over: b, under: a });
}
