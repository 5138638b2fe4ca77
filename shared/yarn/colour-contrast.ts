/** Contrast of two colours by WCAG 2.2, and the ink in which a symbol is read best on a yarn's colour. */
import { useMode as addMode, modeLrgb, modeRgb, wcagContrast } from 'culori/fn';

addMode(modeRgb);
addMode(modeLrgb);

export const BLACK_INK = '#000000';
export const WHITE_INK = '#ffffff';

/**
 * Contrast ratio of two colours written as `#rrggbb`, 1 to 21, whichever is lighter. Text needs 4.5, marks need 3.
 * culori's linear light breaks at 0.04045, as IEC 61966-2-1 and WCAG 2.2 do; WCAG before 2021 said 0.03928, which
 * makes no difference to any colour of 8 bits.
 */
export function contrastRatio(hexA: string, hexB: string): number {
  return wcagContrast(hexA, hexB);
}

/** Black or white, whichever stands out more from the fill: never less than 4.58 to 1, the square root of 21. */
export function inkOn(fillHex: string): string {
  return contrastRatio(BLACK_INK, fillHex) >= contrastRatio(WHITE_INK, fillHex) ? BLACK_INK : WHITE_INK;
}
