import { describe, expect, it } from 'vitest';
import { byteOfLight, lightOfByte, meanLight, thinned } from '../../../../renderer/surface/linear-light.ts';

describe('light and the bytes that make it', () => {
  it('comes back to every byte from its light', () => {
    for (let byte = 0; byte < 256; byte++) expect(byteOfLight(lightOfByte[byte]!)).toBe(byte);
  });

  it('grows with every byte', () => {
    for (let byte = 1; byte < 256; byte++) expect(lightOfByte[byte]!).toBeGreaterThan(lightOfByte[byte - 1]!);
  });
});

describe('a picture made smaller', () => {
  const black = [0, 0, 0, 255];
  const white = [255, 255, 255, 255];

  it('keeps the light of what becomes one pixel', () => {
    const bytes = Uint8ClampedArray.from([...black, ...white, ...white, ...black]);
    // Half of full light: IEC 61966-2-1, 0.7354 of 255.
    expect([...thinned(bytes, 2, 2, 2)]).toEqual([188, 188, 188, 255]);
  });

  it('leaves what lies beside a part out of its mean', () => {
    const bytes = Uint8ClampedArray.from([...black, ...white]);
    expect(meanLight(bytes, 2, { left: 1, top: 0, width: 1, height: 1 })).toEqual([1, 1, 1]);
  });
});
