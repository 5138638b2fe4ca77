/** The drawings of each lesson, in order, for a row that goes right. What is said of them stands among the printed words. */
import { drawnTight, firstTurn, layingBehind, secondTurn } from './half-hitches.ts';
import { endsThroughFold, foldLaidOver, headDrawnTight } from './larks-head.ts';
import { whatIsDrawn } from './legend.ts';
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

export const lessonPictures = {
  legend: { whatIsDrawn },
  mounting: { foldLaidOver, endsThroughFold, headDrawnTight },
  knot: { layingBehind, firstTurn, secondTurn, drawnTight },
  attaching: { newStrandLaidIn, newStrandTied },
  carrying: { carriedBehind },
  changing: { oldLaidDown, newTakenUp, newTiedOn },
  joining: { oldPieceEnds, freshPieceGoesOn },
  turning: { steppingDown },
  tyingOff: { tiedOnce, tiedTwice, drawnUpAndTrimmed },
} as const satisfies Record<string, Readonly<Record<string, Picture>>>;
