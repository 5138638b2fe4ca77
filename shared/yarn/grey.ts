/**
 * A colour as a printer without colours shows it: the grey of the same relative luminance, so of the same CIE
 * lightness L* (116 x cube root of Y - 16, or 903.3 Y in the dark, with Y the luminance under D65).
 */
import { useMode as addMode, converter, formatHex, modeLab65, modeRgb, modeXyz65 } from 'culori/fn';
import { cieLabOf } from './colour-difference.ts';

addMode(modeRgb);
addMode(modeXyz65);
addMode(modeLab65);
const toRgb = converter('rgb');

/** The grey of a colour; both as `#rrggbb`. */
export function greyOf(hex: string): string {
  return formatHex(toRgb({ mode: 'lab65', l: cieLabOf(hex).l, a: 0, b: 0 }));
}
