import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { alikePairs, LOOK_ALIKE_LIGHTNESS } from '../../../shared/yarn/alike-pairs.ts';
import { placesOf, touchingPairs } from '../../../shared/yarn/touching.ts';
import { designFromLetters } from '../../notation.ts';

const chartOf = (rows: string[]) => flatten(designFromLetters(rows));

/** `rows` in yarns of these colours, and what is alike in it. */
function alikeIn(rows: string[], ...colours: string[]) {
  const yarns = colours.map((color, i) => ({ id: `y${i + 1}` as const, color }));
  return alikePairs(chartOf(rows), yarns);
}

const sightsOf = (pairs: ReturnType<typeof alikePairs>) =>
  pairs.map(({ a, b, alike }) => [a, b, ...alike.map(({ sight }) => sight)]);

describe('yarns that touch', () => {
  it('are beside one another or one above the other, in as many places as there are', () => {
    expect(touchingPairs(chartOf(['aab', 'acb']))).toEqual([
      { a: 1, b: 3, count: 2 },
      { a: 1, b: 2, count: 1 },
      { a: 2, b: 3, count: 1 },
    ]);
  });

  it('do not touch at corners, across bare cells, or from one end of a row to the next', () => {
    expect(touchingPairs(chartOf(['a-', '-b']))).toEqual([]);
    expect(touchingPairs(chartOf(['a-b']))).toEqual([]);
    expect(touchingPairs(chartOf(['--a', 'b--']))).toEqual([]);
  });

  it('are shown on both sides of where they touch, and nowhere else', () => {
    const chart = chartOf(['aaab', 'acbb', 'aaaa']);
    expect(Array.from(placesOf(chart, 1, 2))).toEqual([0, 0, 1, 1, 0, 0, 1, 1, 0, 0, 1, 1]);
    expect(placesOf(chart, 2, 1)).toEqual(placesOf(chart, 1, 2));
    expect(placesOf(chart, 1, 1).some((mark) => mark === 1)).toBe(false);
  });
});

describe('touching yarns that look alike', () => {
  it('are named with every sight in which they do, and in how many places they touch', () => {
    const pairs = alikeIn(['aab', 'aab'], '#5b7f4f', '#5e8252');
    expect(sightsOf(pairs)).toEqual([[1, 2, 'normal', 'protan', 'deutan', 'tritan', 'grey']]);
    expect(pairs[0]!.count).toBe(2);
    expect(pairs[0]!.alike[0]!.difference).toBeGreaterThan(0);
  });

  it('may be told apart by most people, and not by some', () => {
    expect(sightsOf(alikeIn(['ab'], '#7a7430', '#97672c'))).toEqual([[1, 2, 'protan', 'deutan', 'grey']]);
    expect(sightsOf(alikeIn(['ab'], '#c03020', '#206060'))).toEqual([[1, 2, 'grey']]);
  });

  it('are not named where they do not touch, nor where they differ in every sight', () => {
    expect(alikeIn(['a-b'], '#5b7f4f', '#5e8252')).toEqual([]);
    expect(alikeIn(['ab'], '#101010', '#e6ddc9')).toEqual([]);
  });

  it('are lost in grey up to the stated difference in lightness', () => {
    const dark = '#404040';
    for (let byte = 0x41; byte < 0x60; byte++) {
      const hex = `#${byte.toString(16).repeat(3)}`;
      const found = alikeIn(['ab'], dark, hex).flatMap(
        ({ alike }) => alike.find(({ sight }) => sight === 'grey') ?? [],
      );
      const far = lightness(byte) - lightness(0x40) >= LOOK_ALIKE_LIGHTNESS;
      expect(found.length).toBe(far ? 0 : 1);
    }
  });

  it('are a fault of ours where the chart has a yarn that is not listed', () => {
    expect(() => alikeIn(['ab'], '#5b7f4f')).toThrow('code 2');
  });
});

/** Lightness L* of a grey of 8 bits, by CIE 15 and IEC 61966-2-1. */
function lightness(byte: number): number {
  const light = ((byte / 255 + 0.055) / 1.055) ** 2.4;
  return 116 * Math.cbrt(light) - 16;
}
