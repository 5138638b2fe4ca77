/** A picture's strands as a maker would tell them: what each goes over and under, from its start to its end. */
import { crossingsOf } from '../../../../shared/pattern/knots/crossings.ts';
import { curveThrough } from '../../../../shared/pattern/knots/curve.ts';
import type { Picture } from '../../../../shared/pattern/knots/picture.ts';

/** Such as ['under cord', 'over cord', 'under itself']. */
export function waysOf({ strands }: Picture, name: string): string[] {
  const own = strands.findIndex((strand) => strand.name === name);
  if (own < 0) throw new Error(`no strand is named ${name}`);
  const told: { along: number; words: string }[] = [];
  for (const { over, under } of crossingsOf(strands.map(({ through }) => curveThrough(through)))) {
    for (const [here, there, word] of [
      [over, under, 'over'],
      [under, over, 'under'],
    ] as const) {
      if (here.curve !== own) continue;
      const other = there.curve === own ? 'itself' : strands[there.curve]!.name;
      told.push({ along: here.along, words: `${word} ${other}` });
    }
  }
  return told.sort((a, b) => a.along - b.along).map(({ words }) => words);
}
