import { describe, expect, it } from 'vitest';
import { carefulWords } from '../../../../renderer/plan/panels/careful-words.ts';
import { defaults } from '../../../../shared/design/defaults.ts';
import type { Pin } from '../../../../shared/design/schema.ts';

const { tying } = defaults;
const cut: Pin = { kind: 'cut', row: 1, cord: 2 };

describe('the careful person with whom a plan is compared', () => {
  it('is said who that is', () => {
    expect(carefulWords({ tying })).toMatch(
      /^A careful person .* does not look ahead; a minus is what this plan saves\.$/,
    );
  });

  it('is said to keep neither the wish for few hanging strands nor pins', () => {
    expect(carefulWords({ tying: { ...tying, liveWish: 9 } })).toMatch(
      / Your wish for at most 9 hanging at once is not kept there, so what keeping to it takes /,
    );
    expect(carefulWords({ tying, pins: [cut] })).toContain(' Your pin is not kept there,');
    expect(carefulWords({ tying: { ...tying, liveWish: 9 }, pins: [cut, cut] })).toContain(
      ' Your wish for at most 9 hanging at once and your pins are not kept there, so what keeping to them takes ',
    );
  });
});
