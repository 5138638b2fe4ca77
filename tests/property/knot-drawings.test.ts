/** Whatever strands are laid, each crossing is drawn with the higher one on top, and a mirror changes nothing else. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Crossing, crossingsOf } from '../../shared/pattern/knots/crossings.ts';
import {
  type Bend,
  curveThrough,
  directionAt,
  type Point,
  placesAlong,
  pointAt,
} from '../../shared/pattern/knots/curve.ts';
import { drawStrands } from '../../shared/pattern/knots/draw-strands.ts';
import { knotLessons } from '../../shared/pattern/knots/knot-lessons.ts';
import { foldLaidOver } from '../../shared/pattern/knots/larks-head.ts';
import { mirrored } from '../../shared/pattern/knots/mirrored.ts';
import type { Strand, Waypoint } from '../../shared/pattern/knots/strand.ts';
import type { PathItem, PathStep } from '../../shared/pattern/page/page.ts';

/** Waypoints keep some millimetres apart, as those of a drawing do. */
const arbitraryWaypoint: fc.Arbitrary<Waypoint> = fc
  .tuple(fc.integer({ min: -4, max: 4 }), fc.integer({ min: 0, max: 6 }), fc.integer({ min: -90, max: 90 }))
  .map(
    ([x, y, height]) => [x * 5 + ((y * 7) % 3) * 0.37, y * 5 + ((x * 5) % 4) * 0.29, height / 30] as const,
  );

function turnsAside([ax, ay]: Waypoint, [bx, by]: Waypoint, [cx, cy]: Waypoint): boolean {
  const [there, back] = [Math.hypot(bx - ax, by - ay), Math.hypot(cx - bx, cy - by)];
  const cosine = ((bx - ax) * (cx - bx) + (by - ay) * (cy - by)) / (there * back);
  return Math.hypot(cx - ax, cy - ay) > 1 && cosine > -0.95;
}

