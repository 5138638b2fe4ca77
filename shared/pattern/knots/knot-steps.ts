/**
 * The knots explained, step by step, for a row that goes right or left. The drawings of a row that goes left are those
 * of a row that goes right in a mirror: the same crossings, the other hand. Common practice, no source.
 */

import { drawnTight, firstTurn, layingBehind, secondTurn } from './half-hitches.ts';
import { endsThroughFold, foldLaidOver, headDrawnTight } from './larks-head.ts';
import { whatIsDrawn } from './legend.ts';
import { mirrored } from './mirrored.ts';
import type { Picture } from './picture.ts';
import {
  carriedBehind,
  freshPieceGoesOn,
  newStrandLaidIn,
  newStrandTied,
  newTakenUp,
  newTiedOn,
  oldLaidDown,
  oldPieceEnds,
  steppingDown,
} from './row-pictures.ts';
import { drawnUpAndTrimmed, tiedOnce, tiedTwice } from './tying-off.ts';

/** Where a row goes. Makers who start at the top right meet the drawings for 'left' first. */
export type Towards = 'right' | 'left';

export interface KnotStep {
  readonly picture: Picture;
  /** What to do, for the maker. */
  readonly sentence: string;
  /** What is seen, for those who can't see it. */
  readonly alt: string;
}

export interface KnotLesson {
  readonly title: string;
  readonly steps: readonly KnotStep[];
}

type Side = Towards;

const otherSide: Record<Side, Side> = { right: 'left', left: 'right' };

/** What the drawings are made of. */
export function legend(): KnotLesson {
  return lesson('right', 'In these drawings', [
    [
      whatIsDrawn,
      'Where a strand goes behind another, it is interrupted.',
      'Thick and pale: cord. Dark: the yarn. Pale with dark ticks: another yarn. An arrow: the end in your hand.',
    ],
  ]);
}

/** Mounting comes first and is the same for both directions. */
export function mounting(towards: Towards): KnotLesson {
  return lesson(towards, 'Mounting a cut cord: the lark’s head', [
    [
      foldLaidOver,
      'Fold the cord in half and lay the fold over the dowel, so that it hangs down behind.',
      'The cord lies over the front of the dowel twice; its fold hangs behind the dowel.',
    ],
    [
      endsThroughFold,
      'Bring the fold forward under the dowel and put both ends back through it.',
      'The fold lies in front, and both ends go through it to the back.',
    ],
    [
      headDrawnTight,
      'Draw the ends down. The bar lies in front; the two legs are two cords of the chart.',
      'The tight lark’s head: two wraps over the dowel, a bar under it, and two legs hanging side by side.',
    ],
  ]);
}

export function theKnot(towards: Towards): KnotLesson {
  const from = otherSide[towards];
  return lesson(towards, `The knot, ${from} to ${towards}`, [
    [
      layingBehind,
      'Lay the yarn behind the cord.',
      `The yarn comes from the ${from} and goes behind the cord.`,
    ],
    [
      firstTurn,
      `First turn: round the front to the ${from}, then behind the yarn itself and behind the cord. Draw it tight.`,
      `The yarn goes over the front of the cord to the ${from}, behind itself and behind the cord to the ${towards}.`,
    ],
    [
      secondTurn,
      'Second turn: the same again just below, and out between the two turns.',
      `Below the tight first turn the yarn goes over the front to the ${from}, behind the cord, and out to the ${towards} over its own loop.`,
    ],
    [
      drawnTight,
      'Draw it tight against the first. The yarn lies ready behind the next cord.',
      `The tight knot: two turns, one above the other, over the front of the cord. The yarn goes on to the ${towards}, behind the next cord.`,
    ],
  ]);
}

export function attaching(towards: Towards): KnotLesson {
  const from = otherSide[towards];
  return lesson(towards, 'Attaching a new strand', [
    [
      newStrandLaidIn,
      `Lay it behind the first cord of its colour. The tail points back, to the ${from}.`,
      `New yarn behind the second cord, its tail behind the work to the ${from}, its long end going ${towards}.`,
    ],
    [
      newStrandTied,
      'Tie the knot with the long end. The tail stays behind.',
      `The knot on the second cord, the tail hanging behind the first, the yarn going on to the ${towards}.`,
    ],
  ]);
}

export function joining(towards: Towards): KnotLesson {
  const from = otherSide[towards];
  return lesson(towards, 'Joining when a piece runs out', [
    [
      oldPieceEnds,
      'Finish the knot, never stop inside one. The old tail points onward, behind the work.',
      `Two knots; the end of their yarn hangs behind the next cords, pointing to the ${towards}.`,
    ],
    [
      freshPieceGoesOn,
      'Tie the next cord with a fresh piece, its tail pointing back.',
      `A fresh piece ties the third cord; its tail points to the ${from}, crossing the old one behind the work.`,
    ],
  ]);
}

export function changing(towards: Towards): KnotLesson {
  return lesson(towards, 'Changing colour in the row', [
    [
      oldLaidDown,
      'At the lifted cord, lay the yarn in hand down behind the work.',
      'Two knots; their yarn hangs down behind, before it reaches the third cord’s knot.',
    ],
    [
      newTakenUp,
      'Take up the new one, or attach it, behind the lifted cord.',
      'The first yarn hangs down behind; another comes up behind the third cord.',
    ],
    [
      newTiedOn,
      'Tie on with it. The first yarn hangs until its colour comes again.',
      'Two knots of the first yarn, two of the other; the first yarn hangs down behind the work.',
    ],
  ]);
}

export function carrying(towards: Towards): KnotLesson {
  return lesson(towards, 'Carrying', [
    [
      carriedBehind,
      'Carry a yarn flat behind the cords to its next knot: neither tight nor sagging.',
      'A yarn goes from the first knot behind two cords of another colour to the fourth.',
    ],
  ]);
}

export function turning(towards: Towards): KnotLesson {
  const from = otherSide[towards];
  return lesson(towards, 'The turn at the edge', [
    [
      steppingDown,
      'At the end of a row, step straight down. The next row goes back, its knots mirrored.',
      `The last knot of a row at the ${towards} edge; the yarn steps down and ties the same cord again below, going ${from}.`,
    ],
  ]);
}

export function tyingOff(towards: Towards): KnotLesson {
  return lesson(towards, 'Tying off loose ends, at the back', [
    [
      tiedOnce,
      'Cross two neighbouring ends and wind them round each other once.',
      'Two ends wound round each other: three crossings.',
    ],
    [
      tiedTwice,
      'Once more, the other way round: the same end goes over first.',
      'The ends wound round each other a second time, below, the other way round.',
    ],
    [
      drawnUpAndTrimmed,
      'Draw the knot up close to the work, and trim the ends.',
      'The flat knot drawn up, its ends cut short.',
    ],
  ]);
}

function lesson(
  towards: Towards,
  title: string,
  steps: readonly (readonly [picture: Picture, sentence: string, alt: string])[],
): KnotLesson {
  return {
    title,
    steps: steps.map(([picture, sentence, alt]) => ({
      picture: towards === 'right' ? picture : mirrored(picture),
      sentence,
      alt,
    })),
  };
}
