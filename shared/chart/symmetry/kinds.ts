/** The kinds of symmetry as a person chooses them, in the words of mathematics. */
import type { PointKind, RepeatKind } from './symmetry.ts';

export interface PointKindInfo {
  readonly kind: PointKind;
  readonly label: string;
  /** What is copied where, in one sentence. */
  readonly hint: string;
  /** How often a cell is drawn, itself counted: the order of the group. */
  readonly order: 1 | 2 | 4 | 8;
  /** Cords change places with rows, so the centre lies as deep in a cord as in a row, and periods are alike. */
  readonly swapsCordsAndRows: boolean;
}

export interface RepeatKindInfo {
  readonly kind: RepeatKind;
  readonly label: string;
  readonly hint: string;
}

export const pointKinds: readonly PointKindInfo[] = [
  {
    kind: 'none',
    label: 'No mirror or turn',
    hint: 'Draws where you draw.',
    order: 1,
    swapsCordsAndRows: false,
  },
  {
    kind: 'mirror-left-right',
    label: 'Mirror left and right',
    hint: 'Copies across an upright line.',
    order: 2,
    swapsCordsAndRows: false,
  },
  {
    kind: 'mirror-top-bottom',
    label: 'Mirror top and bottom',
    hint: 'Copies across a level line.',
    order: 2,
    swapsCordsAndRows: false,
  },
  {
    kind: 'mirror-both',
    label: 'Mirror both ways',
    hint: 'Copies across an upright and a level line: four in all.',
    order: 4,
    swapsCordsAndRows: false,
  },
  {
    kind: 'mirror-diagonal',
    label: 'Mirror on the diagonal',
    hint: 'Copies across the line that falls from left to right.',
    order: 2,
    swapsCordsAndRows: true,
  },
  {
    kind: 'mirror-antidiagonal',
    label: 'Mirror on the antidiagonal',
    hint: 'Copies across the line that rises from left to right.',
    order: 2,
    swapsCordsAndRows: true,
  },
  {
    kind: 'mirror-diagonals',
    label: 'Mirror on both diagonals',
    hint: 'Copies across both slanting lines: four in all.',
    order: 4,
    swapsCordsAndRows: true,
  },
  {
    kind: 'half-turn',
    label: 'Half turn',
    hint: 'Copies upside down about the centre.',
    order: 2,
    swapsCordsAndRows: false,
  },
  {
    kind: 'quarter-turn',
    label: 'Quarter turn',
    hint: 'Copies at every quarter turn about the centre: four in all.',
    order: 4,
    swapsCordsAndRows: true,
  },
  {
    kind: 'quarter-turn-mirrored',
    label: 'Quarter turn with mirrors',
    hint: 'Copies at every quarter turn, each mirrored: eight in all.',
    order: 8,
    swapsCordsAndRows: true,
  },
];

export const repeatKinds: readonly RepeatKindInfo[] = [
  { kind: 'none', label: 'No repeat', hint: 'Draws once.' },
  { kind: 'translation', label: 'Translation', hint: 'Repeats across and down at the periods you set.' },
  {
    kind: 'half-drop',
    label: 'Half drop',
    hint: 'Repeats across and down, every other column half a period lower.',
  },
];

/** True where the kind brings cords to rows. */
export function swapsCordsAndRows(point: PointKind): boolean {
  return pointKinds.some(({ kind, swapsCordsAndRows }) => kind === point && swapsCordsAndRows);
}
