/**
 * Random designs for property tests: small charts of several layers, bare and empty cells, hidden and locked layers,
 * any Unicode in names, yarns in any order of any ids, priced and owned or not, fringes of every shape, a picture under the
 * chart or none, a photograph for the cover, keys that no version knows.
 */
import fc from 'fast-check';
import { BARE, codeOf, EMPTY, yarnIdOf } from '../../shared/design/codes.ts';
import { defaults } from '../../shared/design/defaults.ts';
import type { Design, Layer } from '../../shared/design/design.ts';
import type {
  Fringe,
  Money,
  PatternSettings,
  Pin,
  Reference,
  Swatch,
  Yarn,
} from '../../shared/design/schema.ts';
import { fringeByHand } from '../../shared/gauge/fringe.ts';

export interface ArbitraryDesign {
  maxColumns?: number;
  maxRows?: number;
  maxLayers?: number;
  maxYarns?: number;
}

export const symbolAlphabet = [...'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789@&'];

const filledName = fc.oneof(
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }),
  fc.string({ unit: 'binary', minLength: 1, maxLength: 12 }),
);
const name = fc.oneof(fc.constant(''), filledName);
const money = fc.oneof(fc.integer({ min: 0, max: 1_000_000 }), fc.double({ min: 0, max: 50, noNaN: true }));
const skeins = fc.constantFrom(0, 0.25, 1, 2.5, 100_000);
const mm = fc.oneof(fc.integer({ min: 1, max: 5000 }), fc.double({ min: 0.001, max: 5000, noNaN: true }));

/** Keys of another version or another program; none is one of ours, and none is `__proto__`, which is never kept. */
const strangers = fc
  .dictionary(
    fc.string({ minLength: 1, maxLength: 8 }).map((key) => `x${key}`),
    fc.jsonValue({ maxDepth: 2 }),
    { maxKeys: 2, noNullPrototype: true },
  )
  .map(
    (keys) =>
      JSON.parse(JSON.stringify(keys), (key, value: unknown) =>
        key === '__proto__' ? undefined : value,
      ) as Record<string, unknown>,
  );

export function arbitraryDesign({
  maxColumns = 12,
  maxRows = 10,
  maxLayers = 4,
  maxYarns = 8,
}: ArbitraryDesign = {}): fc.Arbitrary<Design> {
  const size = fc.record({
    columns: fc.integer({ min: 1, max: maxColumns }),
    rows: fc.integer({ min: 1, max: maxRows }),
    layerCount: fc.integer({ min: 1, max: maxLayers }),
    yarns: arbitraryYarns(maxYarns),
  });
  return size.chain(({ columns, rows, layerCount, yarns }) =>
    fc
      .record({
        strangers,
        title: filledName,
        designer: name,
        notes: name,
        startCorner: fc.constantFrom('top-left' as const, 'top-right' as const),
        cord: fc.record({ strangers, name, diameterMm: mm }),
        fringe: arbitraryFringe(maxColumns),
        reference: fc.option(arbitraryReference()),
        pattern: fc.option(arbitraryPatternSettings(), { nil: undefined }),
        swatches: fc.array(arbitrarySwatch(), { maxLength: 3 }),
        money: fc.option(arbitraryMoney(), { nil: undefined }),
        pins: fc.option(fc.array(arbitraryPin(), { maxLength: 4 }), { nil: undefined }),
        bundles: fc.option(arbitraryBundles(), { nil: undefined }),
        ground: fc.constantFrom(...yarns.map(({ id }) => id)),
        layers: fc.tuple(
          ...Array.from({ length: layerCount }, (_, i) => arbitraryLayer(i, columns, rows, yarns)),
        ),
      })
      .map(
        (parts): Design => ({
          ...parts.strangers,
          title: parts.title,
          designer: parts.designer,
          notes: parts.notes,
          startCorner: parts.startCorner,
          columns,
          rows,
          cord: {
            ...defaults.cord,
            ...parts.cord.strangers,
            name: parts.cord.name,
            diameterMm: parts.cord.diameterMm,
          },
          dowel: defaults.dowel,
          fringe: parts.fringe,
          swatches: parts.swatches,
          tying: defaults.tying,
          ...(parts.pins && { pins: parts.pins }),
          ...(parts.bundles && { bundles: parts.bundles }),
          rates: defaults.rates,
          yarnMargin: defaults.yarnMargin,
          ...(parts.money && { money: parts.money }),
          ground: parts.ground,
          yarns,
          layers: parts.layers,
          reference: parts.reference,
          ...(parts.pattern && { pattern: parts.pattern }),
        }),
      ),
  );
}

