/** Everything that a picture of the hanging depends on besides the cells and the view. */
import { COTTON } from '../../shared/chart/hanging/cotton.ts';
import { type HangingGeometry, hangingGeometry } from '../../shared/chart/hanging/geometry.ts';
import { codeOf } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { fringeMm } from '../../shared/gauge/fringe.ts';
import { gaugeOf } from '../../shared/gauge/gauge.ts';
import { pixelWords } from './chart-bitmap.ts';
import { type CellLook, CellLooks } from './knot-look.ts';

export interface Look {
  readonly geometry: HangingGeometry;
  /** By code, as #rrggbb. */
  readonly colors: Readonly<Record<number, string>>;
  /** By code, as pixels. */
  readonly words: Uint32Array;
  readonly cells: CellLooks;
  readonly symbols: boolean;
}

export function lookOf(design: Design, symbols: boolean): Look {
  const looks: Record<number, CellLook> = {};
  const colors: Record<number, string> = {};
  for (const { id, color, symbol } of design.yarns) {
    looks[codeOf(id)] = { color, symbol };
    colors[codeOf(id)] = color;
  }
  return {
    geometry: hangingGeometry(design, gaugeOf(design), fringeMm(design.columns, design.fringe)),
    colors,
    words: pixelWords(colors),
    cells: new CellLooks(looks, symbols),
    symbols,
  };
}

/** True where the two designs look alike apart from their cells. */
export function looksAlike(a: Design, b: Design): boolean {
  return (
    a.yarns === b.yarns &&
    a.columns === b.columns &&
    a.rows === b.rows &&
    a.cord === b.cord &&
    a.dowel === b.dowel &&
    a.fringe === b.fringe &&
    a.swatches === b.swatches &&
    a.ground === b.ground &&
    a.startCorner === b.startCorner
  );
}

/** The theme's colours that the surface draws with. */
export interface Inks {
  readonly ink: string;
  readonly paper: string;
  readonly rope: string;
  readonly ropeEdge: string;
}

export function inksOf(element: Element): Inks {
  const style = getComputedStyle(element);
  const dark = document.documentElement.dataset.theme === 'dark';
  return {
    ink: style.getPropertyValue('--ink').trim(),
    paper: style.getPropertyValue('--linen').trim(),
    rope: dark ? '#cdbf9f' : COTTON,
    ropeEdge: dark ? '#8f8266' : '#bfae8a',
  };
}
