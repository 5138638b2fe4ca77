import { describe, expect, it } from 'vitest';
import { papers } from '../../shared/pattern/page/papers.ts';
import { ruleMm } from '../../shared/pattern/page/style.ts';

describe('the sheets', () => {
  it('A4 is 210 x 297 mm (ISO 216)', () => {
    expect(papers.a4).toMatchObject({ widthMm: 210, heightMm: 297 });
  });

  it('A4 is as near to 1 : sqrt 2, and to a sixteenth of a square metre, as whole mm allow (ISO 216)', () => {
    const { widthMm, heightMm } = papers.a4;
    expect(Math.abs(heightMm / widthMm - Math.SQRT2)).toBeLessThan(0.001);
    expect(Math.abs((widthMm * heightMm) / 1e6 - 1 / 16)).toBeLessThan(0.0002);
  });

  it('Letter is 8.5 x 11 in (ANSI/ASME Y14.1; 1 in = 25.4 mm exactly, international yard and pound agreement)', () => {
    expect(papers.letter.widthMm).toBeCloseTo(8.5 * 25.4, 10);
    expect(papers.letter.heightMm).toBeCloseTo(11 * 25.4, 10);
  });
});

describe('the rules of a chart', () => {
  it('are between 0.18 and 2 mm, each at least twice as thick as the one below (ISO 128)', () => {
    const widths = [ruleMm.thin, ruleMm.fifth, ruleMm.tenth];
    expect(Math.min(...widths)).toBeGreaterThanOrEqual(0.18);
    expect(Math.max(...widths)).toBeLessThanOrEqual(2);
    expect(ruleMm.fifth / ruleMm.thin).toBeGreaterThanOrEqual(2);
    expect(ruleMm.tenth / ruleMm.fifth).toBeGreaterThanOrEqual(2);
  });
});
