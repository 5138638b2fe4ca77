/** How much yarn to buy. */
import type { Yarn } from '../design/schema.ts';
import { wholeSteps } from '../units/round.ts';

/** Yarn in one skein, in mm. */
export function skeinMm({ metresPer100G, skeinG }: Pick<Yarn, 'metresPer100G' | 'skeinG'>): number {
  return (metresPer100G * 1000 * skeinG) / 100;
}

/** Whole skeins that hold `needMm`: never fewer, for a shop may have no more of the dye lot. */
export function wholeSkeins(needMm: number, skeinMm: number): number {
  return wholeSteps(needMm, skeinMm, { enough: true });
}

/** Mass in g of so much yarn, by the yarn's own metres per 100 g. */
export function yarnMassG(lengthMm: number, { metresPer100G }: Pick<Yarn, 'metresPer100G'>): number {
  return (lengthMm / 1000 / metresPer100G) * 100;
}
