import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../shared/chart/chart.ts';
import type { Block } from '../../shared/chart/patch/block.ts';
import { blockOfMotif } from '../../shared/chart/patch/block-of-motif.ts';
import { blockStrips, erasureStrips } from '../../shared/chart/patch/block-strips.ts';
import { cutMasks, invertMask, joinMasks, movedMask } from '../../shared/chart/patch/combine-masks.ts';
import { liftBlock, liftSeen } from '../../shared/chart/patch/lift-block.ts';
import { type Mask, maskOf } from '../../shared/chart/patch/mask.ts';
import { maskAll, maskOfTouching, maskOfYarn } from '../../shared/chart/patch/mask-of-cells.ts';
import { maskOfFreehand } from '../../shared/chart/patch/mask-of-freehand.ts';
import { motifOf, motifSchema } from '../../shared/chart/patch/motif.ts';
import { tiledStrips } from '../../shared/chart/patch/tiled-strips.ts';
import {
  flippedLeftRight,
  flippedTopBottom,
  scaledBlock,
  turnedHalf,
  turnedLeft,
  turnedRight,
} from '../../shared/chart/patch/turn-block.ts';
import type { ChartSize } from '../../shared/chart/tools/cell.ts';
import { joinStrips, paintStrips, type Strips } from '../../shared/chart/tools/strips.ts';
import { BARE, codeOf, EMPTY } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { apply } from '../../shared/design/edits.ts';
import { arbitraryDesign } from './arbitrary-design.ts';

fc.configureGlobal({ seed: 3_000 });

const side = fc.integer({ min: 1, max: 9 });
const code = fc.constantFrom(EMPTY, BARE, 1, 2, 3);
const block: fc.Arbitrary<Block> = fc.tuple(side, side).chain(([columns, rows]) =>
  fc
    .uint8Array({ minLength: columns * rows, maxLength: columns * rows })
    .chain((bytes) => fc.tuple(...Array.from(bytes, () => code)))
    .map((codes) => ({ columns, rows, cells: Uint8Array.from(codes) })),
);
const maskOfSize = (size: ChartSize): fc.Arbitrary<Mask> =>
  fc
    .array(fc.boolean(), { minLength: size.columns * size.rows, maxLength: size.columns * size.rows })
    .map((chosen) => maskOf(Uint8Array.from(chosen, Number), size));
const size = fc.record({ columns: side, rows: side });

function transposed({ columns, rows, cells }: Block): Block {
  const turned = cells.map((_, i) => cells[(i % rows) * columns + Math.floor(i / rows)]!);
  return { columns: rows, rows: columns, cells: turned };
}

function drawnOn(design: Design, layer: string, strips: Strips): Design {
  const edit = paintStrips(layer, strips, design);
  return edit ? apply(design, edit) : design;
}

describe('flips and turns', () => {
  it('are undone by themselves, or by what turns the other way', () => {
    fc.assert(
      fc.property(block, (each) => {
        expect(flippedLeftRight(flippedLeftRight(each))).toEqual(each);
        expect(flippedTopBottom(flippedTopBottom(each))).toEqual(each);
        expect(turnedHalf(turnedHalf(each))).toEqual(each);
        expect(turnedLeft(turnedRight(each))).toEqual(each);
        expect(turnedRight(turnedLeft(each))).toEqual(each);
      }),
    );
  });

  it('keep the laws of the square: four quarters are none, two are a half, a half is both flips', () => {
    fc.assert(
      fc.property(block, (each) => {
        expect(turnedRight(turnedRight(turnedRight(turnedRight(each))))).toEqual(each);
        expect(turnedRight(turnedRight(each))).toEqual(turnedHalf(each));
        expect(flippedLeftRight(flippedTopBottom(each))).toEqual(turnedHalf(each));
        expect(turnedRight(each)).toEqual(flippedLeftRight(transposed(each)));
        expect(turnedLeft(each)).toEqual(flippedTopBottom(transposed(each)));
      }),
    );
  });
});

describe('another size', () => {
  it('changes nothing where it is the same, and is undone where each cell became several', () => {
    fc.assert(
      fc.property(block, fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 }), (each, x, y) => {
        const larger = scaledBlock(each, each.columns * x, each.rows * y);
        expect(scaledBlock(larger, each.columns, each.rows)).toEqual(each);
        for (const [i, cell] of larger.cells.entries()) {
          const [row, column] = [Math.floor(i / larger.columns), i % larger.columns];
          expect(cell).toBe(each.cells[Math.floor(row / y) * each.columns + Math.floor(column / x)]);
        }
      }),
    );
  });
});

