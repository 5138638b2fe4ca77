import { seenWith } from './colour-vision.ts';
import { greyOf } from './grey.ts';

/** The ways in which a picture is looked at: in normal sight, with a deficiency, or printed in greys. */
export const sights = ['normal', 'protan', 'deutan', 'tritan', 'grey'] as const;

export type Sight = (typeof sights)[number];

const seen: Record<Sight, (hex: string) => string> = {
  normal: (hex) => hex,
  protan: (hex) => seenWith('protan', hex),
  deutan: (hex) => seenWith('deutan', hex),
  tritan: (hex) => seenWith('tritan', hex),
  grey: greyOf,
};

/** What the colour looks like in a sight; both as `#rrggbb`. */
export function seenAs(sight: Sight, hex: string): string {
  return seen[sight](hex);
}
