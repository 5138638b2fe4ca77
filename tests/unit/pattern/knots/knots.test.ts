/**
 * Each knot is stated as what its strands go over and under. Common practice, no source, but for the double half
 * hitch: a clove hitch around the cord, The Ashley Book of Knots, nos. 11 and 1176-1180; double knots of threads around
 * threads are in the Encyclopedia of Needlework, chapter XI.
 */
import { describe, expect, it } from 'vitest';
import { type Language, patternLanguages } from '../../../../shared/design/pattern-schema.ts';
import {
  drawnTight,
  firstTurn,
  layingBehind,
  secondTurn,
} from '../../../../shared/pattern/knots/half-hitches.ts';
import { type Hand, type KnotLesson, knotLessons } from '../../../../shared/pattern/knots/knot-lessons.ts';
import {
  endsThroughFold,
  foldLaidOver,
  headDrawnTight,
} from '../../../../shared/pattern/knots/larks-head.ts';
import { mirrored } from '../../../../shared/pattern/knots/mirrored.ts';
import {
  carriedBehind,
  freshPieceGoesOn,
  newStrandTied,
  newTiedOn,
  oldPieceEnds,
  steppingDown,
} from '../../../../shared/pattern/knots/row-pictures.ts';
import { drawnUpAndTrimmed, tiedOnce, tiedTwice } from '../../../../shared/pattern/knots/tying-off.ts';
import { waysOf } from './ways.ts';

describe('the vertical double half hitch', () => {
  it('begins with the yarn behind the cord', () => {
    expect(waysOf(layingBehind, 'yarn')).toEqual(['under cord']);
  });

  it('has a first turn over the cord, behind the yarn itself, and behind the cord', () => {
    expect(waysOf(firstTurn, 'yarn')).toEqual([
      'over itself',
      'under cord',
      'over cord',
      'under itself',
      'under cord',
    ]);
  });

  it('has a second turn over the cord and behind it, and comes out over its own loop', () => {
    expect(waysOf(secondTurn, 'yarn')).toEqual([
      ...waysOf(firstTurn, 'yarn'),
      'under itself',
      'over cord',
      'under cord',
      'over itself',
    ]);
  });

  it('shows two turns over the cord when it is tight, and lies ready behind the next cord', () => {
    expect(waysOf(drawnTight, 'knot, first turn')).toContain('over cord');
    expect(waysOf(drawnTight, 'knot, second turn')).toContain('over cord');
    const yarn = waysOf(drawnTight, 'yarn');
    expect(yarn).toContain('under cord');
    expect(yarn.at(-1)).toBe('under next cord');
    expect(yarn.filter((way) => way.startsWith('over'))).toEqual([]);
  });

  it('is an invertible knot: told from its other end it is the same', () => {
    const told = waysOf(secondTurn, 'yarn');
    // Turned round about the cord's middle, as a maker would see it from below.
    expect([...told].reverse()).toEqual(told);
  });
});

describe('the lark’s head', () => {
  const oneLeg = (ways: string[]) => ways.slice(0, ways.length / 2);

  it('begins with the ends in front of the dowel and of the fold', () => {
    expect(oneLeg(waysOf(foldLaidOver, 'cut cord'))).toEqual([
      'over itself',
      'over dowel',
      'under dowel',
      'under itself',
    ]);
  });

  it.each([
    ['loose', endsThroughFold],
    ['tight', headDrawnTight],
  ])('has both legs under its bar, over the dowel and back behind it, %s', (_, picture) => {
    const ways = waysOf(picture, 'cut cord');
    expect(oneLeg(ways)).toEqual(['under itself', 'over dowel', 'under dowel', 'over itself']);
    expect([...ways].reverse()).toEqual(ways);
  });
});

describe('tying off', () => {
  const overUnderOver = ['over right end', 'under right end', 'over right end'];

  it('winds the ends round each other: three crossings, over and under in turn', () => {
    expect(waysOf(tiedOnce, 'left end')).toEqual(overUnderOver);
  });

  it.each([
    ['loose', tiedTwice],
    ['drawn up', drawnUpAndTrimmed],
  ])('takes the same end over first both times: a reef knot, %s', (_, picture) => {
    expect(waysOf(picture, 'left end')).toEqual([...overUnderOver, ...overUnderOver]);
  });
});

