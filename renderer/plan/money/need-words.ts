/** What else a buyer of yarn should know, in sentences; empty where there is nothing to say. */

import { marginThatHolds } from '../../../shared/materials/margin-that-holds.ts';
import type { YarnNeed } from '../../../shared/materials/materials.ts';
import { counted } from '../../../shared/units/counted.ts';
import { formatPercent } from '../../../shared/units/percent.ts';
import type { Units } from '../../../shared/units/units.ts';
import { formatYarnLength } from '../../../shared/units/yarn-length.ts';

/** What a ± behind a length of yarn means. */
export const usedWords =
  'What is used lies within its ± in 95 of 100 cases. What is cut is what the cut list says, whatever your hand, until pieces run out.';

/** Whether the skeins hold what a hand at the loose end of that cuts. */
export function enoughWords(
  yarns: readonly Pick<YarnNeed, 'name' | 'cutMm' | 'skeins' | 'ifLoose'>[],
): string {
  const margin = marginThatHolds(yarns);
  if (margin === null) return 'The skeins are enough even for a hand at the loose end of that.';
  const short = yarns.flatMap(({ name, skeins, ifLoose }) =>
    ifLoose.skeins > skeins ? [`${name} ${ifLoose.skeins} instead of ${skeins}`] : [],
  );
  return `For a hand at the loose end of that the skeins are too few: ${listed(short)}. A margin of ${formatPercent(margin)} would hold it; a swatch may show that you need none of it.`;
}

/** Whether a hand as loose as the swatches leave open needs more pieces than the plan has. */
export function takesMoreIfLoose(yarns: readonly Pick<YarnNeed, 'pieces' | 'ifLoose'>[]): boolean {
  return morePieces(yarns) > 0;
}

function morePieces(yarns: readonly Pick<YarnNeed, 'pieces' | 'ifLoose'>[]): number {
  return yarns.reduce((sum, { pieces, ifLoose }) => sum + ifLoose.pieces - pieces, 0);
}

/** What the whole hanging takes of a hand as loose as the swatches leave open. */
export function loosePiecesWords(
  yarns: readonly Pick<YarnNeed, 'pieces' | 'cutMm' | 'ifLoose'>[],
  units: Units,
): string {
  const more = morePieces(yarns);
  if (more <= 0)
    return 'A hand at the loose end of that needs no piece more: what is left over of each holds it.';
  const moreMm = yarns.reduce((sum, { cutMm, ifLoose }) => sum + Math.max(0, ifLoose.cutMm - cutMm), 0);
  const length = formatYarnLength(moreMm, units, { enough: true });
  return `At the loose end of that some pieces run out, and ${counted(more, 'short one')} more ${more === 1 ? 'is' : 'are'} cut: ${length}.`;
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
