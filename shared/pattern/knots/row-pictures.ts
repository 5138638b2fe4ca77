/** What happens between knots in a row that goes right: a strand begins, changes, is carried, and is joined. */
import { behind, cordAt, tightKnot } from './half-hitches.ts';
import { mirrored } from './mirrored.ts';
import type { DrawnWord, Picture, PictureWord } from './picture.ts';
import type { Material, Strand } from './strand.ts';

/** Four cords side by side, counted from 1 in the row's direction. They end above the words. */
const cordsX = [-20.4, -6.8, 6.8, 20.4] as const;
const CORDS_END_MM = 28;
const ROW_Y = 11;

/** Strands that go on beyond a picture stop here, left and right of its middle. */
const EDGE_MM = 26;

/** Yarn in hand ends here, so that its arrow stands between the third cord and the fourth. */
const IN_HAND_X = 12;

function cords(): Strand[] {
  return cordsX.map((x, i) => cordAt(x, `cord ${i + 1}`, CORDS_END_MM));
}

/** Knots on some of the cords, `places` from 0. */
function knots(material: Material, places: readonly number[]): Strand[] {
  return places.flatMap((i) => tightKnot(cordsX[i]!, ROW_Y, material, `knot ${i + 1}`));
}

/** Distance of two rows. */
const NEXT_ROW_MM = 7.4;

/** Knots of the row below, which goes left: they lean the other way. */
function knotsGoingBack(material: Material, places: readonly number[]): Strand[] {
  return places.flatMap(
    (i) =>
      mirrored({ strands: tightKnot(-cordsX[i]!, ROW_Y + NEXT_ROW_MM, material, `next row, knot ${i + 1}`) })
        .strands,
  );
}

function below(x: number, word: DrawnWord): PictureWord {
  return { x, y: CORDS_END_MM + 3.6, word, align: 'center' };
}

/** Between two cords, where tails and parked yarns hang, counted from 0. */
const gapsX = [-13.6, 0, 13.6] as const;
const TAIL_END_MM = 26.4;

const tailBack = [
  [gapsX[0], TAIL_END_MM],
  [gapsX[0] + 0.6, 20],
] as const;

export const newStrandLaidIn: Picture = {
  strands: [
    ...cords(),
    behind('new yarn', 'yarn', [...tailBack, [-6.8, 13.2], [2, ROW_Y - 0.6], [IN_HAND_X, ROW_Y + 0.4]], {
      from: 'cut',
      to: 'moves',
    }),
  ],
  words: [below(gapsX[0], 'tail')],
};

export const newStrandTied: Picture = {
  strands: [
    ...cords(),
    ...knots('yarn', [1]),
    behind(
      'new yarn',
      'yarn',
      [...tailBack, [-11, 13.6], [-6.8, ROW_Y], [2, ROW_Y + 0.5], [IN_HAND_X, ROW_Y]],
      {
        from: 'cut',
        to: 'moves',
      },
    ),
  ],
  words: [below(gapsX[0], 'tail')],
};

/** From the left through the knots on cords 1 and 2. */
const fromTheLeft = [
  [-EDGE_MM, ROW_Y + 0.3],
  [-20.4, ROW_Y],
  [-13.6, ROW_Y + 0.5],
  [-6.8, ROW_Y],
] as const;

export const oldLaidDown: Picture = {
  strands: [
    ...cords(),
    ...knots('yarn', [0, 1]),
    behind('yarn in hand', 'yarn', [...fromTheLeft, [4, ROW_Y + 1.6], [12, ROW_Y + 6.4], [gapsX[2], 22.6]], {
      to: 'moves',
    }),
  ],
};

/** Hangs behind everything else. */
const parked = behind(
  'parked yarn',
  'yarn',
  [...fromTheLeft, [4, ROW_Y + 1.8], [12.2, ROW_Y + 7], [gapsX[2], CORDS_END_MM]],
  {},
  -2,
);

export const newTakenUp: Picture = {
  strands: [
    ...cords(),
    ...knots('yarn', [0, 1]),
    parked,
    behind(
      'new yarn',
      'other-yarn',
      [
        [gapsX[1], TAIL_END_MM],
        [0.4, 20],
        [3, ROW_Y + 2],
        [7.6, ROW_Y - 1],
        [IN_HAND_X, ROW_Y - 1],
      ],
      { from: 'cut', to: 'moves' },
    ),
  ],
  words: [below(gapsX[1], 'tail')],
};

