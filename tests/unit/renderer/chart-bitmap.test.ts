import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changedBlocks, pixelWords } from '../../../renderer/surface/chart-bitmap.ts';
import { type Chart, flatten } from '../../../shared/chart/chart.ts';
import { BARE } from '../../../shared/design/codes.ts';
import { designFromLetters } from '../../notation.ts';

function chartOf(rows: readonly string[]): Chart {
  return flatten(designFromLetters(rows));
}

describe('the pixels of yarns', () => {
  it('hold red, green, blue and full cover in this order in memory', () => {
    const bytes = new Uint8Array(pixelWords({ 3: '#28455f' }).buffer);
    expect([...bytes.subarray(12, 16)]).toEqual([0x28, 0x45, 0x5f, 255]);
  });

  it('let the cord show where a cell is bare', () => {
    expect(pixelWords({})[BARE]).toBe(0);
  });
});

describe('the blocks that an edit changed', () => {
  const all = [0, 1, 2, 3];

  it('reach from the first to the last cell that differs, where they lie together', () => {
    const before = chartOf(['aaaaa', 'aaaaa', 'aaaaa', 'aaaaa']);
    const after = chartOf(['aaaaa', 'aabaa', 'baaaa', 'baaaa']);
    expect(changedBlocks(before, after, all)).toEqual([{ left: 0, top: 1, right: 2, bottom: 3 }]);
  });

  it('are one for each image of a stroke with its mirror images', () => {
    const plain = 'a'.repeat(40);
    const both = `b${'a'.repeat(38)}b`;
    const blocks = changedBlocks(
      chartOf([plain, plain, plain, plain]),
      chartOf([both, plain, plain, both]),
      all,
    );
    expect(blocks.map(({ left, top }) => [left, top])).toEqual([
      [0, 0],
      [39, 0],
      [0, 3],
      [39, 3],
    ]);
  });

  it('are none where all cells are as they were', () => {
    const chart = chartOf(['ab', 'ba', 'ab', 'ba']);
    expect(changedBlocks(chart, { ...chart, cells: chart.cells.slice() }, all)).toEqual([]);
  });

  it('hold every cell that differs', () => {
    const columns = 30;
    const cells = fc.array(fc.constantFrom(1, 1, 1, 1, 1, 2), {
      minLength: 4 * columns,
      maxLength: 4 * columns,
    });
    const plain = chartOf(Array.from({ length: 4 }, () => 'a'.repeat(columns)));
    fc.assert(
      fc.property(cells, cells, (a, b) => {
        const before = { ...plain, cells: Uint8Array.from(a) };
        const blocks = changedBlocks(before, { ...plain, cells: Uint8Array.from(b) }, all);
        for (const [i, code] of a.entries()) {
          if (code === b[i]) continue;
          const [row, column] = [Math.floor(i / columns), i % columns];
          const holds = blocks.some(
            ({ left, right, top, bottom }) =>
              left <= column && column <= right && top <= row && row <= bottom,
          );
          expect(holds).toBe(true);
        }
      }),
    );
  });
});
