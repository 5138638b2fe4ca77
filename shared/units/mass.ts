/** Masses of yarn, cord and hangings: g and kg, or ounces and pounds. */
import { grouped } from './grouped.ts';
import { decimal, wholeSteps } from './round.ts';
import { signed, signedInUnits } from './signed.ts';
import { inUnits, type Rounding, type Units } from './units.ts';

/** Exact: international yard and pound agreement, 1959. */
export const gPerPound = 453.59237;
export const gPerOunce = 28.349523125;

/**
 * '57 g', '1.25 kg', '2 oz', '2 lb 3 oz'. To 0.1 g below 10 g, 1 g below 1 kg and 10 g from there; to 0.1 oz below
 * 1 lb and 1 oz from there. Up to the next step where it must be enough.
 */
export function formatMass(g: number, units: Units, rounding: Rounding = {}): string {
  return inUnits(
    units,
    () => metric(g, rounding),
    () => us(g, rounding),
  );
}

/** '+30 g', '−2 oz', 'same': how the second differs from the first, as both are shown with this rounding. */
export function massDifference(
  beforeG: number,
  afterG: number,
  units: Units,
  rounding: Rounding = {},
): string {
  const by = (asShown: (g: number, rounding: Rounding) => number) =>
    asShown(afterG, rounding) - asShown(beforeG, rounding);
  return signedInUnits(
    units,
    () => signed(by(gAsShown), (g) => (g < 1000 ? `${decimal(g, 0.1)} g` : `${decimal(g / 1000, 0.001)} kg`)),
    () => signed(by(ozAsShown), ounces),
  );
}

function metric(g: number, rounding: Rounding): string {
  const shown = gAsShown(g, rounding);
  return shown >= 1000 ? `${decimal(shown / 1000, 0.01)} kg` : `${decimal(shown, 0.1)} g`;
}

function gAsShown(g: number, rounding: Rounding): number {
  const step = wholeSteps(g, 1, rounding) >= 1000 ? 10 : g < 10 ? 0.1 : 1;
  return wholeSteps(g, step, rounding) * step;
}

function us(g: number, rounding: Rounding): string {
  return ounces(ozAsShown(g, rounding));
}

function ozAsShown(g: number, rounding: Rounding): number {
  const oz = g / gPerOunce;
  const step = wholeSteps(oz, 0.1, rounding) < 160 ? 0.1 : 1;
  return wholeSteps(oz, step, rounding) * step;
}

function ounces(oz: number): string {
  if (oz < 16) return `${decimal(oz, 0.1)} oz`;
  const pounds = Math.floor(oz / 16);
  const rest = decimal(oz - pounds * 16, 0.1);
  const whole = `${grouped(String(pounds))} lb`;
  return rest === '0' ? whole : `${whole} ${rest} oz`;
}
