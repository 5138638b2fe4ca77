/**
 * The symbol alphabet, seen with other eyes than those that chose it: the committed font, drawn by a canvas in cells
 * of 2.5 mm, the smallest that a pattern prints.
 */
import { fileURLToPath } from 'node:url';
import { createCanvas, GlobalFonts } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { differencePx, type Print, print } from '../../build/symbols/difference.ts';
import { twins } from '../../build/symbols/moves.ts';
import { cellPx, type Drawing, oneBit } from '../../build/symbols/raster.ts';
import { defaults } from '../../shared/design/defaults.ts';
import { limits } from '../../shared/design/limits.ts';
import { yarnSchema } from '../../shared/design/schema.ts';
import { liftInk } from '../../shared/pattern/chart-pages/lift-marks.ts';
import { liftShapes } from '../../shared/yarn/lift-shapes.ts';
import { alphabet, outline, symbolOf, unusedSymbols } from '../../shared/yarn/symbols.ts';

const font = fileURLToPath(new URL('../../shared/yarn/larkrow-symbols.otf', import.meta.url));
GlobalFonts.registerFromPath(font, 'Larkrow Symbols');

/** One cell of 2.5 mm at `dpi`, moved by a part of a pixel, as shares of ink. */
function printed(text: string, dpi: number, shiftX: number, shiftY: number, bits: 1 | 8, mark = ''): Print {
  const side = cellPx(dpi);
  const size = Math.ceil(side) + 1;
  const pen = createCanvas(size, size).getContext('2d');
  pen.font = `${side}px "Larkrow Symbols"`;
  pen.fillText(text, shiftX, side + shiftY);
  if (mark) {
    pen.fillText(mark, shiftX, side + shiftY);
    // Its edge is paper again.
    pen.globalCompositeOperation = 'destination-out';
    pen.lineWidth = liftInk('left', '#000000', side).edge!.widthMm;
    pen.strokeText(mark, shiftX, side + shiftY);
  }
  const { data } = pen.getImageData(0, 0, size, size);
  const share = (alpha: number) => (bits === 8 ? alpha / 255 : Number(alpha >= 128));
  return print({ size, ink: Array.from({ length: size * size }, (_, i) => share(data[i * 4 + 3]!)) });
}

/** A printer places a cell anywhere between two pixels; one symbol may fall otherwise than its neighbour. */
const phases = [
  [0, 0],
  [0.5, 0],
  [0, 0.5],
  [0.5, 0.5],
] as const;

interface Nearest {
  pair: string;
  px: number;
  share: number;
}

/** The nearest two of some symbols, by pixels of ink, and by those as a share of the ink of both. */
function nearest(
  texts: readonly string[],
  dpi: number,
  bits: 1 | 8,
  mark = '',
): { byPx: Nearest; byShare: Nearest } {
  const shift = Math.round(dpi / 150);
  const shifts = { freePx: shift, maxPx: shift, pricePerPx: 0 };
  const prints = texts.map((text) => phases.map(([x, y]) => printed(text, dpi, x, y, bits, mark)));
  const none = { pair: '', px: Number.POSITIVE_INFINITY, share: Number.POSITIVE_INFINITY };
  let [byPx, byShare] = [none, none];
  for (let i = 0; i < texts.length; i++) {
    for (let j = 0; j < i; j++) {
      for (const other of prints[j]!) {
        const own = prints[i]![0]!;
        const px = differencePx(own, other, shifts);
        const found = { pair: `${texts[j]} ${texts[i]}`, px, share: px / (own.inkPx + other.inkPx) };
        if (found.px < byPx.px) byPx = found;
        if (found.share < byShare.share) byShare = found;
      }
    }
  }
  return { byPx, byShare };
}

const texts = alphabet.map(({ text }) => text);

describe('the alphabet', () => {
  it('has a symbol for every yarn that a design may have, each with a text of its own', () => {
    expect(alphabet).toHaveLength(limits.yarns);
    expect(new Set(texts).size).toBe(limits.yarns);
    for (const text of texts) expect(yarnSchema.shape.symbol.safeParse(text).success).toBe(true);
  });

  it('begins a, b, c, as the first yarns of a new design do', () => {
    expect(texts.slice(0, defaults.yarns.length)).toEqual(defaults.yarns.map(({ symbol }) => symbol));
  });

  it('begins with a single point, for the ground', () => {
    expect(symbolOf('a')).toMatchObject({ strokes: [], dots: [[2, 2]], fills: [] });
  });

  it('offers the symbols that no yarn has, in its order', () => {
    expect(unusedSymbols(['b', 'a', 'd']).slice(0, 3)).toEqual(['c', 'e', 'f']);
    expect(unusedSymbols(texts)).toEqual([]);
  });

  it('knows no other text', () => {
    expect(() => symbolOf('?')).toThrow("'?' is no symbol");
    expect(() => outline('aa')).toThrow("'aa' is no symbol");
  });
});

