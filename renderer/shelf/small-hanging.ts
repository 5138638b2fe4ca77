/**
 * A hanging in small: its chart under a dowel, its fringe below. One pixel a cell, enlarged without smoothing. A fringe
 * longer than half of the picture is drawn shorter, in its own outline, so that the picture stays large.
 */
import type { Thumbnail } from '../../shared/bridge.ts';
import { COTTON } from '../../shared/chart/hanging/cotton.ts';
import { BARE } from '../../shared/design/codes.ts';

const width = 232;
const height = 232;
const rope = COTTON;

/** Where the picture begins below the dowel, and how much room is left below the fringe. */
const top = 32;
const below = 12;
const longestFringe = 0.5;

export function drawSmallHanging(canvas: HTMLCanvasElement, thumbnail: Thumbnail): void {
  const scale = window.devicePixelRatio || 1;
  canvas.width = width * scale;
  canvas.height = height * scale;
  canvas.style.width = `${width}px`;
  canvas.style.height = `${height}px`;
  const context = canvas.getContext('2d');
  if (!context) return;
  context.scale(scale, scale);

  const { aspect, fringe } = thumbnail;
  const longest = fringe.reduce((a, b) => Math.max(a, b), 0);
  const drawnLongest = Math.min(longest, longestFringe);
  const room = { width: width - 56, height: (height - top - below) / (1 + drawnLongest) };
  const pictureWidth = Math.min(room.width, room.height * aspect);
  const pictureHeight = pictureWidth / aspect;
  const x = (width - pictureWidth) / 2;
  const pxPerLength = longest === 0 ? 0 : (drawnLongest / longest) * pictureHeight;

  drawCords(
    context,
    x,
    pictureWidth,
    fringe.map((length) => top + pictureHeight + length * pxPerLength),
  );
  context.imageSmoothingEnabled = false;
  context.drawImage(cellsOf(thumbnail), x, top, pictureWidth, pictureHeight);
  drawDowel(context, x - 12, 20, pictureWidth + 24);
}

/** `ends` are the heights at which the cords end, left to right. */
function drawCords(context: CanvasRenderingContext2D, x: number, w: number, ends: readonly number[]) {
  const pitch = w / ends.length;
  context.strokeStyle = rope;
  context.lineWidth = Math.max(1, pitch * 0.55);
  context.lineCap = 'round';
  context.beginPath();
  for (const [c, end] of ends.entries()) {
    context.moveTo(x + (c + 0.5) * pitch, 24);
    context.lineTo(x + (c + 0.5) * pitch, end);
  }
  context.stroke();
}

function drawDowel(context: CanvasRenderingContext2D, x: number, y: number, w: number) {
  context.strokeStyle = rope;
  context.lineWidth = 1.5;
  context.beginPath();
  context.moveTo(x + 14, y);
  context.quadraticCurveTo(x + w / 2, -8, x + w - 14, y);
  context.stroke();
  context.fillStyle = '#b98a58';
  context.beginPath();
  context.roundRect(x, y, w, 7, 3.5);
  context.fill();
}

function cellsOf({ columns, rows, cells, colors }: Thumbnail): HTMLCanvasElement {
  const picture = document.createElement('canvas');
  picture.width = columns;
  picture.height = rows;
  const context = picture.getContext('2d')!;
  const pixels = context.createImageData(columns, rows);
  cells.forEach((code, i) => {
    if (code === BARE) return;
    const color = Number.parseInt((colors[code] ?? '#000000').slice(1), 16);
    pixels.data.set([color >> 16, (color >> 8) & 255, color & 255, 255], i * 4);
  });
  context.putImageData(pixels, 0, 0);
  return picture;
}
