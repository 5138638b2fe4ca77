/**
 * How like a letter a drawing looks. Each symbol has a letter of text of its own, so a symbol that looked like
 * another letter would be read aloud wrongly. Letters are stretched to the drawing's own box before comparing.
 */
import { createCanvas, GlobalFonts } from '@napi-rs/canvas';
import { differenceShare, type Print, print } from './difference.ts';
import { type Bitmap, type Drawing, oneBit } from './raster.ts';

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789ΓΔΘΛΞΠΣΦΨΩБГДЖИЛФЦЧШЩЭЮЯ';
const faces = [
  { family: 'Letters Sans', file: '@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf' },
];
/** Side of the square in which a drawing and a letter are compared. */
const SIDE = 20;
const shifts = { freePx: 1, maxPx: 1, pricePerPx: 0 };

/** Gives a function from a drawing to the share by which it differs from the letter that it is most like. */
export function letterJudge(nodeModules: string): (drawing: Drawing) => { letter: string; share: number } {
  const letters = faces.flatMap(({ family, file }) => {
    GlobalFonts.registerFromPath(`${nodeModules}/${file}`, family);
    return [...LETTERS].map((letter) => ({ letter, mask: letterMask(letter, family) }));
  });
  const boxed = letters.map(({ letter, mask }) => ({ letter, ...crop(mask) }));
  return (drawing) => {
    const { aspect, print: own } = crop(oneBit(drawing, 30));
    let nearest = { letter: '', share: 1 };
    for (const each of boxed) {
      // A square drawing is not mistaken for a letter three times as high as it is wide.
      if (Math.max(each.aspect / aspect, aspect / each.aspect) > 2.2) continue;
      const share = differenceShare(own, each.print, shifts);
      if (share < nearest.share) nearest = { letter: each.letter, share };
    }
    return nearest;
  };
}

function letterMask(letter: string, family: string): Bitmap {
  const size = 160;
  const context = createCanvas(size, size).getContext('2d');
  context.font = `100px "${family}"`;
  context.textAlign = 'center';
  context.fillText(letter, size / 2, 110);
  const { data } = context.getImageData(0, 0, size, size);
  return { size, ink: Uint8Array.from({ length: size * size }, (_, i) => (data[i * 4 + 3]! >= 128 ? 1 : 0)) };
}

/** The inked part of a bitmap stretched to the common square, and its width over its height before. */
function crop({ size, ink }: Bitmap): { aspect: number; print: Print } {
  let [left, right, top, bottom] = [size, 0, size, 0];
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      if (ink[y * size + x] === 0) continue;
      left = Math.min(left, x);
      right = Math.max(right, x + 1);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y + 1);
    }
  }
  const square = new Uint8Array(SIDE * SIDE);
  for (let y = 0; y < SIDE; y++) {
    for (let x = 0; x < SIDE; x++) {
      const fromX = Math.floor(left + ((x + 0.5) / SIDE) * (right - left));
      const fromY = Math.floor(top + ((y + 0.5) / SIDE) * (bottom - top));
      square[y * SIDE + x] = ink[fromY * size + fromX]!;
    }
  }
  return { aspect: (right - left) / (bottom - top), print: print({ size: SIDE, ink: square }) };
}
