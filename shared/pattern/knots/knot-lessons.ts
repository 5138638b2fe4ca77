/**
 * The knots explained, step by step, for a row that goes right or left and for either hand. The drawings of a row that goes left are
 * those of a row that goes right in a mirror: the same crossings. The hand changes nothing in a knot, only which hand holds the cord.
 */
import type { Language } from '../../design/pattern-schema.ts';
import { knotsWords, type LessonsWords, type Side, type StepWords, type Ways } from '../words/knots-words.ts';
import { lessonPictures } from './lesson-pictures.ts';
import { mirrored } from './mirrored.ts';
import type { Picture } from './picture.ts';

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

export type KnotLessons = { readonly [Lesson in keyof LessonsWords]: KnotLesson };

/** The hand that makes the turns; the other one holds the cord. */
export type Hand = Side;

const otherSide: Readonly<Record<Side, Side>> = { left: 'right', right: 'left' };

export function knotLessons(language: Language, towards: Side, hand: Hand): KnotLessons {
  const words = knotsWords[language].lessons(waysOf(towards, hand));
  const lesson = (name: keyof KnotLessons): KnotLesson => {
    const { title } = words[name];
    // The legend tells what is drawn, and is read from the left in any case.
    const isMirrored = towards === 'left' && name !== 'legend';
    const steps: Readonly<Record<string, StepWords>> = words[name].steps;
    return {
      title,
      steps: Object.entries<Picture>(lessonPictures[name]).map(([picture, drawn]) => ({
        picture: isMirrored ? mirrored(drawn) : drawn,
        sentence: steps[picture]![0],
        alt: steps[picture]![1],
      })),
    };
  };
  return {
    legend: lesson('legend'),
    mounting: lesson('mounting'),
    knot: lesson('knot'),
    attaching: lesson('attaching'),
    carrying: lesson('carrying'),
    changing: lesson('changing'),
    joining: lesson('joining'),
    turning: lesson('turning'),
    tyingOff: lesson('tyingOff'),
  };
}

export function waysOf(towards: Side, hand: Hand): Ways {
  return { from: otherSide[towards], towards, holding: otherSide[hand], turning: hand };
}
