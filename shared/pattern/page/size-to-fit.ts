/** `sizeMm`, or less where a line of text would be wider than `widthMm`. */
import { textWidthMm } from '../faces/measure-text.ts';
import type { Face } from './page.ts';

export function sizeToFit(text: string, face: Face, sizeMm: number, widthMm: number): number {
  return sizeMm * Math.min(1, widthMm / textWidthMm(text, face, sizeMm));
}
