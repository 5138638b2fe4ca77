import { describe, expect, it } from 'vitest';
import { type CanvasFaces, type CanvasPen, drawOnCanvas } from '../../../shared/pattern/draw-on-canvas.ts';
import type { Item, Page } from '../../../shared/pattern/page.ts';

const faces: CanvasFaces = {
  sans: { family: 'Sans', weight: 400 },
  'sans-bold': { family: 'Sans', weight: 600 },
  serif: { family: 'Serif', weight: 400 },
  'serif-bold': { family: 'Serif', weight: 600 },
  symbols: { family: 'Symbols', weight: 400 },
};

/** A pen that writes down what it is told to draw, each with the ink in hand. */
function notingPen(): { pen: CanvasPen; notes: string[] } {
  const notes: string[] = [];
  const still = () => {};
  const pen: CanvasPen = {
    fillStyle: '',
    strokeStyle: '',
    lineWidth: 0,
    lineCap: '',
    lineJoin: '',
    globalAlpha: 1,
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
    fillRect: (x, y, width, height) => notes.push(`rect ${x} ${y} ${width} ${height} ${pen.fillStyle}`),
    fillText: (text, x, y) => notes.push(`text ${text} ${x} ${y} ${pen.font} ${pen.textAlign}`),
  };
  return { pen, notes };
}

function drawn(item: Item, pxPerMm = 10): string[] {
  const page: Page = { widthMm: 50, heightMm: 40, title: 'Page', items: [item] };
  const { pen, notes } = notingPen();
  drawOnCanvas(pen, page, pxPerMm, faces);
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
});