describe('a row', () => {
  it.each([
    ['an attached strand', newStrandTied, 'new yarn'],
    ['a parked yarn', newTiedOn, 'parked yarn'],
    ['a new yarn', newTiedOn, 'new yarn'],
    ['a carry', carriedBehind, 'carry'],
    ['a piece that ran out', oldPieceEnds, 'old piece'],
    ['a fresh piece', freshPieceGoesOn, 'fresh piece'],
    ['the yarn at the edge', steppingDown, 'yarn'],
  ])('keeps %s behind the cords', (_, picture, name) => {
    const ways = waysOf(picture, name);
    expect(ways.some((way) => way.startsWith('under cord'))).toBe(true);
    expect(ways.filter((way) => way.startsWith('over cord'))).toEqual([]);
  });

  it('has a carry pass behind every cord between its knots', () => {
    const cords = waysOf(carriedBehind, 'carry').filter((way) => way.includes('cord'));
    expect(cords).toEqual([1, 2, 3, 4].map((cord) => `under cord ${cord}`));
  });

  it('has a fresh tail point back and an old one onward, past each other behind the work', () => {
    const endOf = (name: string, at: 0 | -1) =>
      freshPieceGoesOn.strands.find((strand) => strand.name === name)!.through.at(at)![0];
    expect(endOf('fresh piece', 0)).toBeLessThan(0);
    expect(endOf('old piece', -1)).toBeGreaterThan(0);
    expect(waysOf(freshPieceGoesOn, 'fresh piece')).toContain('over old piece');
  });
});

const stepsOf = (language: Language, towards: Hand, hand: Hand) =>
  Object.values(knotLessons(language, towards, hand)).flatMap(({ steps }) => steps);

describe('the drawings of a row that goes left', () => {
  it('are those of a row that goes right, in a mirror, but for the legend', () => {
    const { legend, ...left } = knotLessons('en', 'left', 'right');
    const { legend: sameLegend, ...right } = knotLessons('en', 'right', 'right');
    const picturesOf = (lessons: object) =>
      Object.values<KnotLesson>({ ...lessons }).flatMap(({ steps }) => steps.map(({ picture }) => picture));
    expect(picturesOf(left)).toEqual(picturesOf(right).map(mirrored));
    expect(legend).toEqual(sameLegend);
  });

  it('keep what goes over and under', () => {
    expect(waysOf(mirrored(secondTurn), 'yarn')).toEqual(waysOf(secondTurn, 'yarn'));
  });
});

describe.each(patternLanguages)('the words of the knots, in %s', (language) => {
  const told = (towards: Hand, hand: Hand) =>
    stepsOf(language, towards, hand).flatMap(({ sentence, alt }) => [sentence, alt]);
  const otherSides: Readonly<Record<string, string>> = {
    left: 'right',
    right: 'left',
    link: 'recht',
    recht: 'link',
  };
  const mirroredWords = (text: string) =>
    text.replaceAll(/\b(left|right|link(?=e|s)|recht(?=e|s))/g, (side) => otherSides[side]!);

  it('tell the other side and the other hand for a left-handed maker whose rows begin at the right', () => {
    expect(told('left', 'left')).toEqual(told('right', 'right').map(mirroredWords));
  });

  it('say which hand holds the cord where a knot begins, where a strand is attached and where a row turns', () => {
    const differing = (lesson: keyof ReturnType<typeof knotLessons>) => {
      const sentences = (hand: Hand) =>
        knotLessons(language, 'right', hand)[lesson].steps.map(({ sentence }) => sentence);
      const left = sentences('left');
      return sentences('right').flatMap((sentence, i) => (sentence === left[i] ? [] : [i + 1]));
    };
    expect(differing('mounting')).toEqual([1]);
    expect(differing('knot')).toEqual([1]);
    expect(differing('attaching')).toEqual([1]);
    expect(differing('turning')).toEqual([1]);
    expect(differing('joining')).toEqual([]);
  });
});

describe('a right-handed maker', () => {
  it('holds the cord in the left hand, whichever way the row goes', () => {
    for (const towards of ['right', 'left'] as const) {
      const { sentence } = knotLessons('en', towards, 'right').knot.steps[0]!;
      expect(sentence).toContain('taut in your left hand');
    }
  });
});
