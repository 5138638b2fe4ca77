import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { codeOf } from '../../../shared/design/codes.ts';
import { defaults } from '../../../shared/design/defaults.ts';
import { type CellColours, cellColours } from '../../../shared/picture/cell-colours.ts';
import { chooseColours } from '../../../shared/picture/choose-colours.ts';
import { chooseYarns } from '../../../shared/picture/choose-yarns.ts';
import { colourTally } from '../../../shared/picture/colour-tally.ts';
import { matchYarns } from '../../../shared/picture/match-yarns.ts';
import { hexToLinear } from '../../../shared/yarn/colour.ts';
import { deltaE2000 } from '../../../shared/yarn/colour-difference.ts';

const symbols = [...'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789@&'];
const like = { diameterMm: 3.5, metresPer100G: 90, skeinG: 200 };
const hex = fc.integer({ min: 0, max: 0xffffff }).map((rgb) => `#${rgb.toString(16).padStart(6, '0')}`);

function cellsFrom(hexes: readonly string[]): CellColours {
  const lights = hexes.map(hexToLinear);
  return cellColours(Float64Array.from(lights.flatMap(({ r, g, b }) => [r, g, b])));
}

const choose = (hexes: readonly string[], count: number) =>
  chooseYarns(cellsFrom(hexes), { count, symbols, like });

/** Cells of a colour again and again. */
const times = (count: number, colour: string) => Array<string>(count).fill(colour);

