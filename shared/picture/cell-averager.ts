/**
 * The mean light of the part of a picture under each cell, from pixels that come row by row, so that nobody has to
 * hold them all. A pixel counts in a cell by the share of the cell that it covers, exactly: also where cells and
 * pixels don't line up, and where cells are smaller than pixels.
 *
 * All sums are whole numbers, so the order of adding can't matter: a mirrored picture gives the mirrored cells, and
 * the mean of all cells is the mean of the picture. Light is counted in 2^24 steps. A row is cut into units, `columns`
 * of them to a pixel and `widthPx` to a cell (downwards `rows` and `heightPx`), so all overlaps are whole as well. A
 * sum is at most 2^24 times the number of pixels, which is exact (below 2^53) up to 500 million of them.
 */
import { hexToLinear } from '../yarn/colour.ts';

export interface PictureCells {
  readonly columns: number;
  readonly rows: number;
  /** Red, green, blue of each cell, row by row, as linear light from 0 to 1. */
  readonly linear: Float64Array;
}

export interface AveragerSpec {
  readonly columns: number;
  readonly rows: number;
  /** Pixels across and down that the cells share out among them. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** Bytes of a pixel: 3 for red, green, blue in sRGB; 4 with alpha, not premultiplied. */
  readonly channels: 3 | 4;
  /** What shows through where the picture is transparent, as `#rrggbb`. */
  readonly background: string;
}

export interface CellAverager {
  /** Takes the next row of pixels, top to bottom: the `widthPx` ones from `offset` in `bytes`. */
  addRow(bytes: Uint8Array | Uint8ClampedArray, offset: number): void;
  /** After the last row, once. Throws where rows are missing. */
  finish(): PictureCells;
}

const STEPS = 2 ** 24;

/** Light of each byte of sRGB, in steps. */
const lightOfByte = Float64Array.from({ length: 256 }, (_, byte) => {
  const hex = byte.toString(16).padStart(2, '0');
  return Math.round(hexToLinear(`#${hex}${hex}${hex}`).r * STEPS);
});

export function cellAverager(spec: AveragerSpec): CellAverager {
  const { columns, rows, widthPx, heightPx } = spec;
  for (const size of [columns, rows, widthPx, heightPx]) {
    if (!Number.isInteger(size) || size < 1) throw new Error(`a picture can't be averaged by ${size}`);
  }
  const readLight = spec.channels === 4 ? lightOver(spec.background) : lightOf;
  const light = new Float64Array(widthPx * 3);
  const across = new Float64Array(columns * 3);
  const sums = new Float64Array(columns * rows * 3);
  let y = 0;

  return {
    addRow(bytes, offset) {
      if (y >= heightPx) throw new Error(`the picture has only ${heightPx} rows of pixels`);
      if (offset + widthPx * spec.channels > bytes.length) throw new Error('the row of pixels breaks off');
      readLight(bytes, offset, light);
      shareAcross(light, widthPx, columns, across);
      shareDown(across, y, heightPx, rows, sums);
      y++;
    },
    finish() {
      if (y !== heightPx) throw new Error(`only ${y} of ${heightPx} rows of pixels came`);
      const whole = widthPx * heightPx * STEPS;
      for (let i = 0; i < sums.length; i++) sums[i] = sums[i]! / whole;
      return { columns, rows, linear: sums };
    },
  };
}

type ReadLight = (bytes: Uint8Array | Uint8ClampedArray, offset: number, light: Float64Array) => void;

const lightOf: ReadLight = (bytes, offset, light) => {
  for (let i = 0; i < light.length; i++) light[i] = lightOfByte[bytes[offset + i]!]!;
};

/**
 * Light of pixels with alpha, laid over the background as viewers and browsers do, so that the chart looks like the
 * picture that its maker saw: in sRGB's bytes, by the simple compositing of W3C's Compositing and Blending Level 1.
 */
function lightOver(background: string): ReadLight {
  const below = [1, 3, 5].map((at) => Number.parseInt(background.slice(at, at + 2), 16));
  return (bytes, offset, light) => {
    for (let i = 0, at = offset; i < light.length; i += 3, at += 4) {
      const alpha = bytes[at + 3]! / 255;
      for (let k = 0; k < 3; k++) {
        const seen = Math.round(below[k]! + (bytes[at + k]! - below[k]!) * alpha);
        light[i + k] = lightOfByte[seen]!;
      }
    }
  };
}

/** Shares a row's light out among the cells across: `across` is what each gets, in units of `columns` a pixel. */
function shareAcross(light: Float64Array, widthPx: number, columns: number, across: Float64Array): void {
  for (let c = 0; c < columns; c++) {
    const start = c * widthPx;
    const end = start + widthPx;
    const last = Math.ceil(end / columns) - 1;
    let x = Math.floor(start / columns);
    let units = Math.min(end, (x + 1) * columns) - start;
    let r = light[3 * x]! * units;
    let g = light[3 * x + 1]! * units;
    let b = light[3 * x + 2]! * units;
    for (x++; x <= last; x++) {
      units = x < last ? columns : end - last * columns;
      r += light[3 * x]! * units;
      g += light[3 * x + 1]! * units;
      b += light[3 * x + 2]! * units;
    }
    across[3 * c] = r;
    across[3 * c + 1] = g;
    across[3 * c + 2] = b;
  }
}

/** Adds row `y` of the picture to every row of cells that it lies under, in units of `rows` a pixel. */
function shareDown(
  across: Float64Array,
  y: number,
  heightPx: number,
  rows: number,
  sums: Float64Array,
): void {
  const start = y * rows;
  const end = start + rows;
  for (let row = Math.floor(start / heightPx); row * heightPx < end; row++) {
    const units = Math.min(end, (row + 1) * heightPx) - Math.max(start, row * heightPx);
    const first = row * across.length;
    for (let i = 0; i < across.length; i++) sums[first + i] = sums[first + i]! + across[i]! * units;
  }
}
