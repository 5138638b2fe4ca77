import { decimal } from '../../../../shared/units/round.ts';

/** How many skeins are left of a yarn: 'none left', '1 skein', '2.5 skeins'. To a quarter, down to what surely is there. */
export function skeinsInWords(owned: number): string {
  const quarters = Math.floor(owned * 4 + 1e-6) / 4;
  if (quarters === 0) return owned > 0 ? 'a rest' : 'none left';
  return quarters === 1 ? '1 skein' : `${decimal(quarters, 0.01)} skeins`;
}
