/** Which name a colour has is a matter of taste: values from memory, held so that they don't change unseen. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { colourName, colourNames } from '../../../shared/yarn/colour-name.ts';

describe('the name of a colour', () => {
  it.each([
    ['#000000', 'Black'],
    ['#2b2a2d', 'Dark grey'],
    ['#777777', 'Grey'],
    ['#c0c0c0', 'Light grey'],
    ['#ffffff', 'White'],
    ['#e6ddc9', 'Cream'],
    ['#d2b48c', 'Light brown'],
    ['#8b4513', 'Brown'],
    ['#ff0000', 'Red'],
    ['#800000', 'Dark red'],
    ['#e0955a', 'Orange'],
    ['#ffd700', 'Gold'],
    ['#ffff00', 'Yellow'],
    ['#008000', 'Green'],
    ['#008080', 'Teal'],
    ['#28455f', 'Dark blue'],
    ['#b0c4de', 'Light blue'],
    ['#708090', 'Greyish blue'],
    ['#4b0082', 'Dark violet'],
    ['#800080', 'Dark purple'],
    ['#ffc0cb', 'Light rose'],
  ])('%s is %s', (hex, name) => expect(colourName(hex)).toBe(name));

  it('exists for every colour', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xffffff }), (rgb) => {
        expect(colourName(`#${rgb.toString(16).padStart(6, '0')}`)).toMatch(/^[A-Z][a-z]+( [a-z]+)*$/);
      }),
      { seed: 25, numRuns: 3000 },
    );
  });

  it('gets a number where several colours share it', () => {
    expect(colourNames(['#800000', '#008000', '#7a0000', '#700000'])).toEqual([
      'Dark red',
      'Green',
      'Dark red 2',
      'Dark red 3',
    ]);
  });
});
