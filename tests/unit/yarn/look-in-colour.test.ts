import { describe, expect, it } from 'vitest';
import { defaults } from '../../../shared/design/defaults.ts';
import { lighter } from '../../../shared/yarn/harmony.ts';
import { lookInColour } from '../../../shared/yarn/look-in-colour.ts';

describe('a yarn in another colour', () => {
  const madder = { ...defaults.yarns[4]!, price: 4.5, ownedSkeins: 3 };

  it('is of the same kind and price, named for its colour, and not owned yet', () => {
    const { diameterMm, metresPer100G, skeinG } = madder;
    expect(lookInColour(madder, lighter(madder.color), ['Madder'])).toEqual({
      name: 'Red',
      color: lighter(madder.color),
      diameterMm,
      metresPer100G,
      skeinG,
      price: 4.5,
    });
    expect(lookInColour(defaults.yarns[0]!, '#28455f', [])).not.toHaveProperty('price');
  });

  it('gets a name that no other yarn has', () => {
    expect(lookInColour(madder, '#b04030', ['Red', 'Red 2', 'Red 4']).name).toBe('Red 3');
  });
});
