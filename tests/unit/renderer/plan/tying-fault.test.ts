import { describe, expect, it } from 'vitest';
import { longestKnotMm, tyingFault } from '../../../../renderer/plan/panels/tying-fault.ts';
import { tyingFields } from '../../../../renderer/plan/panels/tying-fields.ts';
import { withTying } from '../../../../renderer/plan/panels/with-tying.ts';
import { flatten } from '../../../../shared/chart/chart.ts';
import { defaults } from '../../../../shared/design/defaults.ts';
import { tyingSchema } from '../../../../shared/design/schema.ts';
import { designFromLetters } from '../../../notation.ts';

describe('settings for tying that are being written', () => {
  const design = designFromLetters(['aab', 'b.-']);
  const longestMm = longestKnotMm(design, flatten(design));

  it('are refused in the maker’s own units where a piece holds no knot', () => {
    const tiny = { ...defaults.tying, workingLengthMm: 1 };
    expect(tyingFault(tiny, longestMm, 'metric')).toMatch(/^A piece of 1 mm can't hold one knot of .* cm/);
    expect(tyingFault(tiny, longestMm, 'us')).toMatch(/Make the working length at least .* in, or the tails/);
    expect(tyingFault(tiny, longestMm, 'us')).not.toContain('cm');
    expect(tyingFault(defaults.tying, longestMm, 'us')).toBe('');
  });

  it('are measured by the longest knot that is tied, whatever yarns lie beside it', () => {
    const yarns = design.yarns.map((yarn, i) => (i > 1 ? { ...yarn, diameterMm: 90 } : yarn));
    expect(longestKnotMm({ ...design, yarns }, flatten(design))).toBe(longestMm);
    const bare = designFromLetters(['--', '--']);
    expect(longestKnotMm(bare, flatten(bare))).toBe(0);
  });

  it('stay within what the file holds at the most and the least that the field shows', () => {
    for (const units of ['metric', 'us', 'both'] as const)
      for (const field of tyingFields)
        for (const end of [field.shown(field.min, units), field.shown(field.max, units)]) {
          const tying = withTying(defaults.tying, field, end, units);
          expect(tyingSchema.safeParse(tying).success, `${field.key} ${end} ${units}`).toBe(true);
        }
  });
});
