/**
 * What a new design starts from. Each value is the maker's to change. Working length, tail, overhang: common
 * practice (an arm span of 60 in, tails of 5 to 8 cm, 2 in to the first mount); all others are values from memory,
 * to be measured by the maker.
 */
import type { Cord, Dowel, Fringe, Money, Rates, TyingSettings, Yarn } from './schema.ts';

const cord: Cord = { name: 'Cotton cord', diameterMm: 3, gPerM: 5, takeUp: 0.03, trimMm: 20, roundUpMm: 50 };

const dowel: Dowel = { diameterMm: 12, overhangMm: 51, gPerCm3: 0.7 };

const fringe: Fringe = { shape: 'straight', longMm: 150, shortMm: 150 };

const tying: TyingSettings = {
  workingLengthMm: 1524,
  tailMm: 65,
  effortMm: 200,
  carryMaxCords: 8,
  carryMaxRows: 6,
  slack: 1.05,
  rowPriceMm: 15,
};

const rates: Rates = {
  secondsPerKnot: 25,
  secondsPerPiece: 45,
  secondsPerRow: 10,
  secondsPerMount: 60,
  secondsPerLooseEnd: 20,
  secondsToFinish: 1800,
};

/** How a price is made until the maker says otherwise; common conventions, which differ between trades and places. */
const money = { wholesale: 'sum', sumTimes: 1, keystoneTimes: 2, retailTimes: 2 } as const satisfies Money;

function yarn(id: Yarn['id'], name: string, color: string, symbol: string): Yarn {
  return { id, name, color, symbol, diameterMm: 2, metresPer100G: 200, skeinG: 50 };
}

const yarns: Yarn[] = [
  yarn('y1', 'Linen', '#e6ddc9', 'a'),
  yarn('y2', 'Dusk', '#566a94', 'b'),
  yarn('y3', 'Tide', '#28455f', 'c'),
  yarn('y4', 'Apricot', '#e0955a', 'd'),
  yarn('y5', 'Madder', '#9e3329', 'e'),
  yarn('y6', 'Coal', '#2b2a2d', 'f'),
];

export const defaults = { cord, dowel, fringe, tying, rates, money, yarns, yarnMargin: 0.1 };
