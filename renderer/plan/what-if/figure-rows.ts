/**
 * The figures that variants are weighed by, and how each differs: by what is shown, so that whoever takes one figure from
 * the other gets the same. They are the materials' and the plan's own.
 */
import { amountWords } from '../../../shared/materials/amount.ts';
import type { Cost } from '../../../shared/materials/cost.ts';
import { grouped } from '../../../shared/units/grouped.ts';
import { formatLength, lengthDifference } from '../../../shared/units/length.ts';
import { formatMass, massDifference } from '../../../shared/units/mass.ts';
import { formatMoney, moneyDifference } from '../../../shared/units/money.ts';
import { signed } from '../../../shared/units/signed.ts';
import { formatTime, timeDifference } from '../../../shared/units/time.ts';
import type { Units } from '../../../shared/units/units.ts';
import { formatYarnLength, yarnLengthDifference } from '../../../shared/units/yarn-length.ts';
import type { Weighed } from './weigh.worker.ts';

export interface FigureRow {
  readonly name: string;
  readonly shown: (weighed: Weighed, units: Units) => string;
  /** '+4', '−1.2 m', 'same': how one differs from the first; empty where that can't be said. */
  readonly differs: (first: Weighed, one: Weighed, units: Units) => string;
}

type Of = (weighed: Weighed) => number;

const enough = { enough: true };
const count = (value: number) => grouped(String(value));

function counting(name: string, of: Of): FigureRow {
  return {
    name,
    shown: (weighed) => count(of(weighed)),
    differs: (first, one) => signed(of(one) - of(first), count),
  };
}

function yarn(name: string, of: Of, rounding = {}): FigureRow {
  return {
    name,
    shown: (weighed, units) => formatYarnLength(of(weighed), units, rounding),
    differs: (first, one, units) => yarnLengthDifference(of(first), of(one), units, rounding),
  };
}

function length(name: string, of: Of, rounding = {}): FigureRow {
  return {
    name,
    shown: (weighed, units) => formatLength(of(weighed), units, rounding),
    differs: (first, one, units) => lengthDifference(of(first), of(one), units, rounding),
  };
}

const pieces = counting('Pieces', ({ figures }) => figures.pieces);
const looseEnds = counting('Loose ends', ({ figures }) => figures.looseEnds);
const yarnToCut = yarn('Yarn to cut', ({ figures }) => figures.yarnCutMm, enough);

const hours: FigureRow = {
  name: 'Hours',
  shown: ({ figures }) => `≈ ${formatTime(figures.seconds)}`,
  differs: (first, one) => timeDifference(first.figures.seconds, one.figures.seconds),
};

const costRow: FigureRow = {
  name: 'Cost of materials',
  shown: ({ materials: { cost } }) =>
    amountWords(cost.materials, (amount) => formatMoney(amount, cost.currency ?? undefined)),
  differs({ materials: { cost: first } }, { materials: { cost: one } }) {
    if (!isFollowed(first) || !isFollowed(one)) return '';
    return moneyDifference(first.materials.amount, one.materials.amount, one.currency ?? undefined);
  },
};

/** What depends on the plan is all told: dowel, backing and fees cost as much in every variant, told or not. */
function isFollowed({ parts: { yarn, cord } }: Cost): boolean {
  return yarn.whole && cord.whole;
}

export const whatIfRows: readonly FigureRow[] = [
  pieces,
  looseEnds,
  counting('Hanging at once', ({ figures }) => figures.liveMax),
  yarnToCut,
  yarn('Carries and turns', ({ figures }) => figures.carriedMm),
  costRow,
  hours,
];

/** What another gauge changes first. */
export const sizeRows: readonly FigureRow[] = [
  length('Width', ({ materials }) => materials.finished.widthMm),
  length('Knotted height', ({ materials }) => materials.finished.knottedHeightMm),
];

export const gradeRows: readonly FigureRow[] = [
  ...sizeRows,
  length('Dowel, at least', ({ materials }) => materials.dowel.minLengthMm, enough),
  yarn('Cord to cut', ({ materials }) => materials.cords.totalMm, enough),
  yarnToCut,
  pieces,
  looseEnds,
  {
    name: 'Mass',
    shown: ({ materials }, units) => formatMass(materials.totals.massG, units, enough),
    differs: (first, one, units) =>
      massDifference(first.materials.totals.massG, one.materials.totals.massG, units, enough),
  },
  hours,
];
