/** What else a buyer of yarn should know, in sentences; empty where there is nothing to say. */
import type { YarnNeed } from '../../../shared/materials/materials.ts';

/** Yarns of which a looser hand would need more skeins. */
export function looseWords(yarns: readonly Pick<YarnNeed, 'name' | 'skeins' | 'ifLoose'>[]): string {
  const more = yarns.flatMap(({ name, skeins, ifLoose }) =>
    ifLoose.skeins > skeins ? [`${name} ${ifLoose.skeins} instead of ${skeins}`] : [],
  );
  if (more.length === 0) return '';
  return `If your hand is as loose as your swatches leave open, you need more skeins: ${listed(more)}.`;
}

/** Yarns of which something is at home, but not enough: a later skein may be of another dye lot. */
export function dyeLotWords(
  yarns: readonly Pick<YarnNeed, 'name' | 'ownedSkeins' | 'toBuySkeins' | 'oneLotSkeins'>[],
): string {
  const mixed = yarns.flatMap(({ name, ownedSkeins, toBuySkeins, oneLotSkeins }) =>
    ownedSkeins && toBuySkeins > 0 && oneLotSkeins > toBuySkeins ? [`${name} ${oneLotSkeins}`] : [],
  );
  const advice = 'Buy all skeins of one yarn from one dye lot.';
  if (mixed.length === 0) return yarns.some(({ toBuySkeins }) => toBuySkeins > 1) ? advice : '';
  return `${advice} Where what you own is of another lot and that would show, buy the whole need: ${listed(mixed)}.`;
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
