/** Colour-vision deficiency and greys against published matrices, another library's table, and standards. */
import { filterDeficiencyDeuter, filterDeficiencyProt, filterDeficiencyTrit, wcagLuminance } from 'culori';
import { describe, expect, it } from 'vitest';
import { hexToLinear, linearToHex } from '../../shared/yarn/colour.ts';
import { type Deficiency, seenWith } from '../../shared/yarn/colour-vision.ts';
import { greyOf } from '../../shared/yarn/grey.ts';

type Bytes = readonly [r: number, g: number, b: number];

const bytesOf = (hex: string): Bytes =>
  [1, 3, 5].map((i) => Number.parseInt(hex.slice(i, i + 2), 16)) as never;

function expectWithin(most: number, hex: string, expected: Bytes): void {
  const off = bytesOf(hex).map((byte, i) => Math.abs(byte - expected[i]!));
  expect(Math.max(...off)).toBeLessThanOrEqual(most);
}

/**
 * The corners of the colour cube as Unicolour, an open-source colour library, expects them in its tests: read off a web
 * browser that shows the same model in linear light, to within 1 of 255 (tritan: 2).
 */
const corners: readonly [hex: string, protan: Bytes, deutan: Bytes, tritan: Bytes, grey: Bytes][] = [
  ['#ff0000', [109, 95, 0], [163, 144, 0], [255, 0, 13], [127, 127, 127]],
  ['#ffff00', [255, 244, 0], [255, 250, 50], [255, 238, 217], [247, 247, 247]],
  ['#00ff00', [255, 229, 0], [239, 214, 59], [0, 247, 216], [220, 220, 220]],
  ['#00ffff', [237, 242, 255], [208, 221, 255], [0, 255, 255], [230, 230, 230]],
  ['#0000ff', [0, 88, 255], [0, 61, 251], [0, 108, 150], [75, 75, 75]],
  ['#ff00ff', [0, 128, 255], [104, 155, 250], [255, 75, 151], [146, 146, 146]],
  ['#000000', [0, 0, 0], [0, 0, 0], [0, 0, 0], [0, 0, 0]],
  ['#ffffff', [255, 255, 255], [255, 255, 255], [255, 255, 255], [255, 255, 255]],
];

describe('colours by Machado, Oliveira and Fernandes 2009, in linear light', () => {
  it.each(corners)('show %s as a browser does', (hex, protan, deutan, tritan) => {
    expectWithin(1, seenWith('protan', hex), protan);
    expectWithin(1, seenWith('deutan', hex), deutan);
    expectWithin(2, seenWith('tritan', hex), tritan);
  });

  it('follow the matrices that culori holds, which it multiplies with whatever numbers it is given', () => {
    const filters: Record<Deficiency, ReturnType<typeof filterDeficiencyProt>> = {
      protan: filterDeficiencyProt(1),
      deutan: filterDeficiencyDeuter(1),
      tritan: filterDeficiencyTrit(1),
    };
    for (const deficiency of ['protan', 'deutan', 'tritan'] as const) {
      for (const hex of ['#566a94', '#28455f', '#e0955a', '#9e3329', '#5b7f4f', '#010203', '#fedcba']) {
        // culori knows no light here: the linear channels are handed over as if they were sRGB's own.
        const { r, g, b } = filters[deficiency]({ mode: 'rgb', ...hexToLinear(hex) });
        expect(seenWith(deficiency, hex)).toBe(linearToHex({ r, g, b }));
      }
    }
  });
});

describe('greys of the same light', () => {
  it.each(corners)('show %s as a person without colours sees it', (hex, _protan, _deutan, _tritan, grey) => {
    expectWithin(1, greyOf(hex), grey);
  });

  it('have the relative luminance of WCAG 2.2, to less than a step of 8 bits', () => {
    const lightOf = (byte: number) => hexToLinear(`#${byte.toString(16).padStart(2, '0').repeat(3)}`).g;
    for (const hex of ['#566a94', '#28455f', '#e0955a', '#9e3329', '#5b7f4f', '#e6ddc9', '#767676']) {
      const [byte] = bytesOf(greyOf(hex));
      expect(wcagLuminance(hex)).toBeGreaterThan(lightOf(byte - 1));
      expect(wcagLuminance(hex)).toBeLessThan(lightOf(byte + 1));
    }
  });
});