export const newTiedOn: Picture = {
  strands: [
    ...cords(),
    ...knots('yarn', [0, 1]),
    ...knots('other-yarn', [2, 3]),
    parked,
    behind(
      'new yarn',
      'other-yarn',
      [
        [gapsX[1], TAIL_END_MM],
        [0.4, 20],
        [2.4, ROW_Y + 3],
        [6.8, ROW_Y],
        [13.6, ROW_Y + 0.5],
        [20.4, ROW_Y],
        [EDGE_MM, ROW_Y + 0.3],
      ],
      { from: 'cut' },
    ),
  ],
  words: [below(gapsX[1], 'tail'), below(gapsX[2], 'hangs')],
};

export const carriedBehind: Picture = {
  strands: [
    ...cords(),
    ...knots('yarn', [0, 3]),
    ...knots('other-yarn', [1, 2]),
    behind('yarn between', 'other-yarn', [
      [gapsX[0], 0],
      [gapsX[0] + 0.8, 5],
      [-6.8, ROW_Y],
      [0, ROW_Y + 0.5],
      [6.8, ROW_Y],
      [gapsX[2] - 0.8, ROW_Y + 6],
      [gapsX[2], CORDS_END_MM],
    ]),
    behind(
      'carry',
      'yarn',
      [
        [-EDGE_MM, ROW_Y + 0.3],
        [-20.4, ROW_Y],
        [gapsX[0], ROW_Y + 3.6],
        [0, ROW_Y + 6.4],
        [gapsX[2], ROW_Y + 3.6],
        [20.4, ROW_Y],
        [EDGE_MM, ROW_Y + 0.3],
      ],
      {},
      -2,
    ),
  ],
  words: [below(gapsX[1], 'carry')],
};

export const oldPieceEnds: Picture = {
  strands: [
    ...cords(),
    ...knots('yarn', [0, 1]),
    behind(
      'old piece',
      'yarn',
      [...fromTheLeft, [4, ROW_Y + 1.8], [12.2, ROW_Y + 7], [gapsX[2], TAIL_END_MM]],
      { to: 'cut' },
    ),
  ],
  words: [below(gapsX[2], 'old-tail')],
};

export const freshPieceGoesOn: Picture = {
  strands: [
    ...cords(),
    ...knots('yarn', [0, 1, 2]),
    behind(
      'old piece',
      'yarn',
      [...fromTheLeft, [0, ROW_Y + 2.6], [6.8, ROW_Y + 5.4], [12.6, ROW_Y + 9.4], [gapsX[2], TAIL_END_MM]],
      { to: 'cut' },
      -2,
    ),
    behind(
      'fresh piece',
      'yarn',
      [
        [gapsX[0], TAIL_END_MM],
        [-12.6, ROW_Y + 9.4],
        [-6.8, ROW_Y + 5.4],
        [0, ROW_Y + 2.6],
        [6.8, ROW_Y],
        [13.6, ROW_Y + 0.5],
        [20.4, ROW_Y],
        [EDGE_MM, ROW_Y + 0.3],
      ],
      { from: 'cut' },
    ),
  ],
  words: [below(gapsX[2], 'old-tail'), below(gapsX[0], 'fresh-tail')],
};

/** At the end of a row that goes right: the last two knots, and the first of the next row below the last. */
export const steppingDown: Picture = {
  strands: [
    ...cords(),
    ...knots('yarn', [0, 1, 2, 3]),
    ...knotsGoingBack('yarn', [3]),
    behind(
      'yarn',
      'yarn',
      [
        ...fromTheLeft,
        [0, ROW_Y + 0.5],
        [6.8, ROW_Y],
        [13.6, ROW_Y + 0.5],
        [20.4, ROW_Y],
        [24.6, ROW_Y + 1.2],
        [25, ROW_Y + NEXT_ROW_MM - 1.2],
        [20.4, ROW_Y + NEXT_ROW_MM],
        [14, ROW_Y + NEXT_ROW_MM + 0.4],
      ],
      { to: 'moves' },
    ),
  ],
};
