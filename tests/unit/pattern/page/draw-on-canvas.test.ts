import { describe, expect, it } from 'vitest';
import {
  type CanvasFaces,
  drawOnCanvas,
  imagesOn,
  type PicturePen,
} from '../../../../shared/pattern/page/draw-on-canvas.ts';
import type { Item, Page } from '../../../../shared/pattern/page/page.ts';

const faces: CanvasFaces = {
  sans: { family: 'Sans', weight: 400 },
  'sans-bold': { family: 'Sans', weight: 600 },
  serif: { family: 'Serif', weight: 400 },
  'serif-bold': { family: 'Serif', weight: 600 },
  symbols: { family: 'Symbols', weight: 400 },
};

/** A pen that writes down what it is told to draw, each with the ink in hand. */
function notingPen(): { pen: PicturePen<string>; notes: string[] } {
  const notes: string[] = [];
  const still = () => {};
  const pen: PicturePen<string> = {
    fillStyle: '',
    strokeStyle: '',
    lineWidth: 0,
    lineCap: '',
    lineJoin: '',
    globalAlpha: 1,
    globalCompositeOperation: 'source-over',
    font: '',
    textAlign: '',
    textBaseline: '',
    save: still,
    restore: still,
    scale: still,
    beginPath: still,
    closePath: still,
    moveTo: still,
    lineTo: still,
    bezierCurveTo: still,
    arcTo: still,
    setLineDash: still,
    fill: () => notes.push(`fill ${pen.fillStyle} at ${pen.globalAlpha}`),
    stroke: () => notes.push(`stroke ${pen.strokeStyle} ${pen.lineWidth}`),
    fillRect: (x, y, width, height) =>
      notes.push(
        `${pen.globalCompositeOperation === 'source-over' ? 'rect' : pen.globalCompositeOperation} ${x} ${y} ${width} ${height} ${pen.fillStyle}`,
      ),
    fillText: (text, x, y) => notes.push(`text ${text} ${x} ${y} ${pen.font} ${pen.textAlign}`),
    strokeText: (text, x, y) => notes.push(`edge ${text} ${x} ${y} ${pen.strokeStyle} ${pen.lineWidth}`),
    drawImage: (picture, x, y, width, height) => notes.push(`${picture} ${x} ${y} ${width} ${height}`),
  };
  return { pen, notes };
}

function pageWith(...items: Item[]): Page {
  return { widthMm: 50, heightMm: 40, title: 'Page', items };
}

function drawn(item: Item, pxPerMm = 10, pictures = new Map<Uint8Array, string>()): string[] {
  const { pen, notes } = notingPen();
  drawOnCanvas(pen, pageWith(item), pxPerMm, faces, pictures);
  return notes;
}

describe('a page on a canvas', () => {
  it('begins with white paper', () => {
    expect(drawn({ kind: 'box', x: 0, y: 0, width: 1, height: 1 })[0]).toBe('rect 0 0 50 40 #ffffff');
  });

  it('sets text at its true size in pixels', () => {
    const text = {
      kind: 'text',
      x: 5,
      y: 8,
      text: 'Row 1',
      face: 'sans-bold',
      sizeMm: 3,
      color: '#26231f',
    } as const;
    expect(drawn({ ...text, align: 'right' })).toContain('text Row 1 50 80 600 30px "Sans" right');
  });

  it('strokes rules and fills boxes in their colours', () => {
    expect(drawn({ kind: 'rule', x1: 0, y1: 0, x2: 9, y2: 0, widthMm: 0.18, color: '#9e3329' })).toContain(
      'stroke #9e3329 0.18',
    );
    expect(
      drawn({ kind: 'box', x: 1, y: 1, width: 4, height: 3, radius: 1, fill: '#abcdef', opacity: 0.6 }),
    ).toContain('fill #abcdef at 0.6');
  });

  it('draws cells of one yarn as one rectangle, and each symbol in the middle of its cell', () => {
    const notes = drawn({
      kind: 'cells',
      x: 2,
      y: 3,
      cellWidth: 4,
      cellHeight: 4,
      columns: 2,
      rows: 1,
      codes: Uint8Array.of(1, 1),
      inks: { 1: { fill: '#e6ddc9', symbol: 'a', ink: '#000000' } },
      symbolMm: 4,
    });
    expect(notes).toContain('rect 2 3 8 4 #e6ddc9');
    expect(notes.filter((note) => note.startsWith('text'))).toEqual([
      'text a 20 70 400 40px "Symbols" left',
      'text a 60 70 400 40px "Symbols" left',
    ]);
  });

  it('draws all parts of a figure, from back to front', () => {
    const line = (stroke: string) =>
      ({
        kind: 'path',
        steps: [
          ['M', 0, 0],
          ['L', 9, 9],
        ],
        stroke,
        strokeMm: 2,
      }) as const;
    const notes = drawn({ kind: 'figure', alt: 'Two strands', items: [line('#111111'), line('#eeeeee')] });
    expect(notes.slice(1)).toEqual(['stroke #111111 2', 'stroke #eeeeee 2']);
  });

  it('draws the items of a group as if they stood by themselves', () => {
    const rule = { kind: 'rule', x1: 0, y1: 0, x2: 9, y2: 0, widthMm: 0.18, color: '#9e3329' } as const;
    const cell = { kind: 'group', structure: 'cell', items: [rule] } as const;
    const table = { kind: 'group', structure: 'table', items: [cell, cell] } as const;
    expect(drawn(table).slice(1)).toEqual(['stroke #9e3329 0.18', 'stroke #9e3329 0.18']);
  });

  const photograph = {
    kind: 'image',
    x: 3,
    y: 4,
    width: 20,
    height: 30,
    mediaType: 'image/jpeg',
    bytes: Uint8Array.of(1, 2, 3),
    alt: 'The hanging on its wall',
  } as const;

  it('draws a picture that was decoded into its box, and leaves out one that was not', () => {
    const decoded = new Map([[photograph.bytes, 'photograph']]);
    expect(drawn(photograph, 10, decoded).slice(1)).toEqual(['photograph 3 4 20 30']);
    expect(drawn(photograph).slice(1)).toEqual([]);
  });

  it('takes the colours out of a picture in greys, within its box', () => {
    const decoded = new Map([[photograph.bytes, 'photograph']]);
    expect(drawn({ ...photograph, inGreys: true }, 10, decoded).slice(1)).toEqual([
      'photograph 3 4 20 30',
      'saturation 3 4 20 30 #808080',
    ]);
  });

  it('names each picture to decode once, wherever it stands', () => {
    const figure = { kind: 'figure', alt: 'The mark, twice', items: [photograph, photograph] } as const;
    expect(imagesOn(pageWith(photograph, figure))).toEqual([photograph]);
  });
});
