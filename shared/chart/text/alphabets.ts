import { type Alphabet, makeAlphabet } from './alphabet.ts';
import { smallLetters } from './small-letters.ts';
import { smallMarks } from './small-marks.ts';
import { tallLetters } from './tall-letters.ts';
import { tallMarks } from './tall-marks.ts';

export type AlphabetId = 'small' | 'tall';

/** The cell alphabets that text on a chart is set in. All are Larkrow's own drawing. */
export const alphabetsById: Readonly<Record<AlphabetId, Alphabet>> = {
  small: makeAlphabet({
    label: 'Small',
    capRows: 5,
    aboveRows: 3,
    belowRows: 3,
    letterGap: 1,
    lineGap: 2,
    spaceColumns: 2,
    letters: smallLetters,
    marks: smallMarks,
  }),
  tall: makeAlphabet({
    label: 'Tall',
    capRows: 9,
    aboveRows: 4,
    belowRows: 4,
    letterGap: 2,
    lineGap: 3,
    spaceColumns: 3,
    letters: tallLetters,
    marks: tallMarks,
  }),
};
