import { describe, expect, it } from 'vitest';
import { counted } from '../../../shared/units/counted.ts';

describe('things that are counted', () => {
  it('stand in the singular and the plural', () => {
    expect(counted(1, 'knot')).toBe('1 knot');
    expect(counted(0, 'knot')).toBe('0 knots');
    expect(counted(1204, 'knot')).toBe('1,204 knots');
    expect(counted(2, 'carry is', 'carries are')).toBe('2 carries are');
  });

  it('keep a number that a language has written already', () => {
    expect(counted('1', 'Schnur', 'Schnüre')).toBe('1 Schnur');
    expect(counted('1.080', 'Reihe', 'Reihen')).toBe('1.080 Reihen');
  });
});
