import { describe, expect, it } from 'vitest';
import { figuresIn } from '../../../../shared/pattern/flow/figures.ts';

describe('figures of a pattern', () => {
  it('are written as its language writes numbers', () => {
    const english = figuresIn('both', 'en');
    const german = figuresIn('both', 'de');
    expect(english.count(1_234_567)).toBe('1,234,567');
    expect(german.count(1_234_567)).toBe('1.234.567');
    expect(english.length(342)).toBe('34.2 cm (13 1/2 in)');
    expect(german.length(342)).toBe('34,2 cm (13 1/2 Zoll)');
    expect(german.number(21.5)).toBe('21,5');
    expect(english.time(45_000)).toBe('12 h 30 min');
    expect(german.time(45_000)).toBe('12 Std. 30 Min.');
    expect(german.time(7200)).toBe('2 Std.');
    expect(german.time(90)).toBe('2 Min.');
  });

  it('are rounded alike in each of them', () => {
    const digits = (figure: string) => figure.replace(/\D/g, '');
    for (const units of ['metric', 'us', 'both'] as const) {
      const [english, german] = [figuresIn(units, 'en'), figuresIn(units, 'de')];
      for (let mm = 0.3; mm < 40_000; mm *= 1.37) {
        expect(digits(german.enough.yarnLength(mm))).toBe(digits(english.enough.yarnLength(mm)));
        expect(digits(german.enough.length(mm))).toBe(digits(english.enough.length(mm)));
        expect(digits(german.enough.mass(mm))).toBe(digits(english.enough.mass(mm)));
        expect(digits(german.thickness(mm))).toBe(digits(english.thickness(mm)));
      }
    }
  });
});
