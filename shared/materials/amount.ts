/** Amounts of money with the formula that they come from; what was not told is left out, and named. */
import { formatMoney } from '../units/money.ts';
import { decimal } from '../units/round.ts';

export interface Amount {
  /** In the maker's own money; what was not told is left out of it. */
  readonly amount: number;
  /** False where something that it rests on was not told: the true figure is then higher. */
  readonly whole: boolean;
  /** How it came about: 'Labour = 12.5 h x 15.00 = 187.50'. */
  readonly formula: string;
}

/** How amounts are written, and the list of what was found missing. */
export interface Telling {
  readonly show: (amount: number) => string;
  readonly missing: string[];
}

export function tellingIn(currency: string | undefined): Telling {
  return { show: (amount) => formatMoney(amount, currency), missing: [] };
}

/** An amount as it was told; `words` name it where it was not. */
export function toldAmount(
  name: string,
  amount: number | undefined,
  words: string,
  { show, missing }: Telling,
): Amount {
  if (amount === undefined) missing.push(words);
  return {
    amount: amount ?? 0,
    whole: amount !== undefined,
    formula: amount === undefined ? `${name}: not told` : `${name} = ${show(amount)}`,
  };
}

/** So many of something at so much each: 'Labour = 12.5 h × 15.00 = 187.50'. */
export function countedAmount(
  name: string,
  { count, unit }: { readonly count: number; readonly unit: string },
  each: number | undefined,
  words: string,
  telling: Telling,
): Amount {
  if (each === undefined) return toldAmount(name, undefined, words, telling);
  const { show } = telling;
  const amount = count * each;
  return {
    amount,
    whole: true,
    formula: `${name} = ${decimal(count, 0.1)} ${unit} × ${show(each)} = ${show(amount)}`,
  };
}

/** The sum of amounts, each told by its name. */
export function sumOf(
  name: string,
  parts: readonly (readonly [name: string, amount: Amount])[],
  { show }: Telling,
): Amount {
  const amount = parts.reduce((sum, [, part]) => sum + part.amount, 0);
  const words = parts.map(([part, each]) =>
    each.whole || each.amount > 0 ? `${part} ${show(each.amount)}` : `${part} not told`,
  );
  return {
    amount,
    whole: parts.every(([, { whole }]) => whole),
    formula: `${name} = ${words.join(' + ')} = ${show(amount)}`,
  };
}

export function timesOf(name: string, what: string, of: Amount, times: number, { show }: Telling): Amount {
  const amount = of.amount * times;
  return {
    amount,
    whole: of.whole,
    formula: `${name} = ${what} ${show(of.amount)} × ${decimal(times, 0.01)} = ${show(amount)}`,
  };
}
