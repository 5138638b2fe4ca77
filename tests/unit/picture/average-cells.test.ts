import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { averageCells } from '../../../shared/picture/average-cells.ts';
import { cellAverager } from '../../../shared/picture/cell-averager.ts';
import { hexToLinear, linearToHex } from '../../../shared/yarn/colour.ts';
import { arbitraryPicture, mirrored, type Picture, pictureFromLetters } from './pictures.ts';

const colours = { k: '#000000', w: '#ffffff', r: '#ff0000', b: '#0000ff', '.': '#12345600', h: '#ffffff80' };
const size = fc.integer({ min: 1, max: 14 });

const whole = ({ widthPx, heightPx }: Picture) => ({ x: 0, y: 0, width: widthPx, height: heightPx });

function cellsOf(
  picture: Picture,
  columns: number,
  rows: number,
  background = '#000000',
  crop = whole(picture),
) {
  return averageCells(picture.rgba, picture.widthPx, picture.heightPx, crop, columns, rows, background)
    .linear;
}

function hexesOf(picture: Picture, columns: number, rows: number, background?: string): string[] {
  const linear = cellsOf(picture, columns, rows, background);
  return Array.from({ length: columns * rows }, (_, i) =>
    linearToHex({ r: linear[3 * i]!, g: linear[3 * i + 1]!, b: linear[3 * i + 2]! }),
  );
}

