/**
 * A design of another size. For each cord and each row of the new chart it is told which old one it shows; all layers
 * are reshaped alike, and what is measured along the chart follows: a fringe drawn by hand, the picture under it,
 * pins on its knots.
 *
 * A cord or row where nothing lay before is empty on the upper layers. On the lowest one it goes on with what lies
 * beside it: ground beside knots, bare beside bare cells, empty beside empty ones.
 */
import { fringeByHand, fringeMm } from '../gauge/fringe.ts';
import { gaugeOf } from '../gauge/gauge.ts';
import { BARE, codeOf, EMPTY, isYarn } from './codes.ts';
import type { Design, Layer } from './design.ts';
import type { Edit, Resize } from './edits.ts';
import { samePins } from './same-pins.ts';
import type { Fringe, Pin, Reference } from './schema.ts';

/** In place of an old cord or row: nothing lay here. */
export const NEW = -1;

export interface Shape {
  /** For each cord of the new chart the old cord that it shows, from 0 and never decreasing, or NEW. */
  readonly columns: readonly number[];
  /** The same for the rows. */
  readonly rows: readonly number[];
  /** True where the picture is stretched or pressed together, and false where cords and rows come and go. */
  readonly scales: boolean;
}

/** One edit with all that follows. At least one old cord and one old row must stay. */
export function reshape(design: Design, shape: Shape): Edit {
  const resize: Resize = {
    kind: 'resize',
    columns: shape.columns.length,
    rows: shape.rows.length,
    sheets: Object.fromEntries(design.layers.map((layer) => [layer.id, sheetOf(design, layer, shape)])),
  };
  const fringe = fringeAfter(design, shape);
  const reference = design.reference && referenceAfter(design, design.reference, shape);
  const edits: Edit[] = [resize];
  if (fringe) edits.push({ kind: 'set', field: 'fringe', value: fringe });
  if (reference) edits.push({ kind: 'set', field: 'reference', value: reference });
  const pins = pinsAfter(design, shape);
  if (pins) edits.push({ kind: 'set', field: 'pins', value: pins });
  return edits.length === 1 ? resize : { kind: 'together', edits };
}

function sheetOf(design: Design, layer: Layer, shape: Shape): Uint8Array[] {
  const ground = layer === design.layers[0] ? codeOf(design.ground) : null;
  const across = besideEach(shape.columns);
  const keepsCords = shape.columns.length === design.columns && shape.columns.every((from, c) => from === c);
  return besideEach(shape.rows).map(({ before: above, after: below }, r) => {
    const from = shape.rows[r]!;
    // A row that stays as it is costs no memory.
    if (from !== NEW && keepsCords) return layer.rows[from]!;
    const row = new Uint8Array(shape.columns.length).fill(EMPTY);
    const old = layer.rows[above]!;
    const next = layer.rows[below]!;
    for (const [c, { before, after }] of across.entries()) {
      if (from !== NEW && shape.columns[c] !== NEW) row[c] = old[before]!;
      else if (ground !== null)
        row[c] = goingOn(ground, old[before]!, old[after]!, next[before]!, next[after]!);
    }
    return row;
  });
}

/** What a new cell of the lowest layer holds, by the old cells around it. */
function goingOn(ground: number, ...around: readonly number[]): number {
  if (around.some(isYarn)) return ground;
  return around.includes(BARE) ? BARE : EMPTY;
}

/** A fringe drawn by hand keeps the length of each cord that stays; null where the fringe need not change. */
function fringeAfter({ columns, fringe }: Design, shape: Shape): Fringe | null {
  // Stretched, its outline is spread over the cords there are, as it is.
  if (fringe.shape !== 'by-hand' || shape.scales) return null;
  if (shape.columns.length === columns && !shape.columns.includes(NEW)) return null;
  const oldMm = fringeMm(columns, fringe);
  const lengthsMm = besideEach(shape.columns).map(({ before, after, share }) => {
    const fromMm = oldMm[before]!;
    return fromMm + (oldMm[after]! - fromMm) * share;
  });
  return { ...fringe, ...fringeByHand(lengthsMm) };
}

/**
 * Pins stay on their knots, and go with them. Stretched, the picture has other knots: pins keep their places then, and
 * hold where they still fit. Null where nothing changes.
 */
function pinsAfter({ pins }: Design, { columns, rows, scales }: Shape): Pin[] | null {
  if (!pins || scales) return null;
  const placed = (places: readonly number[], at: number) => places.indexOf(at - 1) + 1;
  const after = pins.flatMap((pin): Pin[] => {
    const { row, cord, toRow, toCord, ...rest } = pin;
    const from = { row: placed(rows, row), cord: placed(columns, cord) };
    const to =
      toRow === undefined || toCord === undefined
        ? {}
        : { toRow: placed(rows, toRow), toCord: placed(columns, toCord) };
    return [from, to].some((place) => Object.values(place).includes(0)) ? [] : [{ ...rest, ...from, ...to }];
  });
  return samePins(pins, after) ? null : after;
}

/** The picture stays under the first cord and row that stay, or is stretched with them; null where it lies right. */
function referenceAfter(design: Design, old: Reference, { columns, rows, scales }: Shape): Reference | null {
  if (scales) {
    const across = columns.length / design.columns;
    const down = rows.length / design.rows;
    return {
      ...old,
      leftMm: placeMm(old.leftMm * across),
      widthMm: lengthMm(old.widthMm * across),
      topMm: placeMm(old.topMm * down),
      heightMm: lengthMm(old.heightMm * down),
    };
  }
  const { pitchMm, rowHeightMm } = gaugeOf(design);
  const cordsBy = shiftOf(columns);
  const rowsBy = shiftOf(rows);
  if (cordsBy === 0 && rowsBy === 0) return null;
  return {
    ...old,
    leftMm: placeMm(old.leftMm + cordsBy * pitchMm),
    topMm: placeMm(old.topMm + rowsBy * rowHeightMm),
  };
}

/** How many places further on the first that stays is. */
function shiftOf(places: readonly number[]): number {
  const at = places.findIndex((from) => from !== NEW);
  return at - places[at]!;
}

/** What the file takes, see the schema: a picture that lay far out stays within it. */
const farthestMm = 100_000;
const shortestMm = 0.001;

function placeMm(mm: number): number {
  // JSON has no -0, which a hair's breadth to the left may shrink to.
  return Math.min(farthestMm, Math.max(-farthestMm, mm)) + 0;
}

function lengthMm(mm: number): number {
  return Math.min(farthestMm, Math.max(shortestMm, mm));
}

/** The old places on both sides of a new one, and how far it lies on the way between; an old one lies at itself. */
interface Beside {
  readonly before: number;
  readonly after: number;
  readonly share: number;
}

/** For each of the places; beyond the first and the last old one, both sides are that one. */
function besideEach(places: readonly number[]): Beside[] {
  const old = places.flatMap((from, at) => (from === NEW ? [] : [at]));
  let next = 0;
  return places.map((from, at) => {
    if (from !== NEW) next++;
    if (from !== NEW) return { before: from, after: from, share: 0 };
    const left = old[next - 1] ?? old[0]!;
    const right = old[next] ?? old.at(-1)!;
    const share = left === right ? 0 : (at - left) / (right - left);
    return { before: places[left]!, after: places[right]!, share };
  });
}
