import { describe, expect, it } from 'vitest';
import { doubt, swatchFrom } from '../../../renderer/plan/swatches/measured-swatch.ts';
import { differenceWords, measuredWords, swatchName } from '../../../renderer/plan/swatches/swatch-words.ts';
import { newDesign } from '../../../shared/design/new-design.ts';
import type { Swatch } from '../../../shared/design/schema.ts';
import { fitSwatches } from '../../../shared/gauge/fit-swatches.ts';

const design = newDesign({ title: 'Any', columns: 40, rows: 50 });
const size = { widthMm: 100, cords: 20, heightMm: 96, rows: 20 };
const sentence = (written: Parameters<typeof swatchFrom>[0]) => {
  const made = swatchFrom(written, design);
  return made.ok ? '' : made.problem.sentence;
};

describe('a swatch that is written down', () => {
  it('needs width over cords and height over rows', () => {
    expect(sentence({})).toMatch(/width/);
    expect(sentence({ widthMm: 100 })).toMatch(/width/);
    expect(sentence({ widthMm: 100, cords: 20, heightMm: 96 })).toMatch(/height/);
    expect(sentence(size)).toBe('');
  });

  it('has yarn and knots, and cord before and after, both or neither', () => {
    expect(sentence({ ...size, yarnMm: 1900 })).toMatch(/Yarn and knots/);
    expect(sentence({ ...size, knots: 60 })).toMatch(/Yarn and knots/);
    expect(sentence({ ...size, cordAfterMm: 78 })).toMatch(/before and after/);
    expect(sentence({ ...size, yarnMm: 1900, knots: 60, cordBeforeMm: 80, cordAfterMm: 78 })).toBe('');
  });

  it('never has a cord that grew', () => {
    expect(sentence({ ...size, cordBeforeMm: 78, cordAfterMm: 80 })).toMatch(/never comes out longer/);
  });

  it('remembers what it was tied with, and leaves out what was not told', () => {
    const made = swatchFrom({ ...size, name: '', yarnMm: undefined }, design);
    expect(made).toEqual({ ok: true, value: { ...size, cordDiameterMm: 3, yarnDiameterMm: 2 } });
    const thick = swatchFrom({ ...size, cordDiameterMm: 4 }, design);
    expect(thick).toMatchObject({ value: { cordDiameterMm: 4, yarnDiameterMm: 2 } });
  });

  it('is fitted as a swatch of this hanging', () => {
    const made = swatchFrom(size, design);
    if (!made.ok) throw new Error(made.problem.sentence);
    expect(fitSwatches({ ...design, swatches: [made.value] }).size.from).toBe('swatches');
  });

  it('is doubted where a unit must be wrong, and only there', () => {
    expect(doubt(size, design)).toBe('');
    expect(doubt({ ...size, widthMm: 1000 }, design)).toMatch(/units/);
    expect(doubt({ ...size, heightMm: 9.6 }, design)).toMatch(/units/);
  });
});

describe('the words for a swatch', () => {
  it('are its name, or its place', () => {
    expect(swatchName({ name: 'Evening' }, 4)).toBe('Evening');
    expect(swatchName({}, 1)).toBe('Swatch 2');
  });

  it('say what was measured, in the maker’s units', () => {
    const swatch: Swatch = { ...size, yarnMm: 1900, knots: 60, cordBeforeMm: 80, cordAfterMm: 78 };
    expect(measuredWords(swatch, 'metric')).toBe(
      '10 cm over 20 cords, 9.6 cm over 20 rows; 190 cm of yarn over 60 knots; a cord of 8 cm came out as 7.8 cm',
    );
    expect(measuredWords({ ...size, widthMm: 101.6 }, 'us')).toBe('4 in over 20 cords, 3.78 in over 20 rows');
  });

  it('say how it differs from the others', () => {
    const of = (acrossShare: number, downShare: number, yarnShare: number | null) =>
      differenceWords({ acrossShare, downShare, yarnShare });
    expect(differenceWords(null)).toBe('');
    expect(of(0.001, -0.004, null)).toBe('It agrees with the others.');
    expect(of(-0.04, 0, null)).toBe('It is 4 % tighter across than the others.');
    expect(of(-0.04, 0.02, 0.03)).toBe(
      'It is 4 % tighter across and 2 % looser down and takes 3 % more yarn than the others.',
    );
    expect(of(0, 0, -0.03)).toBe('It takes 3 % less yarn than the others.');
    expect(of(0.09, 0, null)).toMatch(/Measure it again/);
  });
});
