/**
 * Dowels as shops have them. Values from memory; labels are nominal, so a dowel is measured before it is cut for (a
 * table of US thicknesses: 'Dowel rod diameters guide', askloc.blog).
 */
import { mmPerInch } from '../units/length.ts';

const inInches = (inches: readonly number[]) => inches.map((each) => each * mmPerInch);

export const nominalDowels = {
  metric: {
    lengthsMm: [300, 400, 500, 600, 900, 1000, 1200, 2000],
    diametersMm: [6, 8, 10, 12, 15, 18, 20, 22, 25],
  },
  us: {
    lengthsMm: inInches([12, 16, 18, 24, 36, 48]),
    diametersMm: inInches([1 / 4, 5 / 16, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 1]),
  },
} as const;
