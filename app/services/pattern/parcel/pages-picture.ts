/** What a buyer gets, in one picture for the shop: some of the pattern's pages laid out beside one another. */
import { createCanvas, loadImage } from '@napi-rs/canvas';
import type { PatternPart } from '../../../../shared/design/pattern-schema.ts';
import type { Page, PatternDocument } from '../../../../shared/pattern/page/page.ts';
import { inks } from '../../../../shared/pattern/page/style.ts';
import { drawPng } from '../draw-png.ts';

const SIDE_PX = 2000;
const COLUMNS = 3;
const ROWS = 2;
const GAP_PX = 56;
const SHADOW_PX = 10;

export async function drawPagesPicture(document: PatternDocument): Promise<Uint8Array> {
  const canvas = createCanvas(SIDE_PX, SIDE_PX);
  const pen = canvas.getContext('2d');
  pen.fillStyle = inks.linen;
  pen.fillRect(0, 0, SIDE_PX, SIDE_PX);
  const chosen = telling(document.pages);
  const columns = Math.min(COLUMNS, chosen.length);
  const rows = Math.ceil(chosen.length / columns);
  const roomWidth = (SIDE_PX - GAP_PX * (columns + 1)) / columns;
  const roomHeight = (SIDE_PX - GAP_PX * (rows + 1)) / rows;
  for (const [i, page] of chosen.entries()) {
    const scale = Math.min(roomWidth / page.widthMm, roomHeight / page.heightMm);
    const width = page.widthMm * scale;
    const height = page.heightMm * scale;
    const x = GAP_PX + (i % columns) * (roomWidth + GAP_PX) + (roomWidth - width) / 2;
    const y = GAP_PX + Math.floor(i / columns) * (roomHeight + GAP_PX) + (roomHeight - height) / 2;
    pen.fillStyle = inks.hair;
    pen.fillRect(x + SHADOW_PX, y + SHADOW_PX, width, height);
    pen.drawImage(await loadImage(await drawPng(page, scale)), x, y, width, height);
  }
  return Uint8Array.from(await canvas.encode('png'));
}

const tellingMost: readonly (PatternPart | undefined)[] = [
  'cover',
  'chart',
  'knots',
  'materials',
  'rows',
  'reading',
];

/** The first page of each part, those that tell most of the pattern first. */
function telling(pages: readonly Page[]): Page[] {
  const firsts = pages.filter((page, i) => pages.findIndex(({ part }) => part === page.part) === i);
  const place = ({ part }: Page) => {
    const at = tellingMost.indexOf(part);
    return at < 0 ? tellingMost.length : at;
  };
  return firsts.toSorted((a, b) => place(a) - place(b)).slice(0, COLUMNS * ROWS);
}
