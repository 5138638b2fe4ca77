import { describe, expect, it } from 'vitest';
import { dyeLotWords, loosePiecesWords, looseWords } from '../../../../renderer/plan/money/need-words.ts';

describe('what a looser hand needs', () => {
  const of = (pieces: number, loosePieces: number) => ({
    pieces,
    ifLoose: { pieces: loosePieces, cutMm: 0, skeins: 0 },
  });

  it('is told as pieces of all yarns together', () => {
    expect(loosePiecesWords([of(10, 12), of(5, 6)])).toBe(
      'A hand as loose as that leaves open takes 3 pieces more.',
    );
  });

  it('is nothing where the reserve holds it', () => {
    expect(loosePiecesWords([of(10, 10), of(5, 5)])).toBe(
      'A hand as loose as that leaves open takes no piece more: the reserve holds it.',
    );
  });

  it('is told as skeins of each yarn that needs more', () => {
    const yarn = (name: string, skeins: number, more: number) => ({
      name,
      skeins,
      ifLoose: { pieces: 0, cutMm: 0, skeins: more },
    });
    expect(looseWords([yarn('Milk', 2, 2)])).toBe('');
    expect(looseWords([yarn('Milk', 2, 3), yarn('Pine', 1, 1), yarn('Moss', 4, 5)])).toMatch(
      /: Milk 3 instead of 2 and Moss 5 instead of 4\.$/,
    );
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
