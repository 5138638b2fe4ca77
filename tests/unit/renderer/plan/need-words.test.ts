import { describe, expect, it } from 'vitest';
import { dyeLotWords, enoughWords, loosePiecesWords } from '../../../../renderer/plan/money/need-words.ts';

describe('what a looser hand needs', () => {
  const of = (pieces: number, loosePieces: number, looseMm = 0) => ({
    pieces,
    cutMm: 1524 * pieces,
    ifLoose: { pieces: loosePieces, usedMm: 0, cutMm: looseMm, skeins: 0 },
  });

  it('is told as pieces of all yarns together, and what is cut for them', () => {
    expect(loosePiecesWords([of(10, 12, 15_240 + 400), of(5, 6, 7620 + 250)], 'metric')).toBe(
      'At the loose end of that some pieces run out, and 3 short ones more are cut: 0.7 m.',
    );
    expect(loosePiecesWords([of(1, 2, 1524 + 200)], 'metric')).toContain(
      'and 1 short one more is cut: 0.2 m.',
    );
  });

  it('is nothing where what is left over holds it', () => {
    expect(loosePiecesWords([of(10, 10), of(5, 5)], 'metric')).toBe(
      'A hand at the loose end of that needs no piece more: what is left over of each holds it.',
    );
  });

  it('is told as skeins of each yarn that needs more, with the margin that would hold it', () => {
    const yarn = (name: string, skeins: number, more: number, times: number) => ({
      name,
      cutMm: 100_000,
      skeins,
      ifLoose: { pieces: 0, usedMm: 0, cutMm: 100_000 * times, skeins: more },
    });
    expect(enoughWords([yarn('Milk', 2, 2, 1.4)])).toMatch(/^The skeins are enough even/);
    const words = enoughWords([yarn('Milk', 2, 3, 1.121), yarn('Pine', 1, 1, 1.3), yarn('Moss', 4, 5, 1.18)]);
    expect(words).toMatch(/: Milk 3 instead of 2 and Moss 5 instead of 4\. /);
    expect(words).toContain('A margin of 18 % would hold it');
  });
});

describe('what to know of dye lots', () => {
  it('is nothing where one skein is bought, and the whole need where another lot is at home', () => {
    expect(dyeLotWords([{ name: 'Milk', ownedSkeins: null, toBuySkeins: 1, oneLotSkeins: 1 }])).toBe('');
    expect(dyeLotWords([{ name: 'Milk', ownedSkeins: 1, toBuySkeins: 2, oneLotSkeins: 3 }])).toMatch(
      /buy the whole need: Milk 3\.$/,
    );
  });
});
