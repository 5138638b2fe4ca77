/** The figures that variants are weighed by, and how each differs. They are the materials' and the plan's own. */
import { formatLength } from '../../../shared/units/length.ts';
import { formatMass } from '../../../shared/units/mass.ts';
import { formatMoney } from '../../../shared/units/money.ts';
import { formatTime } from '../../../shared/units/time.ts';
import type { Units } from '../../../shared/units/units.ts';
import { formatYarnLength } from '../../../shared/units/yarn-length.ts';
import type { Weighed } from './weigh.worker.ts';

export interface FigureRow {
  readonly name: string;
  readonly of: (weighed: Weighed) => number;
  readonly shown: (value: number, units: Units) => string;
  readonly differs: (value: number, units: Units) => string;
}

/** Stands for a figure that rests on what was not told. */
export const notTold = '–';

const count = (value: number) => value.toLocaleString('en');
const yarn = (mm: number, units: Units) => formatYarnLength(mm, units, { enough: true });
const length = (mm: number, units: Units) => formatLength(mm, units);

const pieces: FigureRow = {
  name: 'Pieces',
  of: ({ figures }) => figures.pieces,
  shown: count,
  differs: count,
};
const looseEnds: FigureRow = {
  name: 'Loose ends',
  of: ({ figures }) => figures.looseEnds,
  shown: count,
  differs: count,
};
const yarnToCut: FigureRow = {
  name: 'Yarn to cut',
  of: ({ figures }) => figures.yarnCutMm,
  shown: yarn,
  differs: formatYarnLength,
};
const hours: FigureRow = {
  name: 'Hours',
  of: ({ figures }) => figures.seconds,
  shown: (seconds) => `≈ ${formatTime(seconds)}`,
  differs: formatTime,
};

export const whatIfRows: readonly FigureRow[] = [
  pieces,
  looseEnds,
  { name: 'Hanging at once', of: ({ figures }) => figures.liveMax, shown: count, differs: count },
  yarnToCut,
  {
    name: 'Carries and turns',
    of: ({ figures }) => figures.carriedMm,
    shown: formatYarnLength,
    differs: formatYarnLength,
  },
  {
    name: 'Cost of materials',
    of: ({ materials }) => materials.cost.materials.amount,
    shown: (amount) => (amount === 0 ? notTold : formatMoney(amount)),
    differs: (amount) => formatMoney(amount),
  },
  hours,
];

export const gradeRows: readonly FigureRow[] = [
  { name: 'Width', of: ({ materials }) => materials.finished.widthMm, shown: length, differs: length },
  {
    name: 'Knotted height',
    of: ({ materials }) => materials.finished.knottedHeightMm,
    shown: length,
    differs: length,
  },
  {
    name: 'Dowel, at least',
    of: ({ materials }) => materials.dowel.minLengthMm,
    shown: (mm, units) => formatLength(mm, units, { enough: true }),
    differs: length,
  },
  {
    name: 'Cord to cut',
    of: ({ materials }) => materials.cords.totalMm,
    shown: yarn,
    differs: formatYarnLength,
  },
  yarnToCut,
  pieces,
  looseEnds,
  {
    name: 'Mass',
    of: ({ materials }) => materials.totals.massG,
    shown: (g, units) => formatMass(g, units, { enough: true }),
    differs: (g, units) => formatMass(g, units),
  },
  hours,
];

/** '+4', '−1.2 m', 'same'. */
export function difference(value: number, shown: (value: number) => string): string {
  const size = shown(Math.abs(value));
  if (size === shown(0)) return 'same';
  return `${value > 0 ? '+' : '−'}${size}`;
}