describe('a patch', () => {
  const patched = arbitraryDesign().chain((design) =>
    fc.record({ design: fc.constant(design), mask: maskOfSize(design), at: fc.nat() }),
  );

  it('lifted, taken away and put down where it was leaves the layer as it was', () => {
    fc.assert(
      fc.property(patched, ({ design, mask, at }) => {
        const layer = design.layers[at % design.layers.length]!;
        const { top, left } = mask.bounds ?? { top: 0, left: 0 };
        const back = blockStrips(liftBlock(layer.rows, mask), top, left);
        expect(drawnOn(design, layer.id, back)).toEqual(design);
        expect(drawnOn(design, layer.id, joinStrips([erasureStrips(mask), back]))).toEqual(design);
      }),
    );
  });

  it('taken away leaves the chosen cells empty and no other', () => {
    fc.assert(
      fc.property(patched, ({ design, mask, at }) => {
        const layer = design.layers[at % design.layers.length]!;
        const next = drawnOn(design, layer.id, erasureStrips(mask)).layers[at % design.layers.length]!;
        for (const [r, row] of layer.rows.entries()) {
          const isChosen = (c: number) => mask.chosen[r * design.columns + c] === 1;
          expect([...next.rows[r]!]).toEqual([...row].map((each, c) => (isChosen(c) ? EMPTY : each)));
        }
      }),
    );
  });

  it('lifted as it is seen and put down on top leaves the chart as it was', () => {
    fc.assert(
      fc.property(patched, ({ design, mask }) => {
        const chart = flatten(design);
        const { top, left } = mask.bounds ?? { top: 0, left: 0 };
        const upper = design.layers.findLast((layer) => layer.visible);
        if (!upper) return;
        const next = drawnOn(design, upper.id, blockStrips(liftSeen(chart, mask), top, left));
        expect(flatten(next)).toEqual(chart);
      }),
    );
  });

  it('moves with its mask: what is lifted there is what was put down', () => {
    fc.assert(
      fc.property(block, fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 3 }), (each, x, y) => {
        const chart = { columns: each.columns + 3, rows: each.rows + 3 };
        const chosen = new Uint8Array(chart.columns * chart.rows);
        for (const [i, cell] of each.cells.entries()) {
          if (cell !== EMPTY) chosen[Math.floor(i / each.columns) * chart.columns + (i % each.columns)] = 1;
        }
        const mask = maskOf(chosen, chart);
        const moved = movedMask(mask, x, y);
        expect(movedMask(moved, -x, -y)).toEqual(mask);
        const drawn = new Uint8Array(chart.columns * chart.rows);
        const strips = blockStrips(each, y, x);
        for (let i = 0; i < strips.length; i += 4) {
          const from = strips[i]! * chart.columns + strips[i + 1]!;
          drawn.fill(1, from, from + strips[i + 2]!);
        }
        expect(moved.chosen).toEqual(drawn);
      }),
    );
  });
});

describe('masks', () => {
  const three = size.chain((each) => fc.tuple(maskOfSize(each), maskOfSize(each), maskOfSize(each)));

  it('keep the laws of sets', () => {
    fc.assert(
      fc.property(three, ([a, b, c]) => {
        const none = cutMasks(a, a);
        expect(none.bounds).toBeNull();
        expect(joinMasks(a, b)).toEqual(joinMasks(b, a));
        expect(joinMasks(a, joinMasks(b, c))).toEqual(joinMasks(joinMasks(a, b), c));
        expect(joinMasks(a, a)).toEqual(a);
        expect(joinMasks(a, none)).toEqual(a);
        expect(cutMasks(a, none)).toEqual(a);
        expect(cutMasks(joinMasks(a, b), c)).toEqual(joinMasks(cutMasks(a, c), cutMasks(b, c)));
        expect(invertMask(invertMask(a))).toEqual(a);
        expect(joinMasks(a, invertMask(a))).toEqual(maskAll(a));
        expect(cutMasks(a, b)).toEqual(invertMask(joinMasks(invertMask(a), b)));
      }),
    );
  });

  it('have the smallest bounds', () => {
    fc.assert(
      fc.property(size.chain(maskOfSize), (mask) => {
        const cells = [...mask.chosen].flatMap((chosen, i) =>
          chosen === 1 ? [{ row: Math.floor(i / mask.columns), column: i % mask.columns }] : [],
        );
        const rows = cells.map(({ row }) => row);
        const columns = cells.map(({ column }) => column);
        const bounds = {
          top: Math.min(...rows),
          left: Math.min(...columns),
          bottom: Math.max(...rows),
          right: Math.max(...columns),
        };
        expect(mask.bounds).toEqual(cells.length === 0 ? null : bounds);
      }),
    );
  });

  it('by yarn part the chart without a rest, and what touches lies within the yarn', () => {
    fc.assert(
      fc.property(arbitraryDesign(), fc.nat(), (design, at) => {
        const chart = flatten(design);
        const masks = [BARE, ...design.yarns.map(({ id }) => codeOf(id))].map((each) =>
          maskOfYarn(chart, each),
        );
        expect(masks.reduce(joinMasks)).toEqual(maskAll(chart));
        const place = at % chart.cells.length;
        const start = { row: Math.floor(place / chart.columns), column: place % chart.columns };
        const touching = maskOfTouching(chart, start);
        expect(touching.chosen[place]).toBe(1);
        expect(cutMasks(touching, maskOfYarn(chart, chart.cells[place]!)).bounds).toBeNull();
      }),
    );
  });

  it('drawn by hand enclose what an even-odd count of crossings says, cell by cell', () => {
    const outline = fc.array(
      fc.record({ row: fc.integer({ min: -3, max: 14 }), column: fc.integer({ min: -3, max: 14 }) }),
      { minLength: 3, maxLength: 8 },
    );
    fc.assert(
      fc.property(outline, (way) => {
        const mask = maskOfFreehand(way, { columns: 12, rows: 12 });
        for (const [i, chosen] of mask.chosen.entries()) {
          if (isEnclosed(way, Math.floor(i / 12), i % 12)) expect(chosen).toBe(1);
        }
        const turned = [...way.slice(1), way[0]!];
        expect(maskOfFreehand(turned, { columns: 12, rows: 12 })).toEqual(mask);
      }),
    );
  });
});

