/**
 * What a hanging costs to make, and what it may be sold for. Conventions differ between trades and places, so every
 * multiplier is the maker's, and each figure carries its formula as a sentence:
 *   cost      = yarn + cord + dowel + backing + pattern fees
 *   wholesale = cost + labour + overhead, times 1; or keystone: cost x 2
 *   retail    = wholesale x 2
 * Common practice, no standard. 'Pricing your handmade products' (cuttingforbusiness.com) doubles the sum of supplies,
 * labour and overhead for wholesale; 'Simple pricing formulas' (5minutepitch.com) has the keystone price.
 *
 * Each line is rounded to the money's minor unit before the next is reckoned from it; hours and metres of cord are those
 * that are shown. What was not told counts for nothing and is named, and a figure that rests on it is not whole.
 *
 * What the hanging costs counts all its skeins, also those that are owned already, for they are used up or must be bought
 * again; what is to pay now is what must still be bought.
 */
import { defaults } from '../design/defaults.ts';
import type { Design } from '../design/design.ts';
import type { Money } from '../design/schema.ts';
import { mmPerYard } from '../units/length.ts';
import { formatTime, timeAsShownS } from '../units/time.ts';
import type { Units } from '../units/units.ts';
import { metresAsShown } from '../units/yarn-length.ts';
import {
  type Amount,
  amountWords,
  equation,
  notToldYet,
  plainFigure,
  productWords,
  sumOf,
  type Telling,
  tellingIn,
  timesOf,
  toldAmount,
} from './amount.ts';
import type { YarnNeed } from './materials.ts';

export interface Cost {
  /** The money's code by ISO 4217; null: not told. */
  readonly currency: string | null;
  readonly parts: {
    readonly yarn: Amount;
    readonly cord: Amount;
    readonly dowel: Amount;
    readonly backing: Amount;
    readonly patternFees: Amount;
  };
  readonly materials: Amount;
  readonly labour: Amount;
  readonly overhead: Amount;
  readonly wholesale: Amount;
  readonly retail: Amount;
  /** What the yarn still to be bought costs. */
  readonly yarnToBuy: Amount;
  /** What must be bought now: the yarn that is not owned, and all the rest of the materials. */
  readonly toPay: Amount;
  /** What was not told, each as words: 'the price of a skein of Dusk'; that of the materials first. */
  readonly missing: readonly string[];
  /** So much of it the cost of materials rests on. */
  readonly missingOfMaterials: readonly string[];
}

/** What a hanging takes, as far as it costs something. */
export interface Costly {
  readonly yarns: readonly Pick<YarnNeed, 'id' | 'name' | 'skeins' | 'toBuySkeins'>[];
  readonly cordMm: number;
  readonly seconds: number;
}

/** `units`: whether formulas count cord in metres, or in yards. */
export function costOf(
  design: Pick<Design, 'yarns' | 'money'>,
  taken: Costly,
  units: Units = 'metric',
): Cost {
  const money = design.money ?? {};
  const telling = tellingIn(money.currency);
  const sold = yarnsSold(design, taken, telling);
  const parts = partsOf({ money, sold, cord: cordAmount(money, taken, units, telling) }, telling);
  const besideYarn = [
    ['cord', parts.cord],
    ['dowel', parts.dowel],
    ['backing', parts.backing],
    ['pattern fees', parts.patternFees],
  ] as const;
  const yarnToBuy = yarnAmount('Yarn to buy', sold, 'toBuySkeins', telling);
  const materials = sumOf('Cost of materials', [['yarn', parts.yarn], ...besideYarn], telling);
  const missingOfMaterials = [...telling.missing];
  const labour = labourOf(money, taken, telling);
  const overhead = overheadOf(money, materials, labour, telling);
  const wholesale = wholesaleBy[money.wholesale ?? defaults.money.wholesale](
    { materials, labour, overhead },
    money,
    telling,
  );
  const retailTimes = money.retailTimes ?? defaults.money.retailTimes;
  return {
    currency: money.currency ?? null,
    parts,
    materials,
    labour,
    overhead,
    wholesale,
    retail: timesOf('Retail', 'wholesale', wholesale, retailTimes, telling),
    yarnToBuy,
    toPay: sumOf('To pay now', [['yarn to buy', yarnToBuy], ...besideYarn], telling),
    missing: telling.missing,
    missingOfMaterials,
  };
}

type Wholesale = NonNullable<Money['wholesale']>;

const wholesaleBy: Readonly<
  Record<
    Wholesale,
    (of: Pick<Cost, 'materials' | 'labour' | 'overhead'>, money: Money, telling: Telling) => Amount
  >
