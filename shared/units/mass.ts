/** Masses of yarn, cord and hangings: g and kg, or ounces and pounds. */
import { decimal, wholeSteps } from './round.ts';
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

function metric(g: number, rounding: Rounding): string {
  const grams = g < 10 ? decimal(g, 0.1, rounding) : decimal(g, 1, rounding);
  return Number(grams) < 1000 ? `${grams} g` : `${decimal(g / 1000, 0.01, rounding)} kg`;
}

function us(g: number, rounding: Rounding): string {
  const ounces = decimal(g / gPerOunce, 0.1, rounding);
  if (Number(ounces) < 16) return `${ounces} oz`;
  const whole = wholeSteps(g, gPerOunce, rounding);
  const rest = whole % 16;
  return rest === 0 ? `${whole / 16} lb` : `${Math.floor(whole / 16)} lb ${rest} oz`;
}
