/**
 * What a hanging costs to make, and what it may be sold for. Conventions differ between trades and places, so every
 * multiplier is the maker's, and each figure carries its formula as a sentence:
 *   cost      = yarn + cord + dowel + backing + pattern fees
 *   wholesale = cost + labour + overhead, times 1; or keystone: cost x 2
 *   retail    = wholesale x 2
 * Common practice, no standard. 'Pricing your handmade products' (cuttingforbusiness.com) doubles the sum of supplies,
 * labour and overhead for wholesale; 'Simple pricing formulas' (5minutepitch.com) has the keystone price.
 *
 * What was not told counts for nothing and is named, and a figure that rests on it is not whole.
 */
import { defaults } from '../design/defaults.ts';
import type { Design } from '../design/design.ts';
import type { Money } from '../design/schema.ts';
import { mmPerYard } from '../units/length.ts';
import { formatPercent } from '../units/percent.ts';
import type { Units } from '../units/units.ts';
import { type Amount, countedAmount, sumOf, type Telling, tellingIn, timesOf, toldAmount } from './amount.ts';
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
  /** What was not told, each as words: 'the price of a skein of Dusk'. */
  readonly missing: readonly string[];
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
  const materials = sumOf(
    'Cost of materials',
    [
      ['yarn', parts.yarn],
      ['cord', parts.cord],
      ['dowel', parts.dowel],
      ['backing', parts.backing],
      ['pattern fees', parts.patternFees],
    ],
    telling,
  );
  const hours = { count: taken.seconds / 3600, unit: 'h' };
  const labour = countedAmount('Labour', hours, money.hourlyRate, 'the pay for an hour', telling);
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
    yarnToBuy: yarnAmount('Yarn to buy', sold, 'toBuySkeins', telling),
    missing: telling.missing,
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
  return taken.yarns.map((yarn) => {
    const price = yarns.find(({ id }) => id === yarn.id)?.price;
    if (price === undefined) missing.push(`the price of a skein of ${yarn.name}`);
    return { ...yarn, price };
  });
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
  metric: { mm: 1000, unit: 'm', words: 'the price of a metre of cord' },
  us: { mm: mmPerYard, unit: 'yd', words: 'the price of a yard of cord' },
} as const;

function cordAmount({ cordPricePerM }: Money, { cordMm }: Costly, units: Units, telling: Telling): Amount {
  const { mm, unit, words } = cordMeasures[units === 'us' ? 'us' : 'metric'];
  const each = cordPricePerM === undefined ? undefined : (cordPricePerM * mm) / 1000;
  return countedAmount('Cord', { count: cordMm / mm, unit }, each, words, telling);
}

function yarnAmount(
  name: string,
  sold: readonly Sold[],
  count: 'skeins' | 'toBuySkeins',
  { show }: Telling,
): Amount {
  const bought = sold.filter((yarn) => yarn[count] > 0);
  const words: string[] = [];
  let amount = 0;
  for (const { price, name: yarnName, [count]: skeins } of bought) {
    if (price === undefined) continue;
    amount += skeins * price;
    words.push(`${yarnName} ${skeins} × ${show(price)}`);
  }
  return {
    amount,
    whole: words.length === bought.length,
    formula: [name, ...(words.length > 0 ? [words.join(' + ')] : []), show(amount)].join(' = '),
  };
}

function overheadOf({ overheadShare }: Money, materials: Amount, labour: Amount, telling: Telling): Amount {
  if (overheadShare === undefined) return toldAmount('Overhead', undefined, 'the overhead', telling);
  const { show } = telling;
  const amount = overheadShare * (materials.amount + labour.amount);
  return {
    amount,
    whole: materials.whole && labour.whole,
    formula: `Overhead = ${formatPercent(overheadShare)} × (materials ${show(materials.amount)} + labour ${show(labour.amount)}) = ${show(amount)}`,
  };
}
