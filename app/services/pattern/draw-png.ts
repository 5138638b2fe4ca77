/** The whole chart with its numbers and key as one PNG picture. */
import { readFileSync } from 'node:fs';
import { createCanvas, GlobalFonts } from '@napi-rs/canvas';
import { type Chart, flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import { type CanvasFaces, drawOnCanvas } from '../../../shared/pattern/draw-on-canvas.ts';
import { layOutPicture, PICTURE_PX_PER_MM } from '../../../shared/pattern/lay-out-picture.ts';
import type { Face } from '../../../shared/pattern/page.ts';
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

/** PNG bytes. The picture's size is held to `pictureLimits`: larger charts get fewer pixels a cell, at least 4. */
export async function makeChartPng(design: Design, chart: Chart = flatten(design)): Promise<Uint8Array> {
  registerFaces();
  const page = layOutPicture(design, chart, gaugeOf(design));
  const canvas = createCanvas(
    Math.ceil(page.widthMm * PICTURE_PX_PER_MM),
    Math.ceil(page.heightMm * PICTURE_PX_PER_MM),
  );
  drawOnCanvas(canvas.getContext('2d'), page, PICTURE_PX_PER_MM, faces);
  return Uint8Array.from(await canvas.encode('png'));
}