function arbitraryBundles(): fc.Arbitrary<NonNullable<Design['bundles']>> {
  const yarn = fc.constantFrom('y1' as const, 'y64' as const);
  const cut = fc.record({ strangers, yarn, cutMm: mm, pieces: fc.integer({ min: 1, max: 1_000_000 }) });
  return fc
    .record(
      {
        fitted: fc.boolean(),
        cut: fc.array(
          cut.map(({ strangers: others, ...each }) => ({ ...others, ...each })),
          { minLength: 1, maxLength: 3 },
        ),
        labelled: fc.constant('0f'.repeat(32)),
        plan: fc.record({
          pitchMm: mm,
          rowHeightMm: mm,
          knots: fc.array(fc.record({ yarn, knotMm: mm }), { maxLength: 2 }),
          rows: fc.array(fc.constantFrom('-', '- 2 1+3'), { maxLength: 3 }),
          of: fc.constant('e1'.repeat(32)),
        }),
      },
      { requiredKeys: [] },
    )
    .filter((bundles) => Object.keys(bundles).length > 0);
}

function arbitraryYarns(maxYarns: number): fc.Arbitrary<Yarn[]> {
  const bare = fc.record({
    strangers,
    name: filledName,
    color: fc.integer({ min: 0, max: 0xffffff }),
    diameterMm: mm,
    told: fc.record({ price: money, ownedSkeins: skeins }, { requiredKeys: [] }),
  });
  return fc
    .integer({ min: 1, max: maxYarns })
    .chain((count) =>
      fc.tuple(
        fc.array(bare, { minLength: count, maxLength: count }),
        fc.uniqueArray(fc.integer({ min: 1, max: 64 }), { minLength: count, maxLength: count }),
        fc.shuffledSubarray(symbolAlphabet, { minLength: count, maxLength: count }),
      ),
    )
    .map(([yarns, codes, symbols]) =>
      yarns.map((each, i) => ({
        ...defaults.yarns[0]!,
        ...each.strangers,
        id: yarnIdOf(codes[i]!),
        name: each.name,
        color: `#${each.color.toString(16).padStart(6, '0')}`,
        symbol: symbols[i]!,
        diameterMm: each.diameterMm,
        ...each.told,
      })),
    );
}

function arbitraryFringe(maxColumns: number): fc.Arbitrary<Fringe> {
  const even = fc
    .record({
      strangers,
      shape: fc.constantFrom('straight' as const, 'v' as const, 'inverted-v' as const, 'curve' as const),
    })
    .map(({ strangers: others, shape }) => ({ ...defaults.fringe, ...others, shape }));
  // Of another number of cords than the chart has, too: the chart may have been resized since.
  const byHand = fc.array(fc.nat({ max: 400 }), { minLength: 1, maxLength: maxColumns }).map(fringeByHand);
  return fc.oneof(even, byHand);
}

/** A picture's bytes, in lines of base64. They are those of no picture. */
function arbitraryPicture(): fc.Arbitrary<string[]> {
  const whole = fc
    .uint8Array({ minLength: 3, maxLength: 30 })
    .map((bytes) => bytes.subarray(0, bytes.length - (bytes.length % 3)));
  const last = fc.uint8Array({ minLength: 1, maxLength: 30 });
  const line = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64');
  return fc.tuple(fc.array(whole, { maxLength: 3 }), last).map(([first, end]) => [...first, end].map(line));
}

function arbitraryReference(): fc.Arbitrary<Reference> {
  return fc
    .record({
      strangers,
      name,
      mediaType: fc.constantFrom('image/png' as const, 'image/jpeg' as const, 'image/webp' as const),
      picture: arbitraryPicture(),
      opacity: fc.double({ min: 0, max: 1, noNaN: true }),
      leftMm: fc.integer({ min: -500, max: 500 }),
      // JSON has no -0: it is written as 0.
      topMm: fc.double({ min: -500, max: 500, noNaN: true }).map((top) => top + 0),
      widthMm: mm,
      heightMm: mm,
      visible: fc.boolean(),
    })
    .map(({ strangers: others, ...reference }) => ({ ...others, ...reference }));
}

