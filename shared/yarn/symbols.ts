/**
 * The studio's own alphabet of yarn symbols: 64 drawings on a small lattice, chosen by computation
 * (`build/symbols/choose.ts`) so that any two differ clearly in one-bit print at 2.5 mm. Each stands for one letter,
 * digit or sign of text, so a printed chart can be searched and read aloud. They come in the order in which yarns
 * take them: the first few differ most, and the very first, for the ground, is a single point.
 */
import type { PathStep } from '../pattern/page/page.ts';
import shapes from './symbols.generated.json' with { type: 'json' };

/** A symbol on its lattice: points count from 0 to 4, x to the right and y down; each list is x, y, x, y, … */
export interface SymbolShape {
  /** The one character that stands for this symbol in files and in printed text. */
  readonly text: string;
  /** Lines through two or more points. */
  readonly strokes: readonly (readonly number[])[];
  /** Round dots: one point each. */
  readonly dots: readonly (readonly number[])[];
  /** Filled polygons, not closed by repeating their first point. */
  readonly fills: readonly (readonly number[])[];
  /** All of it as one outline without overlaps, as in SVG paths, in thousandths of the cell's side. */
  readonly outline: string;
}

export const alphabet: readonly SymbolShape[] = shapes;

const byText: ReadonlyMap<string, SymbolShape> = new Map(alphabet.map((shape) => [shape.text, shape]));
const outlines: ReadonlyMap<string, readonly PathStep[]> = new Map(
  alphabet.map((shape) => [shape.text, parse(shape.outline)]),
);

/** The symbol of a yarn's `symbol`. Throws where the text is none of the 64; the design's schema lets none through. */
export function symbolOf(text: string): SymbolShape {
  const shape = byText.get(text);
  if (!shape) throw new Error(`'${text}' is no symbol of the alphabet`);
  return shape;
}

/**
 * The symbol as closed contours in the unit square of its cell, x to the right and y down, with a margin all around.
 * They do not overlap; fill them with the non-zero rule. Throws as `symbolOf` does.
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

/** The outline's text as steps in the unit square. It holds M, L, C and Z only, all absolute. */
function parse(text: string): PathStep[] {
  return [...text.matchAll(/([MLCZ])([^MLCZ]*)/g)].map(([, kind, numbers]) => [
    kind,
    ...(numbers!.match(/\d+/g) ?? []).map((each) => Number(each) / 1000),
  ]) as unknown as PathStep[];
}