/** Counts how often a line from the cell's middle to the right, a hair below the middle, crosses the outline. */
function isEnclosed(way: readonly { row: number; column: number }[], row: number, column: number): boolean {
  let crossings = 0;
  for (const [i, a] of way.entries()) {
    const b = way[(i + 1) % way.length]!;
    if (a.row <= row === b.row <= row) continue;
    const at = a.column + ((row - a.row) / (b.row - a.row)) * (b.column - a.column);
    if (at > column + 1e-9) crossings++;
  }
  return crossings % 2 === 1;
}

describe('tiles', () => {
  const tiling = fc.record({
    at: fc.record({ row: fc.integer({ min: -20, max: 20 }), column: fc.integer({ min: -20, max: 20 }) }),
    columnGap: fc.integer({ min: 0, max: 3 }),
    rowGap: fc.integer({ min: 0, max: 3 }),
    drop: fc.constantFrom('none' as const, 'half' as const),
  });
  const area = fc
    .record({
      top: fc.integer({ min: -4, max: 9 }),
      left: fc.integer({ min: -4, max: 9 }),
      columns: side,
      rows: side,
    })
    .map(({ top, left, columns, rows }) => ({
      top,
      left,
      bottom: top + rows - 1,
      right: left + columns - 1,
    }));

  it('cover each cell of the area once, with what the block has there, and none outside', () => {
    fc.assert(
      fc.property(block, area, tiling, (each, over, how) => {
        const strips = tiledStrips(each, over, how);
        const drawn = new Map<string, number>();
        for (let i = 0; i < strips.length; i += 4) {
          for (let c = 0; c < strips[i + 2]!; c++) {
            const place = `${strips[i]},${strips[i + 1]! + c}`;
            expect(drawn.has(place)).toBe(false);
            drawn.set(place, strips[i + 3]!);
          }
        }
        const across = each.columns + how.columnGap;
        const down = each.rows + how.rowGap;
        const modulo = (a: number, b: number) => a - b * Math.floor(a / b);
        let covered = 0;
        for (let row = over.top; row <= over.bottom; row++) {
          for (let column = over.left; column <= over.right; column++) {
            const tile = Math.floor((column - how.at.column) / across);
            const lower = how.drop === 'half' && modulo(tile, 2) === 1 ? Math.floor(down / 2) : 0;
            const r = modulo(row - how.at.row - lower, down);
            const c = modulo(column - how.at.column, across);
            const expected = r < each.rows && c < each.columns ? each.cells[r * each.columns + c]! : EMPTY;
            if (expected !== EMPTY) covered++;
            expect(drawn.get(`${row},${column}`) ?? EMPTY).toBe(expected);
          }
        }
        expect(drawn.size).toBe(covered);
      }),
    );
  });
});

describe('a motif', () => {
  it('kept and taken back into its own design is the block it was', () => {
    fc.assert(
      fc.property(arbitraryDesign(), (design) => {
        const each = liftSeen(flatten(design), maskAll(design));
        const kept = motifOf('m1', 'Kept', each, design.yarns);
        if (!kept.ok) throw new Error(kept.problem.sentence);
        const read = motifSchema.parse(JSON.parse(JSON.stringify(kept.value)));
        const fitted = blockOfMotif(read, design);
        if (!fitted.ok) throw new Error(fitted.problem.sentence);
        const look = (at: number) => design.yarns.find(({ id }) => codeOf(id) === at)?.color ?? at;
        expect(fitted.value.newYarns).toEqual([]);
        expect(Array.from(fitted.value.block.cells, look)).toEqual(Array.from(each.cells, look));
      }),
    );
  });
});
