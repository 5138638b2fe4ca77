/** The whole chart with its numbers and key as one PNG picture. */
import { readFileSync } from 'node:fs';
import { createCanvas, GlobalFonts, type Image, loadImage } from '@napi-rs/canvas';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import { type Copy, copyOf, designForCopy } from '../../../shared/pattern/copy.ts';
import { layOutPicture, PICTURE_PX_PER_MM } from '../../../shared/pattern/lay-out-picture.ts';
import { type CanvasFaces, drawOnCanvas, imagesOn } from '../../../shared/pattern/page/draw-on-canvas.ts';
import type { Face, Page } from '../../../shared/pattern/page/page.ts';
import { openPicture } from '../pictures/decoder.ts';
import { facePath } from './face-path.ts';

const faces: CanvasFaces = {
  sans: { family: 'Larkrow sans', weight: 400 },
  'sans-bold': { family: 'Larkrow sans bold', weight: 400 },
  serif: { family: 'Larkrow serif', weight: 400 },
  'serif-bold': { family: 'Larkrow serif bold', weight: 400 },
  symbols: { family: 'Larkrow symbols', weight: 400 },
};

let registered = false;

/**
 * Each face under a family of its own: the weight is then never guessed. Its bytes are read here, since machine code
 * can't look into the archive that a package of the desktop is.
 */
function registerFaces(): void {
  if (registered) return;
  for (const [face, { family }] of Object.entries(faces)) {
    const path = facePath(face as Face);
    if (!GlobalFonts.register(readFileSync(path), family)) throw new Error(`the face ${path} can't be read`);
  }
  registered = true;
}

/** PNG bytes, as the copy is tied and printed: its hand, inks and language. The picture's size is held to `pictureLimits`: larger charts get fewer pixels a cell, at least 4. */
export function makeChartPng(design: Design, copy: Copy = copyOf(design)): Promise<Uint8Array> {
  const chart = flatten(designForCopy(design, copy));
  return drawPng(layOutPicture(design, chart, gaugeOf(design), copy), PICTURE_PX_PER_MM);
}

/** A page as PNG bytes, `pxPerMm` to the millimetre. */
export async function drawPng(page: Page, pxPerMm: number): Promise<Uint8Array> {
  registerFaces();
  const canvas = createCanvas(Math.ceil(page.widthMm * pxPerMm), Math.ceil(page.heightMm * pxPerMm));
  drawOnCanvas(canvas.getContext('2d'), page, pxPerMm, faces, await decoded(page));
  return Uint8Array.from(await canvas.encode('png'));
}

/** The page's pictures; one that can't be read is left out. */
async function decoded(page: Page): Promise<ReadonlyMap<Uint8Array, Image>> {
  const pictures = new Map<Uint8Array, Image>();
  for (const { bytes } of imagesOn(page)) {
    // What the canvas would decode beside pictures, it is not given.
    const picture = (await openPicture(bytes)).ok && (await loadImage(bytes).catch(() => null));
    if (picture) pictures.set(bytes, picture);
  }
  return pictures;
}
