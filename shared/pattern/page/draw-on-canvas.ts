/**
 * Draws a page on a 2D canvas: the renderer's preview and the PNG of a chart. The context is described by what is used
 * of it, so that this file knows neither a browser nor a canvas library.
 */

import type {
  BoxItem,
  CellsItem,
  Face,
  ImageItem,
  Page,
  PathItem,
  PlainItem,
  RuleItem,
  TextItem,
} from './page.ts';
import { paintCells } from './paint-cells.ts';
import { itemsWithin, plainItems } from './plain-items.ts';

/** The part of a 2D context that pages need. */
export interface CanvasPen {
  fillStyle: unknown;
  strokeStyle: unknown;
  lineWidth: number;
  lineCap: string;
  lineJoin: string;
  globalAlpha: number;
  font: string;
  textAlign: string;
  textBaseline: string;
  save(): void;
  restore(): void;
  scale(x: number, y: number): void;
  beginPath(): void;
  closePath(): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  bezierCurveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void;
  arcTo(x1: number, y1: number, x2: number, y2: number, radius: number): void;
  fill(): void;
  stroke(): void;
  fillRect(x: number, y: number, width: number, height: number): void;
  setLineDash(segments: number[]): void;
  fillText(text: string, x: number, y: number): void;
  strokeText(text: string, x: number, y: number): void;
}

/** A context that draws pictures of the kind that its platform decodes. */
export interface PicturePen<Picture> extends CanvasPen {
  globalCompositeOperation: string;
  drawImage(picture: Picture, x: number, y: number, width: number, height: number): void;
}

/** CSS font families and weights under which the faces were loaded. */
export type CanvasFaces = Readonly<Record<Face, { readonly family: string; readonly weight: number }>>;

/**
 * The pictures of a page as the canvas takes them, by their bytes. Decoding takes a while, so it is done before: see
 * `imagesOn`. A picture that is not there is left out.
 */
export interface CanvasPictures<Picture> {
  get(bytes: Uint8Array): Picture | undefined;
}

/** Draws in CSS pixels from the context's own origin, `pxPerMm` to the millimetre, on white paper. */
export function drawOnCanvas<Picture>(
  pen: PicturePen<Picture>,
  page: Page,
  pxPerMm: number,
  faces: CanvasFaces,
  pictures?: CanvasPictures<Picture>,
): void {
  const drawImage = ({ bytes, x, y, width, height, inGreys }: ImageItem) => {
    const picture = pictures?.get(bytes);
    if (picture === undefined) return;
    pen.drawImage(picture, x, y, width, height);
    if (!inGreys) return;
    // The light of the picture, and the saturation of a grey.
    pen.globalCompositeOperation = 'saturation';
    pen.fillStyle = '#808080';
    pen.fillRect(x, y, width, height);
    pen.globalCompositeOperation = 'source-over';
  };
  pen.save();
  pen.scale(pxPerMm, pxPerMm);
  pen.fillStyle = '#ffffff';
  pen.fillRect(0, 0, page.widthMm, page.heightMm);
  pen.textBaseline = 'alphabetic';
  for (const item of plainItems(page.items)) {
    if (item.kind === 'image') drawImage(item);
    else drawItem(pen, item, pxPerMm, faces);
  }
  pen.restore();
}

/** The pictures that a page shows, each once. */
export function imagesOn(page: Page): ImageItem[] {
  const images = itemsWithin(page.items).filter((item): item is ImageItem => item.kind === 'image');
  return [...new Map(images.map((image) => [image.bytes, image])).values()];
}

type DrawnItem = Exclude<PlainItem, ImageItem>;

function drawItem(pen: CanvasPen, item: DrawnItem, pxPerMm: number, faces: CanvasFaces): void {
  switch (item.kind) {
    case 'text':
      drawText(pen, item, pxPerMm, faces);
      break;
    case 'rule':
      drawPath(pen, ruleAsPath(item));
      break;
    case 'box':
      pen.globalAlpha = item.opacity ?? 1;
      boxPath(pen, item);
      pen.setLineDash([]);
      paint(pen, item);
      pen.globalAlpha = 1;
      break;
    case 'path':
      drawPath(pen, item);
      break;
    case 'cells':
      drawCells(pen, item, pxPerMm, faces);
      break;
  }
}

function ruleAsPath({ x1, y1, x2, y2, color, widthMm, dashMm }: RuleItem): PathItem {
  const steps: PathItem['steps'] = [
    ['M', x1, y1],
    ['L', x2, y2],
  ];
  return { kind: 'path', steps, stroke: color, strokeMm: widthMm, ...(dashMm && { dashMm }) };
}

function drawText(pen: CanvasPen, item: TextItem, pxPerMm: number, faces: CanvasFaces): void {
  inPixels(pen, pxPerMm, () => {
    setFont(pen, item.face, item.sizeMm * pxPerMm, faces);
    pen.fillStyle = item.color;
    pen.textAlign = item.align;
    pen.fillText(item.text, item.x * pxPerMm, item.y * pxPerMm);
  });
}