describe('yarns chosen from a picture', () => {
  it('have exactly the colours of a picture that has no more than asked', () => {
    fc.assert(
      fc.property(fc.uniqueArray(hex, { minLength: 1, maxLength: 64 }), fc.nat(20), (colours, more) => {
        const { yarns, codes } = choose(colours, Math.min(64, colours.length + more));
        expect(new Set(yarns.map(({ color }) => color))).toEqual(new Set(colours));
        const byCode = new Map(yarns.map(({ id, color }) => [codeOf(id), color]));
        expect(Array.from(codes, (code) => byCode.get(code))).toEqual(colours);
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  it('are as many as asked where the picture has enough colours that differ', () => {
    const shades = Array.from(
      { length: 2000 },
      (_, i) => `#${((i * 7919 * 1031) % 0x1000000).toString(16).padStart(6, '0')}`,
    );
    for (const count of [1, 2, 5, 10, 30, 64]) expect(choose(shades, count).yarns).toHaveLength(count);
  });

  it('come in the order of the cells they cover, the first being the ground to take', () => {
    const cells = [...times(3, '#112233'), ...times(7, '#eeddcc'), ...times(5, '#cc2211')];
    expect(choose(cells, 3).yarns.map(({ id, color }) => [id, color])).toEqual([
      ['y1', '#eeddcc'],
      ['y2', '#cc2211'],
      ['y3', '#112233'],
    ]);
  });

  it('copy thickness, metres and skein from the yarn they are told to be like', () => {
    const [yarn] = choose(['#800000'], 1).yarns;
    expect(yarn).toEqual({ id: 'y1', name: 'Dark red', color: '#800000', symbol: 'a', ...like });
  });

  it('have names and symbols of their own', () => {
    fc.assert(
      fc.property(fc.uniqueArray(hex, { minLength: 10, maxLength: 64 }), (colours) => {
        const { yarns } = choose(colours, 64);
        expect(new Set(yarns.map(({ name }) => name)).size).toBe(yarns.length);
        expect(new Set(yarns.map(({ symbol }) => symbol)).size).toBe(yarns.length);
      }),
      { seed: 8, numRuns: 50 },
    );
  });

  it('are the same whatever the order of the cells, and each time', () => {
    fc.assert(
      fc.property(
        fc.array(hex, { minLength: 1, maxLength: 300 }),
        fc.integer({ min: 1, max: 12 }),
        (colours, count) => {
          const forwards = choose(colours, count);
          const backwards = choose(colours.toReversed(), count);
          expect(backwards.yarns).toEqual(forwards.yarns);
          expect(backwards.codes.toReversed()).toEqual(forwards.codes);
        },
      ),
      { seed: 9, numRuns: 100 },
    );
  });

  it('keep a flat colour as it is, though the cells along its edges are mixtures', () => {
    const edges = Array.from({ length: 30 }, (_, i) => `#ff${(i * 4).toString(16).padStart(2, '0')}00`);
    const cells = [...times(300, '#ff0000'), ...edges, ...times(200, '#0000ff'), ...times(20, '#2000e0')];
    expect(new Set(chooseColours(cellsFrom(cells), 2))).toEqual(new Set(['#ff0000', '#0000ff']));
  });

  it('leave out a colour of few cells that can’t be told from one of many, and give its cells to that one', () => {
    const cells = [...times(300, '#28455f'), ...times(6, '#294661'), ...times(40, '#e0955a')];
    const { yarns, codes } = choose(cells, 6);
    expect(yarns.map(({ color }) => color)).toEqual(['#28455f', '#e0955a']);
    expect(codes.filter((code) => code === 1)).toHaveLength(306);
  });

  it('keep two colours that look alike where both have many cells, and a colour of few that looks like no other', () => {
    const alike = [...times(60, '#28455f'), ...times(6, '#294661')];
    expect(choose(alike, 4).yarns).toHaveLength(2);
    expect(choose([...times(300, '#28455f'), '#f5c842'], 4).yarns).toHaveLength(2);
  });

  it('of a disc with blended edges are its colour, its ground’s, and shades between that can be told apart', () => {
    const side = 40;
    const cells = Array.from({ length: side * side }, (_, i) => {
      const edge = Math.hypot((i % side) - 19.5, Math.floor(i / side) - 19.5) - 12;
      const share = Math.min(1, Math.max(0, edge + 0.5));
      const mixed = [0xe0, 0x95, 0x5a].map((disc, k) =>
        Math.round(disc + ([0x28, 0x45, 0x5f][k]! - disc) * share),
      );
      return `#${Buffer.from(mixed).toString('hex')}`;
    });
    const { yarns } = choose(cells, 12);
    for (const [i, yarn] of yarns.entries())
      for (const other of yarns.slice(0, i)) {
        const isField = i < 2 || yarns.indexOf(other) < 2;
        if (isField) expect(deltaE2000(yarn.color, other.color)).toBeGreaterThan(2);
      }
    expect(yarns.slice(0, 2).map(({ color }) => color)).toEqual(['#28455f', '#e0955a']);
  });

  it('serve every cell better, the more of them there are', () => {
    const shade = Array.from(
      { length: 1000 },
      (_, i) =>
        `#${[i % 256, (i * 3) % 256, (i * 7) % 256].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`,
    );
    const farness = [1, 2, 4, 8, 16, 32].map((count) => {
      const { yarns, codes } = choose(shade, count);
      const color = new Map(yarns.map((yarn) => [codeOf(yarn.id), yarn.color]));
      return shade.reduce((sum, each, i) => sum + deltaE2000(each, color.get(codes[i]!)!), 0);
    });
    expect(farness).toEqual(farness.toSorted((a, b) => b - a));
  });

  it('need enough symbols', () => {
    expect(() => chooseYarns(cellsFrom(['#000000']), { count: 3, symbols: ['a', 'b'], like })).toThrow(
      'symbols',
    );
  });
});

describe('the tally of colours', () => {
  it.each([3000, 60_000])(
    'counts every one of %d cells of different colours, finely or coarsely',
    (count) => {
      const step = Math.floor(0x1000000 / count);
      const hexes = Array.from({ length: count }, (_, i) => `#${(i * step).toString(16).padStart(6, '0')}`);
      const cells = cellsFrom(hexes);
      const points = colourTally(cells);
      expect(points.length).toBeLessThanOrEqual(20_000);
      expect(points.length).toBeGreaterThanOrEqual(3000);
      expect(points.reduce((sum, point) => sum + point.cells, 0)).toBe(count);
      for (const [k, axis] of (['l', 'a', 'b'] as const).entries()) {
        const sum = points.reduce((total, point) => total + point.cells * point[axis], 0);
        const expected = cells.reduce((total, value, i) => (i % 3 === k ? total + value : total), 0);
        expect(sum / expected).toBeCloseTo(1, 9);
      }
    },
  );

  it('tells any two colours of a screen apart where there are few', () => {
    fc.assert(
      fc.property(hex, fc.constantFrom(1, 256, 65536), (colour, step) => {
        const near = `#${((Number.parseInt(colour.slice(1), 16) + step) % 0x1000000).toString(16).padStart(6, '0')}`;
        expect(colourTally(cellsFrom([colour, near]))).toHaveLength(2);
      }),
      { seed: 10, numRuns: 5000 },
    );
  });
});

describe('the yarns of a design', () => {
  it('go each to the cells of its own colour', () => {
    const { yarns } = defaults;
    const cells = cellsFrom(yarns.map(({ color }) => color));
    expect([...matchYarns(cells, yarns)]).toEqual(yarns.map(({ id }) => codeOf(id)));
  });

  it('go to the cells that look most like them', () => {
    const yarns = [
      { id: 'y9', color: '#ffffff' },
      { id: 'y2', color: '#cc0000' },
      { id: 'y40', color: '#103060' },
    ] as const;
    const cells = cellsFrom(['#e8e0d0', '#a03020', '#204080', '#ff8080']);
    expect([...matchYarns(cells, yarns)]).toEqual([9, 2, 40, 2]);
  });

  it('go to the first in the list where two have one colour', () => {
    const yarns = [
      { id: 'y5', color: '#336633' },
      { id: 'y1', color: '#336633' },
    ] as const;
    expect([...matchYarns(cellsFrom(['#336633', '#000000']), yarns)]).toEqual([5, 5]);
  });
});
