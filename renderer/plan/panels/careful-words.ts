import type { Design } from '../../../shared/design/design.ts';

/** What the careful person does with whom a plan is compared, and what of the maker's own wishes is not asked of them. */
export function carefulWords({ tying, pins = [] }: Pick<Design, 'tying' | 'pins'>): string {
  const person =
    'A careful person ties by the same settings, takes up the nearest strand that hangs, uses each piece until it runs out, and does not look ahead; a minus is what this plan saves.';
  const wishes = [
    ...(tying.liveWish === undefined ? [] : [`your wish for at most ${tying.liveWish} hanging at once`]),
    ...(pins.length === 0 ? [] : [pins.length === 1 ? 'your pin' : 'your pins']),
  ];
  if (wishes.length === 0) return person;
  const isOne = wishes.length === 1 && (tying.liveWish !== undefined || pins.length === 1);
  const first = wishes.join(' and ');
  return `${person} ${first.charAt(0).toUpperCase()}${first.slice(1)} ${isOne ? 'is' : 'are'} not kept there, so what keeping to ${isOne ? 'it' : 'them'} takes is in the difference too.`;
}
