import { describe, expect, it } from 'vitest';
import { numberFault, shownNumber, writtenNumber } from '../../../renderer/shell/written-number.ts';

describe('a number in a field', () => {
  it('is read with a decimal point, a decimal comma, and as a ruler in inches has it', () => {
    expect(writtenNumber('4.8')).toBe(4.8);
    expect(writtenNumber(' 4,8 ')).toBe(4.8);
    expect(writtenNumber('13 1/2')).toBe(13.5);
    expect(writtenNumber('3/8')).toBe(0.375);
  });

  it.each(['', ' ', 'much', '1,524.5', '1/0', '3/', '1 2', '.', '0x1', '1e0', 'Infinity'])(
    'is none in “%s”',
    (text) => {
      expect(numberFault(text, { min: 0, max: 10 })).toBe('Write a number from 0 to 10.');
    },
  );

  it('is no riddle: a comma before three digits may part thousands or decimals', () => {
    const range = { min: 0, max: 100_000 };
    expect(numberFault('1,250', range)).toBe('A comma may part thousands or decimals: write 1250 or 1.25.');
    for (const plain of ['0,395', '12,5', '1,25', '1.250', '1250'])
      expect(numberFault(plain, range), plain).toBe('');
  });

  it('may be less than nothing where that is possible', () => {
    expect(writtenNumber('-2')).toBe(-2);
    expect(writtenNumber('−2,5')).toBe(-2.5);
    expect(writtenNumber('.5')).toBe(0.5);
  });

  it('that can’t be used is told so with what is possible', () => {
    const range = { min: 0.5, max: 2000, unit: 'cm' };
    expect(numberFault('x', range)).toBe('Write a number from 0.5 to 2000 cm.');
    expect(numberFault('0,4', range)).toBe('That is too little: write at least 0.5 cm.');
    expect(numberFault('2001', range)).toBe('That is too much: write at most 2000 cm.');
    expect(numberFault('2000', range)).toBe('');
    expect(numberFault('0.5', range)).toBe('');
  });

  it('of things is a whole one', () => {
    const range = { min: 1, max: 40, whole: true, unit: 'cords' };
    expect(numberFault('x', range)).toBe('Write a whole number from 1 to 40 cords.');
    expect(numberFault('8.5', range)).toBe('Only a whole number will do: 8 or 9 cords.');
    expect(numberFault('8', range)).toBe('');
  });

  it('may be just the limit that is told, however the limit is rounded', () => {
    // 1 mm and 20 m in inches.
    const range = { min: 1 / 25.4, max: 20_000 / 25.4 };
    expect(numberFault('0.001', range)).toBe('That is too little: write at least 0.04.');
    expect(numberFault('0.04', range)).toBe('');
    expect(numberFault('9999', range)).toBe('That is too much: write at most 787.401.');
    expect(numberFault('787.401', range)).toBe('');
  });

  it('is shown to three places, without the noise of sums', () => {
    expect(shownNumber(0.1 + 0.2)).toBe('0.3');
    expect(shownNumber(4 / 25.4)).toBe('0.157');
  });
});
