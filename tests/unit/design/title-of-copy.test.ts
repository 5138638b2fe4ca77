import { describe, expect, it } from 'vitest';
import { limits } from '../../../shared/design/limits.ts';
import { titleOfCopy } from '../../../shared/design/title-of-copy.ts';

describe('the title of a copy', () => {
  it('has room within the limit', () => {
    expect(titleOfCopy('Fox')).toBe('Fox copy');
    expect(titleOfCopy('x'.repeat(limits.nameChars))).toBe(`${'x'.repeat(limits.nameChars - 5)} copy`);
  });
});
