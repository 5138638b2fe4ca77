/** Masses of yarn, cord and hangings: g and kg, or ounces and pounds. */
import { grouped } from './grouped.ts';
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
  if (wholeSteps(g, 1, rounding) >= 1000) return `${decimal(g / 1000, 0.01, rounding)} kg`;
  return `${decimal(g, g < 10 ? 0.1 : 1, rounding)} g`;
}

function us(g: number, rounding: Rounding): string {
  if (wholeSteps(g / gPerOunce, 0.1, rounding) < 160) return `${decimal(g / gPerOunce, 0.1, rounding)} oz`;
  const whole = wholeSteps(g, gPerOunce, rounding);
  const rest = whole % 16;
  const pounds = `${grouped(String(Math.floor(whole / 16)))} lb`;
  return rest === 0 ? pounds : `${pounds} ${rest} oz`;
}
