/**
 * Random charts with the settings they are tied by: few yarns, so that strands meet again; bare cells and bare rows;
 * both start corners; limits from nothing at all to beyond the chart; pieces that hold one knot or many.
 */
import fc from 'fast-check';
import { type Chart, flatten } from '../../shared/chart/chart.ts';
import { BARE, yarnIdOf } from '../../shared/design/codes.ts';
import { defaults } from '../../shared/design/defaults.ts';
import type { Design } from '../../shared/design/design.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import type { Swatch, TyingSettings, Yarn } from '../../shared/design/schema.ts';
import { gaugeOf, knotMm } from '../../shared/gauge/gauge.ts';

export interface ChartCase {
  readonly design: Design;
  /** The design's own, flattened. */
  readonly chart: Chart;
}

export interface ArbitraryChart {
  maxColumns?: number;
  maxRows?: number;
  maxYarns?: number;
}

export function arbitraryChart({
  maxColumns = 14,
  maxRows = 10,
  maxYarns = 4,
}: ArbitraryChart = {}): fc.Arbitrary<ChartCase> {
  return fc
    .record({
      columns: fc.integer({ min: 1, max: maxColumns }),
      rows: fc.integer({ min: 1, max: maxRows }),
      yarns: fc.array(fc.constantFrom(1, 1.5, 2, 2.37), { minLength: 1, maxLength: maxYarns }),
    })
    .chain(({ columns, rows, yarns }) =>
      fc
        .record({
          cells: fc.array(arbitraryRow(columns, yarns.length), { minLength: rows, maxLength: rows }),
          startCorner: fc.constantFrom('top-left' as const, 'top-right' as const),
          swatches: arbitrarySwatches,
          fringe: fc.record({
            shape: fc.constantFrom(
              'straight' as const,
              'v' as const,
              'inverted-v' as const,
              'curve' as const,
            ),
            longMm: fc.integer({ min: 0, max: 400 }),
            shortMm: fc.integer({ min: 0, max: 400 }),
          }),
          tying: arbitraryTying,
        })
        .map(({ cells, tying, ...rest }) => {
          const base = newDesign({ title: 'Random', columns, rows, yarns: yarns.map(yarnAt) });
          const layers = [{ ...base.layers[0]!, rows: cells }];
          const design = tyable({ ...base, ...rest, layers }, tying);
          return { design, chart: flatten(design) };
        }),
    );
}

interface Tying extends Omit<TyingSettings, 'workingLengthMm'> {
  /** What a piece holds, in knots of the thickest yarn; at least one. */
  knotsInPiece: number;
}

const arbitraryTying: fc.Arbitrary<Tying> = fc.record({
  knotsInPiece: fc.oneof(
    fc.constant(1),
    fc.double({ min: 1, max: 6, noNaN: true }),
    fc.double({ min: 6, max: 60, noNaN: true }),
  ),
  tailMm: fc.constantFrom(0, 50, 65, 65.25),
  effortMm: fc.constantFrom(0, 200),
  carryMaxCords: fc.integer({ min: 0, max: 15 }),
  carryMaxRows: fc.integer({ min: 0, max: 11 }),
  slack: fc.constantFrom(1, 1.05, 1.3),
  rowPriceMm: fc.constantFrom(0, 15),
  reserveShare: fc.constantFrom(0, 0.03, 0.2),
});

const swatch: fc.Arbitrary<Swatch> = fc
  .record({
    widthMm: fc.integer({ min: 80, max: 120 }),
    cords: fc.integer({ min: 15, max: 25 }),
    heightMm: fc.integer({ min: 80, max: 120 }),
    rows: fc.integer({ min: 15, max: 25 }),
    used: fc.option(fc.record({ yarnMm: fc.integer({ min: 300, max: 900 }), knots: fc.constant(20) })),
  })
  .map(({ used, ...measured }) => ({ ...measured, ...used }));

/** Most designs have none. */
const arbitrarySwatches: fc.Arbitrary<Swatch[]> = fc.oneof(
  { weight: 3, arbitrary: fc.constant<Swatch[]>([]) },
  { weight: 2, arbitrary: fc.array(swatch, { maxLength: 2 }) },
);

/** Stretches as a person draws them, mixed with single cells. */
function arbitraryRow(columns: number, yarns: number): fc.Arbitrary<Uint8Array> {
  const code = fc.oneof(
    { weight: 5, arbitrary: fc.integer({ min: 1, max: yarns }) },
    { weight: 1, arbitrary: fc.constant(BARE) },
  );
  const stretch = fc.tuple(code, fc.oneof(fc.constant(1), fc.integer({ min: 1, max: columns })));
  return fc.tuple(code, fc.array(stretch, { maxLength: columns })).map(([first, stretches]) => {
    const cells = new Uint8Array(columns).fill(first);
    let at = 0;
    for (const [each, count] of stretches) {
      cells.fill(each, at, at + count);
      at += count;
    }
    return cells;
  });
}

function yarnAt(diameterMm: number, i: number): Yarn {
  return { ...defaults.yarns[i]!, id: yarnIdOf(i + 1), diameterMm };
}

/** The design with a working length that holds what `tying` says, to the tenth that plans are made in. */
function tyable(design: Design, { knotsInPiece, ...tying }: Tying): Design {
  const gauge = gaugeOf(design);
  const longest = Math.max(...design.yarns.map((yarn) => knotMm(design, yarn, gauge)));
  const held = 2 * Math.ceil(tying.tailMm * 10) + knotsInPiece * Math.ceil(longest * 10);
  const tenths = Math.ceil(held / (1 - (tying.reserveShare ?? 0)));
  return { ...design, tying: { ...tying, workingLengthMm: tenths / 10 } };
}
