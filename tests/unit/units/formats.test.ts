import { describe, expect, it } from 'vitest';
import { formatCutLength } from '../../../shared/units/cut-length.ts';
import { formatLength } from '../../../shared/units/length.ts';
import { formatMass } from '../../../shared/units/mass.ts';
import { formatMoney } from '../../../shared/units/money.ts';
import { decimal } from '../../../shared/units/round.ts';
import { formatThickness } from '../../../shared/units/thickness.ts';
import { formatTime } from '../../../shared/units/time.ts';
import { toldIn } from '../../../shared/units/told-in.ts';
import { formatYarnLength } from '../../../shared/units/yarn-length.ts';

describe('a length', () => {
  it.each([
    [342, '34.2 cm', '13 1/2 in'],
    [240, '24 cm', '9 1/2 in'],
    [1524, '152.4 cm', '60 in'],
    [65, '6.5 cm', '2 1/2 in'],
    [3, '3 mm', '1/8 in'],
    [0, '0 mm', '0 in'],
    [25.4, '2.5 cm', '1 in'],
    [24, '2.4 cm', '15/16 in'],
  ])('of %f mm is shown as %s or %s', (mm, metric, us) => {
    expect(formatLength(mm, 'metric')).toBe(metric);
    expect(formatLength(mm, 'us')).toBe(us);
    expect(formatLength(mm, 'both')).toBe(`${metric} (${us})`);
  });

  it.each([
    [342, '34.5 cm', '13 1/2 in'],
    [340, '34 cm', '13 1/2 in'],
    [340.1, '34.5 cm', '13 1/2 in'],
    [345.2, '35 cm', '13 3/4 in'],
    [342.9, '34.5 cm', '13 1/2 in'],
    [343, '34.5 cm', '13 3/4 in'],
  ])('of %f mm that must be enough is shown as %s or %s', (mm, metric, us) => {
    expect(formatLength(mm, 'metric', { enough: true })).toBe(metric);
    expect(formatLength(mm, 'us', { enough: true })).toBe(us);
  });

  it('that must be enough is never shown shorter than it is, nor a step too long', () => {
    for (let tenths = 1; tenths < 20_000; tenths += 7) {
      const mm = tenths / 10;
      const shown = formatLength(mm, 'metric', { enough: true });
      const [, number, unit] = /^([\d.]+) (mm|cm)$/.exec(shown)!;
      const shownMm = Number(number) * (unit === 'cm' ? 10 : 1);
      expect(shownMm).toBeGreaterThanOrEqual(mm - 1e-6);
      expect(shownMm).toBeLessThan(mm + 5);
    }
  });

  it.each([
    [59.9, '5.9 cm', '2 1/4 in'],
    [60, '6 cm', '2 1/4 in'],
    [9.99, '9.9 mm', '3/8 in'],
    [0, '0 mm', '0 in'],
  ])('of %f mm that is left over is shown as %s or %s, never more', (mm, metric, us) => {
    expect(formatLength(mm, 'metric', { spare: true })).toBe(metric);
    expect(formatLength(mm, 'us', { spare: true })).toBe(us);
  });

  it('gains no step from the noise of binary fractions', () => {
    expect(3 * 0.1 * 1000).not.toBe(300);
    expect(formatLength(3 * 0.1 * 1000, 'metric', { enough: true })).toBe('30 cm');
  });
});

describe('a length to cut', () => {
  it.each([
    [1524, '152.4 cm', '60 in'],
    [1524.1, '152.5 cm', '60 1/4 in'],
    [1450, '145 cm', '57 1/4 in'],
    [65, '6.5 cm', '2 3/4 in'],
    [9.02, '9.1 mm', '3/8 in'],
    [0, '0 mm', '0 in'],
    [50_800, '5,080 cm', '2,000 in'],
  ])('of %f mm is shown to the mark of the tape: %s or %s', (mm, metric, us) => {
    expect(formatCutLength(mm, 'metric')).toBe(metric);
    expect(formatCutLength(mm, 'us')).toBe(us);
    expect(formatCutLength(mm, 'both')).toBe(`${metric} (${us})`);
  });
});

describe('thousands', () => {
  it('are parted alike in lengths, masses, money, times and numbers', () => {
    expect(formatYarnLength(1_234_000, 'both')).toBe('1,234 m (1,350 yd)');
    expect(formatMass(1_234_500, 'both')).toBe('1,234.5 kg (2,721 lb 10 oz)');
    expect(formatMoney(1_234_567.5, 'EUR')).toBe('1,234,567.50 EUR');
    expect(formatMoney(-1234)).toBe('-1,234.00');
    expect(formatMoney(-123)).toBe('-123.00');
    expect(formatTime(3600 * 1234)).toBe('1,234 h');
    for (const count of [0, 7, 999, 1000, 12_345, 100_000, 4_000_000])
      expect(decimal(count, 1)).toBe(count.toLocaleString('en'));
    expect(decimal(1234.5678, 0.001)).toBe('1,234.568');
  });

  it('are parted by points in German', () => {
    expect(toldIn('de', formatMass(1_234_500, 'both'))).toBe('1.234,5 kg (2.721 lb 10 oz)');
    expect(toldIn('de', formatMoney(1234.5))).toBe('1.234,50');
  });
});

describe('yarn', () => {
  it('is measured in metres or yards', () => {
    expect(formatYarnLength(43_200, 'metric')).toBe('43.2 m');
    expect(formatYarnLength(43_200, 'both')).toBe('43.2 m (47.2 yd)');
    expect(formatYarnLength(120_000, 'us')).toBe('131 yd');
    expect(formatYarnLength(123_400, 'metric')).toBe('123 m');
    expect(formatYarnLength(123_400, 'metric', { enough: true })).toBe('124 m');
    expect(formatYarnLength(123_900, 'metric', { spare: true })).toBe('123 m');
  });
});

describe('thickness', () => {
  it('is in mm, or in the fractions that a label has', () => {
    expect(formatThickness(3, 'both')).toBe('3 mm (1/8 in)');
    expect(formatThickness(2, 'both')).toBe('2 mm (5/64 in)');
    expect(formatThickness(12, 'both')).toBe('12 mm (1/2 in)');
    expect(formatThickness(25.4, 'us')).toBe('1 in');
    expect(formatThickness(2.37, 'metric')).toBe('2.4 mm');
  });
});

describe('mass', () => {
  it.each([
    [3.25, '3.3 g', '0.1 oz'],
    [57.2, '57 g', '2 oz'],
    [999.6, '1 kg', '2 lb 3 oz'],
    [1250, '1.25 kg', '2 lb 12 oz'],
    [453.59237, '454 g', '1 lb'],
  ])('of %f g is shown as %s or %s', (g, metric, us) => {
    expect(formatMass(g, 'both')).toBe(`${metric} (${us})`);
  });

  it('that must be enough is rounded up', () => {
    expect(formatMass(57.2, 'both', { enough: true })).toBe('58 g (2.1 oz)');
  });
});

describe('time', () => {
  it.each([
    [0, '0 min'],
    [12, '1 min'],
    [2400, '40 min'],
    [3600, '1 h'],
    [45_660, '12 h 40 min'],
    [3599, '1 h'],
    [359_700, '99 h 55 min'],
    [361_700, '100 h'],
    [831_000, '231 h'],
  ])('of %i s is shown as %s', (seconds, shown) => {
    expect(formatTime(seconds)).toBe(shown);
  });
});
