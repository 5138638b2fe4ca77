import { describe, expect, it } from 'vitest';
import { traceOutline } from '../../../../renderer/surface/cell-outline.ts';

const view = { scale: 1, x: 0, y: 0 };
const size = { pitchMm: 10, rowHeightMm: 10 };

/** The outline of the cells written as x, in pieces from point to point; cells are 10 pixels large. */
function outlineOf(letters: readonly string[]): string[] {
  const columns = letters[0]!.length;
  const cells = Uint8Array.from(letters.join(''), (letter) => (letter === 'x' ? 1 : 0));
  const pieces: string[] = [];
  let from = '';
  const pen = {
    moveTo: (x: number, y: number) => {
      from = `${x},${y}`;
    },
    lineTo: (x: number, y: number) => {
      pieces.push(`${from} ${x},${y}`);
    },
  };
  const block = { left: 0, top: 0, right: columns - 1, bottom: letters.length - 1 };
  traceOutline(pen, { columns, rows: letters.length, cells }, block, view, size);
  return pieces;
}

describe('the outline of cells', () => {
  it('goes around a single cell in four pieces', () => {
    expect(outlineOf(['...', '.x.', '...'])).toEqual([
      '10,10 20,10',
      '10,20 20,20',
      '10,10 10,20',
      '20,10 20,20',
    ]);
  });

  it('has one piece along a straight edge, however many cells lie there', () => {
    expect(outlineOf(['xxx'])).toEqual(['0,0 30,0', '0,10 30,10', '0,0 0,10', '30,0 30,10']);
  });

  it('draws nothing between two cells of the set, and goes around a hole', () => {
    const pieces = outlineOf(['xxx', 'x.x', 'xxx']);
    expect(pieces).toHaveLength(8);
    expect(pieces).toContain('10,10 20,10');
  });

  it('is empty where no cell is chosen', () => {
    expect(outlineOf(['..', '..'])).toEqual([]);
  });
});
