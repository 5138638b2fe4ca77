/**
 * The studio's own alphabet of yarn symbols: 64 drawings on a small lattice, chosen by computation
 * (`build/symbols/choose.ts`) so that any two differ clearly in one-bit print at 2.5 mm. Each stands for one letter,
 * digit or sign of text, so a printed chart can be searched and read aloud. They come in the order in which yarns
 * take them: the first few differ most, and the very first, for the ground, is a single point.
 */
import type { PathStep } from '../pattern/page.ts';
import { type SymbolShape, shapeOutline } from './symbol-shape.ts';
import shapes from './symbols.generated.json' with { type: 'json' };

export const alphabet: readonly SymbolShape[] = shapes;

const byText: ReadonlyMap<string, SymbolShape> = new Map(alphabet.map((shape) => [shape.text, shape]));
const outlines: ReadonlyMap<string, readonly PathStep[]> = new Map(
  alphabet.map((shape) => [shape.text, shapeOutline(shape)]),
);

/** The symbol of a yarn's `symbol`. Throws where the text is none of the 64; the design's schema lets none through. */
export function symbolOf(text: string): SymbolShape {
  const shape = byText.get(text);
  if (!shape) throw new Error(`'${text}' is no symbol of the alphabet`);
  return shape;
}

/**
 * The symbol as closed contours in the unit square of its cell, x to the right and y down, to be filled with the
 * non-zero rule. Throws as `symbolOf` does.
 */
export function outline(text: string): readonly PathStep[] {
  const steps = outlines.get(text);
  if (!steps) throw new Error(`'${text}' is no symbol of the alphabet`);
  return steps;
}

/** The texts that no yarn has yet, in the order in which new yarns take them. */
export function unusedSymbols(used: readonly string[]): string[] {
  return alphabet.map(({ text }) => text).filter((text) => !used.includes(text));
}