function arbitraryPatternSettings(): fc.Arbitrary<PatternSettings> {
  const px = fc.integer({ min: 1, max: 10_000 });
  const cover = fc
    .record({
      strangers,
      mediaType: fc.constantFrom('image/png' as const, 'image/jpeg' as const),
      widthPx: px,
      heightPx: px,
      picture: arbitraryPicture(),
    })
    .map(({ strangers: others, ...photograph }) => ({ ...others, ...photograph }));
  const labels = fc.record({ cordFibre: name, yarnFibre: name }, { requiredKeys: [] });
  const texts = fc.record({ welcome: name, terms: name, notes: name }, { requiredKeys: [] });
  return fc.record({ cover, labels, texts }, { requiredKeys: [] });
}

function arbitrarySwatch(): fc.Arbitrary<Swatch> {
  const count = fc.integer({ min: 1, max: 100 });
  const measured = fc.record({ strangers, widthMm: mm, cords: count, heightMm: mm, rows: count });
  const yarn = fc.option(fc.record({ yarnMm: mm, knots: count }), { nil: undefined });
  const cord = fc.option(fc.record({ cordBeforeMm: mm, cordAfterMm: mm }), { nil: undefined });
  const told = fc.record(
    {
      cordDiameterMm: mm,
      yarnDiameterMm: mm,
      name,
      told: fc.constant(true as const),
      date: fc.constantFrom('2031-05-08', '1999-12-31'),
    },
    { requiredKeys: [] },
  );
  return fc.tuple(measured, yarn, cord, told).map(([{ strangers: others, ...swatch }, used, leg, rest]) => ({
    ...others,
    ...swatch,
    ...used,
    ...leg,
    ...rest,
  }));
}

/** On any cells, also of charts that are larger than this one. */
function arbitraryPin(): fc.Arbitrary<Pin> {
  const cell = fc.record({ row: fc.integer({ min: 1, max: 14 }), cord: fc.integer({ min: 1, max: 14 }) });
  const place = fc
    .record({ strangers, kind: fc.constantFrom('cut' as const, 'no-carry' as const), cell })
    .map((pin) => ({ ...pin.strangers, kind: pin.kind, ...pin.cell }));
  const carry = fc.record({ strangers, from: cell, to: cell }).map((pin) => ({
    ...pin.strangers,
    kind: 'carry' as const,
    ...pin.from,
    toRow: pin.to.row,
    toCord: pin.to.cord,
  }));
  return fc.oneof(place, carry);
}

function arbitraryMoney(): fc.Arbitrary<Money> {
  const times = fc.constantFrom(0.5, 1, 2, 2.2, 100);
  return fc
    .record(
      {
        strangers,
        currency: fc.constantFrom('EUR', 'XTS'),
        cordPricePerM: money,
        dowelPrice: money,
        backingPrice: money,
        patternFees: money,
        hourlyRate: money,
        overheadShare: fc.double({ min: 0, max: 10, noNaN: true }),
        wholesale: fc.constantFrom('sum' as const, 'keystone' as const),
        sumTimes: times,
        keystoneTimes: times,
        retailTimes: times,
      },
      { requiredKeys: ['strangers'] },
    )
    .map(({ strangers: others, ...told }) => ({ ...others, ...told }));
}

function arbitraryLayer(
  index: number,
  columns: number,
  rows: number,
  yarns: readonly Yarn[],
): fc.Arbitrary<Layer> {
  const code = fc.constantFrom(EMPTY, BARE, ...yarns.map(({ id }) => codeOf(id)));
  // Stretches as a person draws them, so that both long and short runs occur.
  const row = fc
    .array(fc.tuple(code, fc.integer({ min: 1, max: columns })), { minLength: 1, maxLength: columns })
    .map((stretches) => {
      const cells = new Uint8Array(columns).fill(stretches[0]![0]);
      let at = 0;
      for (const [each, count] of stretches) {
        cells.fill(each, at, at + count);
        at += count;
      }
      return cells;
    });
  return fc
    .record({
      strangers,
      name,
      visible: fc.boolean(),
      locked: fc.boolean(),
      cells: fc.array(row, { minLength: rows, maxLength: rows }),
    })
    .map((layer) => ({
      ...layer.strangers,
      id: `layer-${index + 1}`,
      name: layer.name,
      visible: layer.visible,
      locked: layer.locked,
      rows: layer.cells,
    }));
}
