/** What else a buyer of yarn should know, in sentences; empty where there is nothing to say. */

import type { YarnNeed } from '../../../shared/materials/materials.ts';
import { counted } from '../plan-words.ts';

/** What a ± behind a length of yarn means. */
export const usedWords =
  'What is used lies within its ± in 95 of 100 cases. What is cut comes in whole pieces, so it may be a piece or some more or fewer.';

/** Yarns of which a looser hand would need more skeins. */
export function looseWords(yarns: readonly Pick<YarnNeed, 'name' | 'skeins' | 'ifLoose'>[]): string {
  const more = yarns.flatMap(({ name, skeins, ifLoose }) =>
    ifLoose.skeins > skeins ? [`${name} ${ifLoose.skeins} instead of ${skeins}`] : [],
  );
  if (more.length === 0) return '';
  return `If your hand is as loose as your swatches leave open, you need more skeins: ${listed(more)}.`;
}

/** What the whole hanging takes of a hand as loose as the swatches leave open. */
export function loosePiecesWords(yarns: readonly Pick<YarnNeed, 'pieces' | 'ifLoose'>[]): string {
  const more = yarns.reduce((sum, { pieces, ifLoose }) => sum + ifLoose.pieces - pieces, 0);
  if (more <= 0) return 'A hand as loose as that leaves open takes no piece more: the reserve holds it.';
  return `A hand as loose as that leaves open takes ${counted(more, 'piece')} more.`;
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
