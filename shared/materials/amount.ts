/**
 * Amounts of money with the formula that they come from; what was not told is left out, and named. Each amount is
 * rounded to the money's minor unit, and what follows goes on from that: whoever adds up or multiplies what is printed gets
 * what is printed.
 */
import { formatMoney, formatPrice, roundMoney } from '../units/money.ts';
import { decimal, wholeSteps } from '../units/round.ts';

export interface Amount {
  /** In the maker's own money, to its minor unit; what was not told is left out of it. */
  readonly amount: number;
  /** False where something that it rests on was not told: the true figure is then higher. */
  readonly whole: boolean;
  /** How it came about: 'Labour = 12 h 30 min × 15.00 = 187.50'. */
  readonly formula: string;
}

/** How amounts are rounded and written, and the list of what was found missing. */
export interface Telling {
  readonly round: (amount: number) => number;
  readonly show: (amount: number) => string;
  /** What one of something costs, to so many places where they are needed. */
  readonly price: (price: number, places: number) => string;
  readonly missing: string[];
}

export function tellingIn(currency: string | undefined): Telling {
  return {
    round: (amount) => roundMoney(amount, currency),
    show: (amount) => formatMoney(amount, currency),
    price: (price, places) => formatPrice(price, places, currency),
    missing: [],
  };
}

/** What stands for an amount of which nothing was told. */
export const notToldYet = 'not told yet';

/** An amount as the maker reads it: a sum in which something was not told is at least so much. `show` writes money. */
export function amountWords(
  { amount, whole }: Pick<Amount, 'amount' | 'whole'>,
  show: Telling['show'],
): string {
  if (whole) return show(amount);
  return amount > 0 ? `at least ${show(amount)}` : notToldYet;
}

/** An amount as it was told; `words` name it where it was not. */
export function toldAmount(
  name: string,
  told: number | undefined,
  words: string,
  { round, show, missing }: Telling,
): Amount {
  if (told === undefined) {
    missing.push(words);
    return { amount: 0, whole: false, formula: `${name}: ${words}, ${notToldYet}` };
  }
  const amount = round(told);
  return { amount, whole: true, formula: `${name} = ${show(amount)}` };
}

/** Something that is told each for itself. */
export interface Product {
  readonly amount: number;
  /** How many, in the measure that a price is told for: 21.9 yards. */
  readonly count: number;
  readonly each: number;
}

/**
 * '20 m × 0.40', with as few places as it takes that this is the amount: prices may be told finer than a minor unit, and
 * metres become yards. The count is rounded up, as all that is bought.
 */
export function productWords(
  { amount, count, each }: Product,
  unit: string,
  { round, price }: Telling,
): string {
  const isIt = (places: number) =>
    round(stepsUp(count, places) * Number(each.toFixed(places + 3))) === amount;
  const places = [1, 2, 3, 4, 5, 6].find(isIt) ?? 7;
  return `${decimal(count, 10 ** -places, { enough: true })}${unit} × ${price(each, places + 3)}`;
}

function stepsUp(count: number, places: number): number {
  return wholeSteps(count, 10 ** -places, { enough: true }) / 10 ** places;
}

/** The sum of amounts, each told by its name. */
export function sumOf(
  name: string,
  parts: readonly (readonly [name: string, amount: Amount])[],
  { round, show }: Telling,
): Amount {
  const amount = round(parts.reduce((sum, [, part]) => sum + part.amount, 0));
  const whole = parts.every(([, part]) => part.whole);
  const words = parts.map(([part, each]) => `${part} ${amountWords(each, show)}`);
  return { amount, whole, formula: equation(name, words.join(' + '), { amount, whole }, show) };
}

/** An amount so many times: `what` names it. */
export function timesOf(
  name: string,
  what: string,
  of: Amount,
  times: number,
  { round, show }: Telling,
): Amount {
  const amount = round(of.amount * times);
  const sure = { amount, whole: of.whole };
  const words = `${what} ${amountWords(of, show)} × ${plainFigure(times)}`;
  return { ...sure, formula: equation(name, words, sure, show) };
}

/** 'Retail = wholesale 10.00 × 2 = 20.00'; nothing is said to be 0 where nothing is known. */
export function equation(
  name: string,
  words: string,
  sure: Pick<Amount, 'amount' | 'whole'>,
  show: Telling['show'],
): string {
  const isKnown = sure.whole || sure.amount > 0;
  return isKnown ? `${name} = ${words} = ${amountWords(sure, show)}` : `${name}: ${notToldYet}`;
}

/** A multiplier or percentage as it was told, without the noise of binary fractions. */
export function plainFigure(value: number): string {
  return decimal(value, 1e-6);
}
