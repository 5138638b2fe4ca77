import { describe, expect, it } from 'vitest';
import { hexToLinear, linearToHex, okLabToHex } from '../../../shared/yarn/colour.ts';

describe('a colour', () => {
  it('is refused where it is not written as #rrggbb', () => {
    for (const text of ['', 'red', '#fff', '#12345g', '#1234567', '123456']) {
      expect(() => hexToLinear(text)).toThrow('#rrggbb');
    }
  });

  it('may be written in capitals, and is given back in small letters', () => {
    expect(linearToHex(hexToLinear('#AbCdEf'))).toBe('#abcdef');
  });

  it('that no screen can show is clipped to one that can', () => {
    expect(linearToHex({ r: 1.5, g: -0.2, b: 0 })).toBe('#ff0000');
    expect(okLabToHex({ l: 0.9, a: 0.4, b: 0.4 })).toMatch(/^#[0-9a-f]{6}$/);
  });
});
