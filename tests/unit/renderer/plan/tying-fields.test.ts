import { describe, expect, it } from 'vitest';
import { tyingFields } from '../../../../renderer/plan/panels/tying-fields.ts';
import { withTying, writtenTying } from '../../../../renderer/plan/panels/with-tying.ts';
import { defaults } from '../../../../shared/design/defaults.ts';
import { type TyingSettings, tyingSchema } from '../../../../shared/design/schema.ts';

/** A new design's, with all that may be left out. */
const tying: TyingSettings = { ...defaults.tying, reserveShare: 0.03, liveWish: 9 };

describe('the settings for tying', () => {
  it('are all shown, each once', () => {
    expect(tyingFields.map(({ key }) => key).toSorted()).toEqual(Object.keys(tyingSchema.shape).toSorted());
  });

  it.each(['metric', 'us', 'both'] as const)('keep what is shown in %s units', (units) => {
    for (const field of tyingFields) {
      const written = writtenTying(tying, field, units);
      const next = withTying(tying, field, written, units);
      expect(writtenTying(next, field, units), field.key).toBe(written);
    }
  });

  it('are shown as a maker writes them', () => {
    const shownAs = (units: 'metric' | 'us') =>
      Object.fromEntries(
        tyingFields.map((field) => [field.key, `${writtenTying(tying, field, units)} ${field.unit(units)}`]),
      );
    expect(shownAs('metric')).toEqual({
      workingLengthMm: '152.4 cm',
      tailMm: '6.5 cm',
      effortMm: '20 cm',
      carryMaxCords: '8 cords',
      carryMaxRows: '6 rows',
      slack: '5 %',
      rowPriceMm: '1.5 cm',
      reserveShare: '3 %',
      liveWish: '9 strands',
    });
    // 60 in, the usual arm span (common practice, no source).
    expect(shownAs('us').workingLengthMm).toBe('60 inches');
  });

  it('may be left empty where that has a meaning, and are then not told at all', () => {
    const wish = tyingFields.find(({ key }) => key === 'liveWish')!;
    expect(writtenTying(defaults.tying, wish, 'metric')).toBeNull();
    expect(withTying(tying, wish, null, 'metric')).toEqual({ ...defaults.tying, reserveShare: 0.03 });
    expect(Object.keys(withTying(tying, wish, null, 'metric'))).not.toContain('liveWish');
    expect(tyingFields.filter(({ empty }) => empty).map(({ key }) => key)).toEqual(['liveWish']);
  });

  it('without a reserve, as a new design has them, show that nothing is kept free', () => {
    const reserve = tyingFields.find(({ key }) => key === 'reserveShare')!;
    expect(writtenTying(defaults.tying, reserve, 'metric')).toBe(0);
    expect(withTying(defaults.tying, reserve, 3, 'metric').reserveShare).toBe(0.03);
  });

  it('keep within what the file holds, at both ends', () => {
    for (const { key, min, max } of tyingFields)
      for (const end of [min, max])
        expect(tyingSchema.safeParse({ ...defaults.tying, [key]: end }).success, `${key} ${end}`).toBe(true);
  });
});