const arbitraryStrands: fc.Arbitrary<Strand[]> = fc
  .array(
    fc.record({
      material: fc.constantFrom('cord' as const, 'yarn' as const, 'other-yarn' as const),
      through: fc
        .uniqueArray(arbitraryWaypoint, { minLength: 2, maxLength: 7, selector: ([x, y]) => `${x} ${y}` })
        // One that turns on the spot has no direction there; one that comes straight back lies on itself.
        .filter((through) =>
          through.every((from, i) => !through[i + 2] || turnsAside(from, through[i + 1]!, through[i + 2]!)),
        ),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((all) =>
    all.map(({ material, through }, i) => ({
      name: `strand ${i}`,
      material,
      // A little aside from one another, so that no strand begins on another or runs along it.
      through: through.map(([x, y, height]): Waypoint => [x + i * 1.13, y + i * 0.71, height]),
    })),
  );

const lessonPictures = (['right', 'left'] as const)
  .flatMap((towards) => Object.values(knotLessons('en', towards, 'right')))
  .flatMap(({ steps }) => steps.map(({ picture }) => picture));

/** Heights that differ by less leave it in doubt which strand is higher; no picture of a knot has such. */
const CLEARLY_HIGHER = 0.3;

/** Strokes as broad as a strand: no gaps of paper, no plies. */
const BROAD_MM = 1.5;

function chords(steps: readonly PathStep[]): [Point, Point][] {
  const found: [Point, Point][] = [];
  let at: Point = { x: 0, y: 0 };
  for (const step of steps) {
    if (step[0] === 'C') {
      const curve = [
        {
          points: [
            at,
            { x: step[1], y: step[2] },
            { x: step[3], y: step[4] },
            { x: step[5], y: step[6] },
          ] as const,
          heights: [0, 0] as const,
        },
      ];
      for (let i = 0; i < 40; i++) found.push([pointAt(curve, i / 40), pointAt(curve, (i + 1) / 40)]);
    }
    if (step[0] === 'M') at = { x: step[1], y: step[2] };
    if (step[0] === 'C') at = { x: step[5], y: step[6] };
  }
  return found;
}

/** How the last broad stroke runs that was drawn along a line through the point. */
function topmostAt(items: readonly PathItem[], { x, y }: Point): Point | undefined {
  let top: Point | undefined;
  for (const item of items) {
    if ((item.strokeMm ?? 0) < BROAD_MM || item.stroke === '#ffffff') continue;
    for (const [a, b] of chords(item.steps)) {
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const length = Math.hypot(dx, dy);
      if (length === 0) continue;
      const share = Math.min(Math.max(((x - a.x) * dx + (y - a.y) * dy) / length ** 2, 0), 1);
      if (Math.hypot(a.x + share * dx - x, a.y + share * dy - y) < 0.08)
        top = { x: dx / length, y: dy / length };
    }
  }
  return top;
}

const turnOf = (a: Point, b: Point) => Math.abs(a.x * b.y - a.y * b.x);

/** Whether another stretch of strand comes so near to a crossing that it may lie over both, crossing neither. */
function isCrowded({ over, under }: Crossing, at: Point, curves: readonly (readonly Bend[])[]): boolean {
  return curves.some((curve, which) =>
    placesAlong(curve, 40).some((along) => {
      const place = pointAt(curve, along);
      if (Math.hypot(place.x - at.x, place.y - at.y) > 0.5) return false;
      return ![over, under].some((pass) => pass.curve === which && Math.abs(pass.along - along) < 0.25);
    }),
  );
}

/**
 * The crossings whose upper strand is not seen on top. Left out are those that have no answer: at a narrow angle, three
 * in one place, or both strands at nearly one height.
 */
function wronglyDrawn(strands: readonly Strand[], items: readonly PathItem[]): Crossing[] {
  const curves = strands.map(({ through }) => curveThrough(through));
  const crossings = crossingsOf(curves).map((crossing) => ({
    crossing,
    at: pointAt(curves[crossing.over.curve]!, crossing.over.along),
    over: directionAt(curves[crossing.over.curve]!, crossing.over.along),
    under: directionAt(curves[crossing.under.curve]!, crossing.under.along),
  }));
  return crossings
    .filter(({ crossing }) => crossing.over.height - crossing.under.height > CLEARLY_HIGHER)
    .filter(({ over, under }) => turnOf(over, under) > 0.3)
    .filter(({ crossing, at }) => !isCrowded(crossing, at, curves))
    .filter(({ at }) => crossings.every((b) => b.at === at || Math.hypot(b.at.x - at.x, b.at.y - at.y) > 1))
    .filter(({ at, over, under }) => {
      const top = topmostAt(items, at);
      return !top || turnOf(top, over) > turnOf(top, under);
    })
    .map(({ crossing }) => crossing);
}

describe('a drawing of strands', () => {
  it('shows the higher strand on top at every crossing', () => {
    fc.assert(
      fc.property(arbitraryStrands, (strands) => {
        expect(wronglyDrawn(strands, drawStrands(strands))).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  it('does so where a strand nearly stands as it turns back, close to where another crosses', () => {
    const through: Waypoint[][] = [
      [
        [0.37, 20, 0],
        [5, 15.29, 0.4],
      ],
      [
        [1.13, 0.71, 0],
        [-13.5, 4.84, 0],
        [1.5, 5.71, 0],
      ],
      [
        [22.26, 31.42, 0],
        [-12.37, 5.55, 0],
        [2.63, 21.42, 1.67],
        [-17, 26.42, 0],
        [2.26, 1.42, 0],
      ],
    ];
    const strands = through.map((each, i): Strand => ({ name: `${i}`, material: 'cord', through: each }));
    expect(wronglyDrawn(strands, drawStrands(strands))).toEqual([]);
  });

  it('does so in every step of every knot', () => {
    for (const { strands } of lessonPictures) {
      expect(wronglyDrawn(strands, drawStrands(strands))).toEqual([]);
    }
  });

  it('would be caught with what goes behind drawn last', () => {
    const { strands } = foldLaidOver;
    expect(wronglyDrawn(strands, drawStrands(strands).reverse()).length).toBeGreaterThan(0);
  });

  it('leaves no doubt which strand is higher, in every step of every knot', () => {
    for (const { strands } of lessonPictures) {
      for (const { over, under } of crossingsOf(strands.map(({ through }) => curveThrough(through)))) {
        expect(over.height - under.height).toBeGreaterThan(CLEARLY_HIGHER);
      }
    }
  });

  it('does not depend on the order in which strands are written down', () => {
    fc.assert(
      fc.property(arbitraryStrands, (strands) => {
        const reversed = [...strands].reverse();
        expect(wronglyDrawn(strands, drawStrands(reversed))).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});

describe('a drawing in a mirror', () => {
  /** Every point of what is drawn as broad as a strand, with its ink. Plies keep their twist: it is the same yarn. */
  const points = (items: readonly PathItem[], side: 1 | -1) =>
    items
      .filter(({ strokeMm = 0 }) => strokeMm >= BROAD_MM)
      .map(({ steps, stroke }) => [
        stroke,
        steps.map((step) =>
          (step.slice(1) as number[]).map(
            (value, i) => Math.round((i % 2 === 0 ? side * value : value) * 1e6) + 0,
          ),
        ),
      ]);

  it('is the mirror of the drawing', () => {
    fc.assert(
      fc.property(arbitraryStrands, (strands) => {
        expect(points(drawStrands(mirrored({ strands }).strands), -1)).toEqual(
          points(drawStrands(strands), 1),
        );
      }),
      { numRuns: 100 },
    );
  });

  it('twice is the drawing again', () => {
    for (const picture of lessonPictures) {
      expect(drawStrands(mirrored(mirrored(picture)).strands)).toEqual(drawStrands(picture.strands));
    }
  });

  it('has the same crossings, with the same strand on top', () => {
    const told = (strands: readonly Strand[]) =>
      crossingsOf(strands.map(({ through }) => curveThrough(through))).map(({ over, under }) =>
        [over, under].map(({ curve, along }) => [curve, Math.round(along * 1e4)]),
      );
    fc.assert(
      fc.property(arbitraryStrands, (strands) => {
        expect(told(mirrored({ strands }).strands)).toEqual(told(strands));
      }),
      { numRuns: 150 },
    );
  });
});
