/**
 * A skein as its label tells it: so many metres in so many grams. The design keeps the metres in 100 g instead, which
 * stay the same whatever the skeins' size.
 */
import { mmPerYard } from '../../../shared/units/length.ts';
import { gPerOunce } from '../../../shared/units/mass.ts';
import type { Units } from '../../../shared/units/units.ts';

export interface Skein {
  readonly metresPer100G: number;
  readonly skeinG: number;
}

/** The most metres in 100 g that a design can hold: far finer than sewing thread. */
const mostMetresPer100G = 100_000;

export function skeinMetres({ metresPer100G, skeinG }: Skein): number {
  return (metresPer100G * skeinG) / 100;
}

/** The skein with another length; its mass stays. */
export function withMetres({ skeinG }: Skein, metres: number): Skein {
  return { metresPer100G: (metres * 100) / skeinG, skeinG };
}

/** The skein with another mass; its length stays, since both stand on the label. */
export function withGrams(skein: Skein, skeinG: number): Skein {
  return { metresPer100G: (skeinMetres(skein) * 100) / skeinG, skeinG };
}

/** What is wrong with length and mass together, in a sentence; empty where nothing is. */
export function skeinFault({ metresPer100G }: Skein): string {
  if (metresPer100G <= mostMetresPer100G) return '';
  return 'No yarn is that fine. Look at the label again: length and mass of one skein.';
}

/** How lengths and masses of skeins are written: as the maker's labels are. Where both are shown, metric ones. */
export const skeinUnits: Record<Units, { length: string; perMetre: number; mass: string; perGram: number }> =
  {
    metric: { length: 'metres', perMetre: 1, mass: 'grams', perGram: 1 },
    us: { length: 'yards', perMetre: 1000 / mmPerYard, mass: 'ounces', perGram: 1 / gPerOunce },
    both: { length: 'metres', perMetre: 1, mass: 'grams', perGram: 1 },
  };