describe('the light under a cell', () => {
  it('is half of white where black and white alternate: #bcbcbc, not #808080 (derived, IEC 61966-2-1)', () => {
    const checker = pictureFromLetters(['kwkw', 'wkwk', 'kwkw', 'wkwk'], colours);
    expect([...cellsOf(checker, 1, 1)]).toEqual([0.5, 0.5, 0.5]);
    expect(hexesOf(checker, 2, 2)).toEqual(Array(4).fill('#bcbcbc'));
  });

  it('takes each pixel by the share of it that the cell covers', () => {
    const three = pictureFromLetters(['wkk'], colours);
    // Each of two cells covers a pixel and a half.
    expect(cellsOf(three, 2, 1)[0]).toBeCloseTo(1 / 1.5, 12);
    expect(cellsOf(three, 2, 1)[3]).toBe(0);
  });

  it('repeats pixels, and mixes them where they meet, where cells are smaller than pixels', () => {
    const two = pictureFromLetters(['wk'], colours);
    expect(hexesOf(two, 4, 2)).toEqual(
      [...Array(2).fill(['#ffffff', '#ffffff', '#000000', '#000000'])].flat(),
    );
    expect(hexesOf(two, 3, 1)).toEqual(['#ffffff', '#bcbcbc', '#000000']);
  });

  it('is the background where the picture is transparent, whatever colour hides there', () => {
    const hole = pictureFromLetters(['.r', 'b.'], colours);
    expect(hexesOf(hole, 2, 2, '#e6ddc9')).toEqual(['#e6ddc9', '#ff0000', '#0000ff', '#e6ddc9']);
  });

  it('of a veil is what a viewer shows (W3C Compositing and Blending Level 1, 5.1: co = cs αs + cb αb (1 - αs))', () => {
    const veil = pictureFromLetters(['h'], colours);
    expect(hexesOf(veil, 1, 1, '#000000')).toEqual(['#808080']);
    expect(hexesOf(veil, 1, 1, '#ffffff')).toEqual(['#ffffff']);
    const red = pictureFromLetters(['v'], { v: '#ff000040' });
    // 0.251 x 255 + 0.749 x 100, 0.749 x 200, 0.749 x 50.
    expect(hexesOf(red, 1, 1, '#64c832')).toEqual(['#8b9625']);
  });

  it('comes from the crop only', () => {
    const picture = pictureFromLetters(['kkkk', 'kwbk', 'krwk'], colours);
    const cells = averageCells(
      picture.rgba,
      4,
      3,
      { x: 1, y: 1, width: 2, height: 2 },
      2,
      2,
      '#000000',
    ).linear;
    expect([...cells]).toEqual([1, 1, 1, 0, 0, 1, 1, 0, 0, 1, 1, 1]);
  });

  it('is the same with and without an alpha that hides nothing', () => {
    fc.assert(
      fc.property(arbitraryPicture(), size, size, (picture, columns, rows) => {
        const rgba = picture.rgba.map((byte, i) => (i % 4 === 3 ? 255 : byte));
        const rgb = rgba.filter((_, i) => i % 4 !== 3);
        const { widthPx, heightPx } = picture;
        const averager = cellAverager({
          columns,
          rows,
          widthPx,
          heightPx,
          channels: 3,
          background: '#ff00ff',
        });
        for (let y = 0; y < heightPx; y++) averager.addRow(rgb, y * widthPx * 3);
        expect(averager.finish().linear).toEqual(cellsOf({ ...picture, rgba }, columns, rows));
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it('is what adding up the area of every overlap gives', () => {
    fc.assert(
      fc.property(arbitraryPicture(6), size, size, (picture, columns, rows) => {
        const cells = cellsOf(picture, columns, rows, '#345678');
        const expected = byArea(picture, columns, rows, '#345678');
        for (let i = 0; i < cells.length; i++) expect(cells[i]).toBeCloseTo(expected[i]!, 6);
      }),
      { seed: 2, numRuns: 300 },
    );
  });

  it('is over all cells together the light of the picture', () => {
    fc.assert(
      fc.property(arbitraryPicture(), size, size, (picture, columns, rows) => {
        const all = cellsOf(picture, 1, 1);
        const cells = cellsOf(picture, columns, rows);
        for (let k = 0; k < 3; k++) {
          const sum = cells.reduce((total, light, i) => (i % 3 === k ? total + light : total), 0);
          expect(sum / (columns * rows)).toBeCloseTo(all[k]!, 12);
        }
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  it('does not change when pixels inside a cell change places', () => {
    const block = fc.uint8Array({ minLength: 5 * 4 * 4, maxLength: 5 * 4 * 4 });
    fc.assert(
      fc.property(block, fc.infiniteStream(fc.nat()), (rgba, chance) => {
        const pixels = Array.from({ length: 20 }, (_, i) => rgba.subarray(4 * i, 4 * i + 4));
        const shuffled = pixels
          .map((pixel) => ({ pixel, key: chance.next().value as number }))
          .sort((a, b) => a.key - b.key);
        const other = Uint8Array.from(shuffled.flatMap(({ pixel }) => [...pixel]));
        const cell = (bytes: Uint8Array) =>
          cellsOf({ widthPx: 5, heightPx: 4, rgba: bytes }, 1, 1, '#abcdef');
        expect(cell(other)).toEqual(cell(rgba));
      }),
      { seed: 4, numRuns: 200 },
    );
  });

  it('is mirrored, to the last bit, where the picture is mirrored', () => {
    fc.assert(
      fc.property(arbitraryPicture(), size, size, (picture, columns, rows) => {
        const cells = cellsOf(picture, columns, rows);
        const mirror = cellsOf(mirrored(picture), columns, rows);
        for (let i = 0; i < columns * rows; i++) {
          const j = i - (i % columns) + columns - 1 - (i % columns);
          expect(mirror.subarray(3 * j, 3 * j + 3)).toEqual(cells.subarray(3 * i, 3 * i + 3));
        }
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('is exact for the largest picture that may be opened: one white cell stays white', () => {
    const widthPx = 40_000;
    const heightPx = 1000;
    const averager = cellAverager({
      columns: 1,
      rows: 1,
      widthPx,
      heightPx,
      channels: 3,
      background: '#000000',
    });
    const white = new Uint8Array(widthPx * 3).fill(255);
    for (let y = 0; y < heightPx; y++) averager.addRow(white, 0);
    expect([...averager.finish().linear]).toEqual([1, 1, 1]);
  });
});

describe('averaging', () => {
  it('refuses a crop outside, missing pixels, and missing or surplus rows', () => {
    const picture = pictureFromLetters(['kw', 'wk'], colours);
    expect(() => cellsOf(picture, 1, 1, '#000000', { x: 1, y: 0, width: 2, height: 2 })).toThrow('outside');
    expect(() => cellsOf({ ...picture, heightPx: 3 }, 1, 1)).toThrow('pixels');
    const averager = cellAverager({
      columns: 1,
      rows: 1,
      widthPx: 2,
      heightPx: 1,
      channels: 4,
      background: '#000000',
    });
    expect(() => averager.finish()).toThrow('0 of 1');
    expect(() => averager.addRow(picture.rgba, 12)).toThrow('breaks off');
    averager.addRow(picture.rgba, 0);
    expect(() => averager.addRow(picture.rgba, 0)).toThrow('only 1');
  });
});

/** The same by areas in fractions of a pixel, cell by cell and pixel by pixel. */
function byArea(
  { widthPx, heightPx, rgba }: Picture,
  columns: number,
  rows: number,
  background: string,
): number[] {
  const cells: number[] = [];
  const below = [...Buffer.from(background.slice(1), 'hex')];
  const overlap = (pixel: number, from: number, to: number) =>
    Math.max(0, Math.min(pixel + 1, to) - Math.max(pixel, from));
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const sum = { r: 0, g: 0, b: 0 };
      const w = widthPx / columns;
      const h = heightPx / rows;
      for (let y = 0; y < heightPx; y++) {
        for (let x = 0; x < widthPx; x++) {
          const area = overlap(x, column * w, (column + 1) * w) * overlap(y, row * h, (row + 1) * h);
          const at = (y * widthPx + x) * 4;
          const alpha = rgba[at + 3]! / 255;
          const seen = below.map((byte, k) => Math.round(rgba[at + k]! * alpha + byte * (1 - alpha)));
          const light = hexToLinear(`#${Buffer.from(seen).toString('hex')}`);
          for (const k of ['r', 'g', 'b'] as const) sum[k] += area * light[k];
        }
      }
      cells.push(sum.r / (w * h), sum.g / (w * h), sum.b / (w * h));
    }
  }
  return cells;
}
