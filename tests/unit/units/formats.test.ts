import { describe, expect, it } from 'vitest';
import { formatLength } from '../../../shared/units/length.ts';
import { formatMass } from '../../../shared/units/mass.ts';
import { formatThickness } from '../../../shared/units/thickness.ts';
import { formatTime } from '../../../shared/units/time.ts';
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

  it('gains no step from the noise of binary fractions', () => {
    expect(3 * 0.1 * 1000).not.toBe(300);
    expect(formatLength(3 * 0.1 * 1000, 'metric', { enough: true })).toBe('30 cm');
  });
});

describe('yarn', () => {
  it('is measured in metres or yards', () => {
    expect(formatYarnLength(43_200, 'metric')).toBe('43.2 m');
    expect(formatYarnLength(43_200, 'both')).toBe('43.2 m (47.2 yd)');
    expect(formatYarnLength(120_000, 'us')).toBe('131 yd');
    expect(formatYarnLength(123_400, 'metric')).toBe('123 m');
    expect(formatYarnLength(123_400, 'metric', { enough: true })).toBe('124 m');
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
  ])('of %i s is shown as %s', (seconds, shown) => {
    expect(formatTime(seconds)).toBe(shown);
  });
});
