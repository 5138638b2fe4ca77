/** The maker's settings for tying, in the words and units that the Plan screen shows them in. */
import { limits } from '../../../shared/design/limits.ts';
import type { TyingSettings } from '../../../shared/design/schema.ts';
import type { Units } from '../../../shared/units/units.ts';
import { lengthIn, lengthUnit, mmFrom } from '../../new-design/length-field.ts';

export interface TyingField {
  readonly key: keyof TyingSettings;
  readonly label: string;
  /** For the history: 'Change the working length'. */
  readonly step: string;
  readonly explained: string;
  readonly unit: (units: Units) => string;
  /** The unit behind a 1, where it is another. */
  readonly one?: string;
  /** From the file's value to the one that is written, and back. */
  readonly shown: (value: number, units: Units) => number;
  readonly kept: (written: number, units: Units) => number;
  /** In the file's units. */
  readonly min: number;
  readonly max: number;
  readonly whole: boolean;
  /** What one press of a button adds, as it is shown. */
  readonly press: (units: Units) => number;
  /** Where it may be left empty: what that means, in a word. */
  readonly empty?: string;
}

type Length = Omit<TyingField, 'unit' | 'shown' | 'kept' | 'whole' | 'press'>;

/** `metric` in cm, `us` in inches: what a press adds. */
function length(field: Length, metric: number, us: number): TyingField {
  return {
    ...field,
    unit: lengthUnit,
    shown: (mm, units) => Math.round(lengthIn(mm, units) * 100) / 100,
    kept: (written, units) => Math.round(mmFrom(written, units) * 10) / 10,
    whole: false,
    press: (units) => (units === 'us' ? us : metric),
  };
}

type Count = Length & { readonly of: string; readonly one: string };

function count({ of, ...field }: Count): TyingField {
  const same = (value: number) => value;
  return { ...field, unit: () => of, shown: same, kept: same, whole: true, press: () => 1 };
}

export const tyingFields: readonly TyingField[] = [
  length(
    {
      key: 'workingLengthMm',
      label: 'Working length',
      step: 'Change the working length',
      explained: 'How long each piece is cut: longer needs fewer joins, shorter tangles less.',
      min: 1,
      max: 100_000,
    },
    10,
    4,
  ),
  length(
    {
      key: 'tailMm',
      label: 'Tail',
      step: 'Change the tails',
      explained: 'What hangs free at both ends of each piece, to be tied off or trimmed.',
      min: 0,
      max: 100_000,
    },
    0.5,
    0.25,
  ),
  {
    key: 'reserveShare',
    label: 'Reserve of each piece',
    step: 'Change the reserve',
    explained:
      'Kept free when pieces are planned, and used up by a looser hand: with none, a hand 3 % looser runs out again and again.',
    unit: () => '%',
    shown: (value) => Math.round(value * 1000) / 10,
    kept: (written) => Math.round(written * 10) / 1000,
    min: 0,
    max: 0.5,
    whole: false,
    press: () => 1,
  },
  count({
    key: 'carryMaxCords',
    of: 'cords',
    one: 'cord',
    label: 'Carry at most, across',
    step: 'Change how far strands are carried',
    explained: 'Beyond this many cords a strand is cut, not carried behind the work.',
    min: 0,
    max: 1000,
  }),
  count({
    key: 'carryMaxRows',
    of: 'rows',
    one: 'row',
    label: 'Carry at most, down',
    step: 'Change how far strands are carried',
    explained: 'Beyond this many rows a strand is cut, not left hanging.',
    min: 0,
    max: 2000,
  }),
  {
    ...count({
      key: 'liveWish',
      of: 'strands',
      one: 'strand',
      label: 'Hanging at once, at most',
      step: 'Change how many strands may hang',
      explained:
        'The plan cuts where more would hang between two rows, at the price of pieces. Empty: as many as is best.',
      min: 1,
      max: limits.columns,
    }),
    empty: 'any',
  },
  length(
    {
      key: 'effortMm',
      label: 'Trouble of a new piece',
      step: 'Change the trouble of a new piece',
      explained: 'As much yarn as you would rather carry than attach one more piece.',
      min: 0,
      max: 100_000,
    },
    2,
    1,
  ),
  length(
    {
      key: 'rowPriceMm',
      label: 'Trouble of a hanging strand',
      step: 'Change the trouble of a hanging strand',
      explained: 'The same for each row that a strand hangs: with more, fewer hang at once.',
      min: 0,
      max: 100_000,
    },
    0.5,
    0.25,
  ),
  {
    key: 'slack',
    label: 'Slack of carries',
    step: 'Change the slack',
    explained: 'How much longer a carry is than its straight way, so as not to pull.',
    unit: () => '%',
    shown: (value) => Math.round((value - 1) * 1000) / 10,
    kept: (written) => 1 + Math.round(written * 10) / 1000,
    min: 1,
    max: 10,
    whole: false,
    press: () => 1,
  },
];