describe('an outline', () => {
  it('keeps a margin of 0.15 mm in a cell of 2.5 mm', () => {
    for (const text of texts) {
      const numbers = outline(text).flatMap((step) => step.slice(1) as number[]);
      expect(Math.min(...numbers) * 2.5, text).toBeGreaterThan(0.15);
      expect(Math.max(...numbers) * 2.5, text).toBeLessThan(2.5 - 0.15);
    }
  });

  it('has no overlaps: whichever rule it is filled by, it looks the same', () => {
    for (const text of texts) expect(filled(text, 60, 'evenodd'), text).toEqual(filled(text, 60, 'nonzero'));
  });

  it('covers what its strokes and points cover', () => {
    for (const { text, ...drawing } of alphabet) {
      const alpha = filled(text, 40, 'nonzero');
      const expected = oneBit(drawing, 40).ink;
      const wrong = expected.filter((ink, i) => Math.abs(alpha[i]! / 255 - ink) > 0.75).length;
      expect(wrong, text).toBe(0);
    }
  }, 30_000);
});

// The figures are those that were measured, rounded down: a new choice of symbols must not be worse.
describe('any two symbols, printed in cells of 2.5 mm and shifted by up to 0.17 mm,', () => {
  it.each([
    { print: 'one-bit, 150 dpi', dpi: 150, bits: 1, leastPx: 8.6, leastShare: 0.27 },
    { print: 'one-bit, 300 dpi', dpi: 300, bits: 1, leastPx: 44, leastShare: 0.31 },
    { print: 'grey, 150 dpi', dpi: 150, bits: 8, leastPx: 9.4, leastShare: 0.28 },
  ] as const)(
    'differ clearly in $print',
    ({ dpi, bits, leastPx, leastShare }) => {
      const { byPx, byShare } = nearest(texts, dpi, bits);
      expect(byPx.px, byPx.pair).toBeGreaterThanOrEqual(leastPx);
      expect(byShare.share, byShare.pair).toBeGreaterThanOrEqual(leastShare);
    },
    30_000,
  );

  it.each([
    { corner: 'left', leastPx: 44, leastShare: 0.26 },
    { corner: 'right', leastPx: 44, leastShare: 0.27 },
  ] as const)(
    'differ clearly under a lift mark in the $corner corner, in one-bit print at 300 dpi',
    ({ corner, leastPx, leastShare }) => {
      const { byPx, byShare } = nearest(texts, 300, 1, liftShapes[corner].text);
      expect(byPx.px, byPx.pair).toBeGreaterThanOrEqual(leastPx);
      expect(byShare.share, byShare.pair).toBeGreaterThanOrEqual(leastShare);
    },
    30_000,
  );

  it.each([
    { count: 6, leastShare: 0.54 },
    { count: 12, leastShare: 0.35 },
    { count: 24, leastShare: 0.28 },
  ])('differ more among the first $count', ({ count, leastShare }) => {
    const { byShare } = nearest(texts.slice(0, count), 150, 1);
    expect(byShare.share, byShare.pair).toBeGreaterThanOrEqual(leastShare);
  });

  it('would not pass if one were another with a shorter stroke: the measure sees it', () => {
    const shifts = { freePx: 1, maxPx: 1, pricePerPx: 0 };
    const whole = seen({
      strokes: [
        [0, 1, 4, 1],
        [0, 3, 4, 3],
      ],
      dots: [],
      fills: [],
    });
    const shorter = seen({
      strokes: [
        [0, 1, 4, 1],
        [0, 3, 3, 3],
      ],
      dots: [],
      fills: [],
    });
    const alike = differencePx(whole, shorter, shifts);
    expect(alike).toBeLessThan(8.6);
    expect(alike / (whole.inkPx + shorter.inkPx)).toBeLessThan(0.1);
  });
});

describe('the first 24 symbols, on a chart that is held upside down or seen in a mirror,', () => {
  it('are not mistaken for one another', () => {
    const shifts = { freePx: 1, maxPx: 1, pricePerPx: 0 };
    const first = alphabet.slice(0, 24).map((shape) => ({ text: shape.text, ways: twins(shape).map(seen) }));
    for (const [i, one] of first.entries()) {
      for (const other of first.slice(0, i)) {
        const standing = other.ways[0]!;
        for (const turned of one.ways) {
          const share = differencePx(turned, standing, shifts) / (turned.inkPx + standing.inkPx);
          expect(share, `${other.text} ${one.text}`).toBeGreaterThan(0.2);
        }
      }
    }
  });
});

function seen(drawing: Drawing): Print {
  return print(oneBit(drawing, cellPx(150)));
}

/** How much of each pixel the outline covers, 0 to 255, in a cell of `side` pixels. */
function filled(text: string, side: number, rule: 'nonzero' | 'evenodd'): number[] {
  const pen = createCanvas(side, side).getContext('2d');
  for (const [kind, ...at] of outline(text)) {
    const [x1, y1, x2, y2, x3, y3] = at.map((share) => share * side) as [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    if (kind === 'M') pen.moveTo(x1, y1);
    if (kind === 'L') pen.lineTo(x1, y1);
    if (kind === 'C') pen.bezierCurveTo(x1, y1, x2, y2, x3, y3);
    if (kind === 'Z') pen.closePath();
  }
  pen.fill(rule);
  const { data } = pen.getImageData(0, 0, side, side);
  return Array.from({ length: side * side }, (_, i) => data[i * 4 + 3]!);
}
