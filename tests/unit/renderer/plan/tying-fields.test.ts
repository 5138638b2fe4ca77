import { describe, expect, it } from 'vitest';
import { tyingFields } from '../../../../renderer/plan/panels/tying-fields.ts';
import { defaults } from '../../../../shared/design/defaults.ts';
import { tyingSchema } from '../../../../shared/design/schema.ts';

describe('the settings for tying', () => {
  it('are all shown, each once', () => {
    expect(tyingFields.map(({ key }) => key).toSorted()).toEqual(Object.keys(defaults.tying).toSorted());
  });

  it.each(['metric', 'us', 'both'] as const)('keep what is shown in %s units', (units) => {
    for (const { key, shown, kept } of tyingFields) {
      const written = shown(defaults.tying[key], units);
      expect(shown(kept(written, units), units), key).toBe(written);
    }
  });

  it('are shown as a maker writes them', () => {
    const shownAs = (units: 'metric' | 'us') =>
      Object.fromEntries(
        tyingFields.map(({ key, shown, unit }) => [
          key,
          `${shown(defaults.tying[key], units)} ${unit(units)}`,
        ]),
      );
    expect(shownAs('metric')).toEqual({
      workingLengthMm: '152.4 cm',
      tailMm: '6.5 cm',
      effortMm: '20 cm',
      carryMaxCords: '8 cords',
      carryMaxRows: '6 rows',
      slack: '5 %',
      rowPriceMm: '1.5 cm',
    });
    // 60 in, the usual arm span (common practice, no source).
    expect(shownAs('us').workingLengthMm).toBe('60 inches');
  });

  it('keep within what the file holds, at both ends', () => {
    for (const { key, min, max } of tyingFields)
      for (const end of [min, max])
        expect(tyingSchema.safeParse({ ...defaults.tying, [key]: end }).success, `${key} ${end}`).toBe(true);
  });
});
