/** A bar of 10 cm over one of 4 in, to see with a rule that a sheet is printed in its true size. */
import { textWidthMm } from '../faces/measure-text.ts';
import { label } from './label.ts';
import type { Item, PathStep } from './page.ts';
import { inks, type TypeScale } from './style.ts';

const CM_MM = 10;
const IN_MM = 25.4;
const TICK_MM = 2;

/** From the sentence above it to the foot of its inches. */
export function trueSizeBarMm({ small }: TypeScale): number {
  return firstMm(small) + TICK_MM + small * 1.4;
}

/** From the top to the bar of centimetres: below the sentence and beside nothing of it. */
function firstMm(sizeMm: number): number {
  return sizeMm * 2.3 + 0.5;
}

/** `words` say what is to be measured; `centimetres` and `inches` name the bars, at their right ends. */
export function trueSizeBar(
  x: number,
  top: number,
  sizes: TypeScale,
  words: { readonly check: string; readonly centimetres: string; readonly inches: string },
): Item[] {
  const { small: sizeMm } = sizes;
  const rowMm = TICK_MM + sizeMm * 1.1;
  const first = top + firstMm(sizeMm);
  const bars = [
    { y: first, stepMm: CM_MM, steps: 10, name: words.centimetres },
    { y: first + rowMm, stepMm: IN_MM, steps: 4, name: words.inches },
  ];
  const nameX = x + 4 * IN_MM + 2 + textWidthMm(' ', 'sans', sizeMm);
  return [
    label(x, top + sizeMm, words.check, { sizeMm, role: 'paragraph' }),
    ...bars.flatMap(({ y, stepMm, steps, name }): Item[] => [
      { kind: 'path', steps: ruler(x, y, stepMm, steps), stroke: inks.text, strokeMm: 0.25 },
      label(nameX, y, name, { face: 'sans-bold', sizeMm }),
    ]),
  ];
}

/** A line with a tick at each step. */
function ruler(x: number, y: number, stepMm: number, steps: number): PathStep[] {
  const ticks = Array.from({ length: steps + 1 }, (_, i): PathStep[] => [
    ['M', x + i * stepMm, y - TICK_MM],
    ['L', x + i * stepMm, y],
  ]);
  return [['M', x, y], ['L', x + steps * stepMm, y], ...ticks.flat()];
}
