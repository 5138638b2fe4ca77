import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changedBlock, pixelWords } from '../../../renderer/surface/chart-bitmap.ts';
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

describe('the block that an edit changed', () => {
  const all = { first: 0, last: 3 };

  it('reaches from the first to the last cell that differs', () => {
    const before = chartOf(['aaaaa', 'aaaaa', 'aaaaa', 'aaaaa']);
    const after = chartOf(['aaaaa', 'aabaa', 'aaaaa', 'baaaa']);
    expect(changedBlock(before, after, all)).toEqual({ left: 0, top: 1, right: 2, bottom: 3 });
  });

  it('is none where all cells are as they were', () => {
    const chart = chartOf(['ab', 'ba', 'ab', 'ba']);
    expect(changedBlock(chart, { ...chart, cells: chart.cells.slice() }, all)).toBeNull();
  });

  it('holds every cell that differs and touches one of them on each side', () => {
    const cells = fc.array(fc.constantFrom(1, 2), { minLength: 24, maxLength: 24 });
    fc.assert(
      fc.property(cells, cells, (a, b) => {
        const before = { ...chartOf(['aaaaaa', 'aaaaaa', 'aaaaaa', 'aaaaaa']), cells: Uint8Array.from(a) };
        const block = changedBlock(before, { ...before, cells: Uint8Array.from(b) }, all);
        const changed = a.flatMap((code, i) => (code === b[i] ? [] : [[Math.floor(i / 6), i % 6] as const]));
        const rows = changed.map(([row]) => row);
        const columns = changed.map(([, column]) => column);
        expect(block).toEqual(
          changed.length === 0
            ? null
            : {
                left: Math.min(...columns),
                top: Math.min(...rows),
                right: Math.max(...columns),
                bottom: Math.max(...rows),
              },
        );
      }),
    );
  });
});
