/** Everything that a picture of the hanging depends on besides the cells and the view. */
import { COTTON } from '../../shared/chart/hanging/cotton.ts';
import { type HangingGeometry, hangingGeometry } from '../../shared/chart/hanging/geometry.ts';
import { codeOf } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { fringeMm } from '../../shared/gauge/fringe.ts';
import { gaugeOf } from '../../shared/gauge/gauge.ts';
import { darker } from '../../shared/pattern/page/tones.ts';
import { type Sight, seenAs } from '../../shared/yarn/sight.ts';
import type { CellView, Views } from '../store/views.ts';
import { pixelWords, type Ways } from './chart-bitmap.ts';
import { type CellLook, CellLooks } from './knot-look.ts';

export interface Look {
  readonly geometry: HangingGeometry;
  /** By code, as #rrggbb. */
  readonly colors: Ways<Readonly<Record<number, string>>>;
  /** By code, as pixels. */
  readonly words: Ways<Uint32Array>;
  readonly cells: CellLooks;
  readonly view: CellView;
}

/**
 * How much darker rows that go left are where knots are too small to be drawn: they lean the other way, and take the
 * light from above less. With it, even a pixel a cell reads as rows.
 */
const leftRowsDarker = 0.07;

export function lookOf(design: Design, views: Views): Look {
  const looks: Record<number, CellLook> = {};
  const right: Record<number, string> = {};
  const left: Record<number, string> = {};
  const view = cellViewOf(views);
  for (const { id, color: own, symbol } of design.yarns) {
    const color = seenAs(views.sight, own);
    looks[codeOf(id)] = { color, symbol };
    right[codeOf(id)] = color;
    left[codeOf(id)] = view === 'knots' ? darker(color, leftRowsDarker) : color;
  }
  return {
    geometry: geometryOf(design),
    colors: { right, left },
    words: { right: pixelWords(right), left: pixelWords(left) },
    cells: new CellLooks(looks, view),
    view,
  };
}

export function geometryOf(design: Design): HangingGeometry {
  return hangingGeometry(design, gaugeOf(design), fringeMm(design.columns, design.fringe));
}

/** The finished hanging is made of knots, and so is what is seen across the room. */
export function cellViewOf({ cells, finished, distance }: Views): CellView {
  return finished || distance ? 'knots' : cells;
}

/** True where cells look alike in both. */
export function cellsLookAlike(a: Design, b: Design): boolean {
  return (
    a.yarns === b.yarns &&
    a.columns === b.columns &&
    a.rows === b.rows &&
    a.cord === b.cord &&
    a.swatches === b.swatches &&
    a.ground === b.ground &&
    a.startCorner === b.startCorner
  );
}

/** True where what hangs around the chart looks alike in both, whose cells look alike. */
export function hangsAlike(a: Design, b: Design): boolean {
  return a.dowel === b.dowel && a.fringe === b.fringe;
}

/** The dowel from its shaded side up, and the plates on it that numbers stand on. */
const wood = { shade: '#8f5f33', body: '#c08a52', light: '#dcb184', plate: '#d0a06c' };

/** The colours that the surface draws with, besides those of yarns. */
export interface Inks {
  readonly ink: string;
  readonly paper: string;
  readonly rope: string;
  readonly ropeEdge: string;
  readonly wood: typeof wood;
}

/** Those of the theme; cord and wood as they are seen in a sight, since they hang there as well. */
export function inksOf(element: Element, sight: Sight): Inks {
  const style = getComputedStyle(element);
  const dark = document.documentElement.dataset.theme === 'dark';
  const seen = (color: string) => seenAs(sight, color);
  return {
    ink: style.getPropertyValue('--ink').trim(),
    paper: style.getPropertyValue('--linen').trim(),
    rope: seen(dark ? '#cdbf9f' : COTTON),
    ropeEdge: seen(dark ? '#8f8266' : '#bfae8a'),
    wood: {
      shade: seen(wood.shade),
      body: seen(wood.body),
      light: seen(wood.light),
      plate: seen(wood.plate),
    },
  };
}