> = {
  sum: ({ materials, labour, overhead }, { sumTimes = defaults.money.sumTimes }, telling) => {
    const parts = [
      ['materials', materials],
      ['labour', labour],
      ['overhead', overhead],
    ] as const;
    if (sumTimes === 1) return sumOf('Wholesale', parts, telling);
    return timesOf(
      'Wholesale',
      'materials, labour and overhead',
      sumOf('', parts, telling),
      sumTimes,
      telling,
    );
  },
  keystone: ({ materials }, { keystoneTimes = defaults.money.keystoneTimes }, telling) =>
    timesOf('Wholesale', 'cost of materials', materials, keystoneTimes, telling),
};

type Sold = Costly['yarns'][number] & { readonly price: number | undefined };

function yarnsSold({ yarns }: Pick<Design, 'yarns'>, taken: Costly, { missing }: Telling): Sold[] {
  const sold = taken.yarns.map((yarn) => ({ ...yarn, price: yarns.find(({ id }) => id === yarn.id)?.price }));
  const untold = sold.filter(({ price }) => price === undefined).map(({ name }) => name);
  const names = [untold.slice(0, -1).join(', '), ...untold.slice(-1)].filter(Boolean).join(' and ');
  if (names !== '') missing.push(`the price of a skein of ${names}`);
  return sold;
}

interface Bought {
  readonly money: Money;
  readonly sold: readonly Sold[];
  readonly cord: Amount;
}

function partsOf({ money, sold, cord }: Bought, telling: Telling): Cost['parts'] {
  return {
    yarn: yarnAmount('Yarn', sold, 'skeins', telling),
    cord,
    dowel: toldAmount('Dowel', money.dowelPrice, 'the price of the dowel', telling),
    backing: toldAmount('Backing', money.backingPrice, 'the price of the backing', telling),
    patternFees: toldAmount('Pattern fees', money.patternFees, 'the fees for the pattern', telling),
  };
}

/** How cord is sold: by the metre, or by the yard. */
const cordMeasures = {
  metric: { mm: 1000, unit: ' m', words: 'the price of a metre of cord' },
  us: { mm: mmPerYard, unit: ' yd', words: 'the price of a yard of cord' },
} as const;

/** The metres that are shown, whatever the formula counts in: the same cord costs the same in all units. */
function cordAmount({ cordPricePerM }: Money, { cordMm }: Costly, units: Units, telling: Telling): Amount {
  const { mm, unit, words } = cordMeasures[units === 'us' ? 'us' : 'metric'];
  if (cordPricePerM === undefined) return toldAmount('Cord', undefined, words, telling);
  const metres = metresAsShown(cordMm, { enough: true });
  const amount = telling.round(metres * cordPricePerM);
  const product = { amount, count: (metres * 1000) / mm, each: (cordPricePerM * mm) / 1000 };
  const whole = { amount, whole: true };
  return { ...whole, formula: equation('Cord', productWords(product, unit, telling), whole, telling.show) };
}

function labourOf({ hourlyRate }: Money, { seconds }: Costly, telling: Telling): Amount {
  if (hourlyRate === undefined) return toldAmount('Labour', undefined, 'the pay for an hour', telling);
  const { round, show, price } = telling;
  const whole = { amount: round((timeAsShownS(seconds) / 3600) * hourlyRate), whole: true };
  const words = `${formatTime(seconds)} × ${price(hourlyRate, 6)}`;
  return { ...whole, formula: equation('Labour', words, whole, show) };
}

function yarnAmount(
  name: string,
  sold: readonly Sold[],
  count: 'skeins' | 'toBuySkeins',
  telling: Telling,
): Amount {
  const bought = sold.filter((yarn) => yarn[count] > 0);
  const { round, show } = telling;
  const lines = bought.map(({ price, name: yarnName, [count]: skeins }) => {
    if (price === undefined) return { amount: 0, words: `${yarnName} ${skeins} × ${notToldYet}` };
    const amount = round(skeins * price);
    return {
      amount,
      words: `${yarnName} ${productWords({ amount, count: skeins, each: price }, '', telling)}`,
    };
  });
  const amount = round(lines.reduce((sum, line) => sum + line.amount, 0));
  const whole = bought.every(({ price }) => price !== undefined);
  const words = lines.map((line) => line.words).join(' + ');
  return {
    amount,
    whole,
    formula: words === '' ? `${name} = ${show(0)}` : equation(name, words, { amount, whole }, show),
  };
}

function overheadOf({ overheadShare }: Money, materials: Amount, labour: Amount, telling: Telling): Amount {
  if (overheadShare === undefined)
    return toldAmount('Overhead', undefined, 'the share for overhead', telling);
  const { round, show } = telling;
  const amount = round(overheadShare * (materials.amount + labour.amount));
  // Nothing of it is nothing, whatever it is of.
  const sure = { amount, whole: overheadShare === 0 || (materials.whole && labour.whole) };
  const words = `${plainFigure(overheadShare * 100)} % × (materials ${amountWords(materials, show)} + labour ${amountWords(labour, show)})`;
  return { ...sure, formula: equation('Overhead', words, sure, show) };
}
