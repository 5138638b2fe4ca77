/** Prices, rates and multipliers in the words and units that the Materials leaf shows them in. */
import type { Money, Rates } from '../../../shared/design/schema.ts';
import { mmPerYard } from '../../../shared/units/length.ts';
import type { Units } from '../../../shared/units/units.ts';

export interface Shown {
  readonly label: string;
  /** For the history. */
  readonly step: string;
  readonly unit: (units: Units) => string;
  /** The written figure is the file's times this. */
  readonly times: (units: Units) => number;
  /** In the file's units. */
  readonly max: number;
}

export interface MoneyField extends Shown {
  readonly key:
    | 'cordPricePerM'
    | 'dowelPrice'
    | 'backingPrice'
    | 'patternFees'
    | 'hourlyRate'
    | 'overheadShare';
}

export interface RateField extends Shown {
  readonly key: keyof Rates;
}

const one = () => 1;
const plain = (label: string, step: string, max = 1_000_000): Omit<Shown, 'unit'> => ({
  label,
  step,
  times: one,
  max,
});

export const materialPrices: readonly MoneyField[] = [
  {
    key: 'cordPricePerM',
    label: 'Price of cord',
    step: 'Change the price of cord',
    unit: (units) => (units === 'us' ? 'a yard' : 'a metre'),
    times: (units) => (units === 'us' ? mmPerYard / 1000 : 1),
    max: 1_000_000,
  },
  { key: 'dowelPrice', ...plain('Price of the dowel', 'Change the price of the dowel'), unit: () => '' },
  { key: 'backingPrice', ...plain('Price of a backing', 'Change the price of the backing'), unit: () => '' },
  {
    key: 'patternFees',
    ...plain('Fees for the pattern', 'Change the fees for the pattern'),
    unit: () => 'a hanging',
  },
];

export const labourFields: readonly MoneyField[] = [
  { key: 'hourlyRate', ...plain('Your pay', 'Change the pay for an hour'), unit: () => 'an hour' },
  {
    key: 'overheadShare',
    label: 'Overhead',
    step: 'Change the overhead',
    unit: () => '% of both',
    times: () => 100,
    max: 10,
  },
];

export const rateFields: readonly RateField[] = [
  { key: 'secondsPerKnot', ...plain('A knot', 'Change the time for a knot'), unit: () => 'seconds' },
  {
    key: 'secondsPerPiece',
    ...plain('Attach or join a piece', 'Change the time for a piece'),
    unit: () => 'seconds',
  },
  { key: 'secondsPerRow', ...plain('Begin a row', 'Change the time for a row'), unit: () => 'seconds' },
  {
    key: 'secondsPerMount',
    ...plain('Mount a cut cord', 'Change the time for mounting'),
    unit: () => 'seconds',
  },
  {
    key: 'secondsPerLooseEnd',
    ...plain('Tie off a loose end', 'Change the time for a loose end'),
    unit: () => 'seconds',
  },
  {
    key: 'secondsToFinish',
    label: 'Finish it',
    step: 'Change the time for finishing',
    unit: () => 'minutes',
    times: () => 1 / 60,
    max: 1_000_000,
  },
];

/** Which multiplier makes the wholesale price, by the way it is made. */
export const wholesaleTimes: Readonly<
  Record<
    NonNullable<Money['wholesale']>,
    { readonly key: 'sumTimes' | 'keystoneTimes'; readonly label: string }
  >
> = {
  sum: { key: 'sumTimes', label: 'Wholesale: the sum, times' },
  keystone: { key: 'keystoneTimes', label: 'Wholesale: materials, times' },
};