/** Text of 3 px that is scaled up would be spaced by the widths of 3 px letters: it is set at its true size instead. */
function inPixels(pen: CanvasPen, pxPerMm: number, draw: () => void): void {
  pen.save();
  pen.scale(1 / pxPerMm, 1 / pxPerMm);
  draw();
  pen.restore();
}

function setFont(pen: CanvasPen, face: Face, sizePx: number, faces: CanvasFaces): void {
  const { family, weight } = faces[face];
  pen.font = `${weight} ${sizePx}px "${family}"`;
}

function boxPath(pen: CanvasPen, box: Pick<BoxItem, 'x' | 'y' | 'width' | 'height' | 'radius'>): void {
  const { x, y, width, height } = box;
  const radius = Math.min(box.radius ?? 0, width / 2, height / 2);
  pen.beginPath();
  pen.moveTo(x + radius, y);
  for (const [x1, y1, x2, y2] of [
    [x + width, y, x + width, y + height],
    [x + width, y + height, x, y + height],
    [x, y + height, x, y],
    [x, y, x + width, y],
  ] as const) {
    if (radius > 0) pen.arcTo(x1, y1, x2, y2, radius);
    else pen.lineTo(x1, y1);
  }
  pen.closePath();
}

function drawPath(pen: CanvasPen, item: PathItem): void {
  pen.beginPath();
  for (const step of item.steps) {
    switch (step[0]) {
      case 'M':
        pen.moveTo(step[1], step[2]);
        break;
      case 'L':
        pen.lineTo(step[1], step[2]);
        break;
      case 'C':
        pen.bezierCurveTo(step[1], step[2], step[3], step[4], step[5], step[6]);
        break;
      case 'Z':
        pen.closePath();
        break;
    }
  }
  pen.globalAlpha = item.opacity ?? 1;
  pen.lineCap = item.cap ?? 'butt';
  pen.lineJoin = item.cap ?? 'miter';
  pen.setLineDash(item.dashMm ? [...item.dashMm] : []);
  paint(pen, item);
  pen.globalAlpha = 1;
}

function paint(
  pen: CanvasPen,
  { fill, stroke, strokeMm }: { fill?: string; stroke?: string; strokeMm?: number },
) {
  if (fill) {
    pen.fillStyle = fill;
    pen.fill();
  }
  if (stroke && strokeMm) {
    pen.strokeStyle = stroke;
    pen.lineWidth = strokeMm;
    pen.stroke();
  }
}

function drawCells(pen: CanvasPen, item: CellsItem, pxPerMm: number, faces: CanvasFaces): void {
  const { x, y, cellWidth, cellHeight, columns, rows, codes, inks, symbolMm } = item;
  // Edges fall on whole pixels, so that no seam of the paper shows between neighbours.
  const snapX = (c: number) => Math.round((x + c * cellWidth) * pxPerMm) / pxPerMm;
  const snapY = (r: number) => Math.round((y + r * cellHeight) * pxPerMm) / pxPerMm;
  for (const { code, rects } of paintCells(codes, columns, rows, (each) => Boolean(inks[each]?.fill))) {
    pen.fillStyle = inks[code]!.fill!;
    for (let i = 0; i < rects.length; i += 4) {
      const left = snapX(rects[i]!);
      const top = snapY(rects[i + 1]!);
      pen.fillRect(
        left,
        top,
        snapX(rects[i]! + rects[i + 2]!) - left,
        snapY(rects[i + 1]! + rects[i + 3]!) - top,
      );
    }
  }
  if (symbolMm) inPixels(pen, pxPerMm, () => drawSymbols(pen, item, symbolMm, pxPerMm, faces));
}

function drawSymbols(
  pen: CanvasPen,
  { x, y, cellWidth, cellHeight, columns, rows, codes, inks }: CellsItem,
  symbolMm: number,
  pxPerMm: number,
  faces: CanvasFaces,
): void {
  setFont(pen, 'symbols', symbolMm * pxPerMm, faces);
  pen.setLineDash([]);
  pen.lineJoin = 'miter';
  pen.textAlign = 'left';
  let inHand = '';
  for (let r = 0; r < rows; r++) {
    const baseline = (y + (r + 0.5) * cellHeight + symbolMm / 2) * pxPerMm;
    for (let c = 0; c < columns; c++) {
      const ink = inks[codes[r * columns + c]!];
      if (!ink?.symbol) continue;
      if (ink.ink !== inHand) {
        inHand = ink.ink;
        pen.fillStyle = inHand;
      }
      const left = (x + (c + 0.5) * cellWidth - symbolMm / 2) * pxPerMm;
      pen.fillText(ink.symbol, left, baseline);
      if (!ink.edge) continue;
      pen.strokeStyle = ink.edge.color;
      pen.lineWidth = ink.edge.widthMm * pxPerMm;
      pen.strokeText(ink.symbol, left, baseline);
    }
  }
}
