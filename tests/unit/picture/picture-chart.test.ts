import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Progress } from '../../../shared/bridge.ts';
import { codeOf } from '../../../shared/design/codes.ts';
import { defaults } from '../../../shared/design/defaults.ts';
import { averageCells } from '../../../shared/picture/average-cells.ts';
import {
  type PictureOptions,
  pictureChart,
  type YarnsForPicture,
} from '../../../shared/picture/picture-chart.ts';
import { arbitraryPicture, mirrored, type Picture, pictureFromLetters } from './pictures.ts';

const symbols = [...'abcdefghijklmnopqrstuvwxyz'];
const choose = (count: number): YarnsForPicture => ({ choose: { count, symbols, like: defaults.yarns[0]! } });

function cellsOf({ rgba, widthPx, heightPx }: Picture, columns: number, rows: number) {
  const crop = { x: 0, y: 0, width: widthPx, height: heightPx };
  return averageCells(rgba, widthPx, heightPx, crop, columns, rows, '#ffffff');
}

async function chartOf(
  picture: Picture,
  columns: number,
  rows: number,
  wanted: YarnsForPicture,
  options: PictureOptions = {},
) {
  const made = await pictureChart(cellsOf(picture, columns, rows), wanted, options);
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value;
}

const flag = pictureFromLetters(['rrww', 'rrww', 'bbbb'], { r: '#9e3329', w: '#e6ddc9', b: '#28455f' });

describe('a chart from a picture', () => {
  it('shows a picture of flat colours cell by cell', async () => {
    const chart = await chartOf(flag, 4, 3, choose(5));
    expect(chart.yarns.map(({ color }) => color)).toEqual(['#28455f', '#9e3329', '#e6ddc9']);
    expect([...chart.cells]).toEqual([2, 2, 3, 3, 2, 2, 3, 3, 1, 1, 1, 1]);
    expect(chart.mostUsed).toBe('y1');
  });

  it('gives a picture in the colours of the yarns back in these yarns', async () => {
    const chart = await chartOf(flag, 8, 6, { from: defaults.yarns });
    expect(chart.yarns).toBe(defaults.yarns);
    expect([...chart.cells.subarray(0, 8)]).toEqual([5, 5, 5, 5, 1, 1, 1, 1]);
    expect([...chart.cells.subarray(40)]).toEqual(Array(8).fill(3));
  });

  it('says which yarn of the design covers the most', async () => {
    const chart = await chartOf(flag, 4, 6, { from: defaults.yarns });
    // Eight cells each: of equals the lowest id.
    expect(chart.mostUsed).toBe('y1');
    expect((await chartOf(flag, 1, 1, { from: [defaults.yarns[3]!] })).mostUsed).toBe('y4');
  });

  it('has a yarn of its list in every cell', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryPicture(), fc.integer({ min: 1, max: 8 }), async (picture, count) => {
        const chart = await chartOf(picture, 7, 5, choose(count));
        const codes = new Set(chart.yarns.map(({ id }) => codeOf(id)));
        expect(chart.yarns.length).toBeLessThanOrEqual(count);
        expect(new Set(chart.cells)).toEqual(codes);
      }),
      { seed: 11, numRuns: 200 },
    );
  });

  it('is mirrored where the picture is, with the same yarns', async () => {
    const size = fc.integer({ min: 1, max: 12 });
    await fc.assert(
      fc.asyncProperty(arbitraryPicture(), size, size, fc.boolean(), async (picture, columns, rows, own) => {
        const wanted = own ? choose(4) : { from: defaults.yarns };
        const chart = await chartOf(picture, columns, rows, wanted);
        const mirror = await chartOf(mirrored(picture), columns, rows, wanted);
        expect(mirror.yarns).toEqual(chart.yarns);
        for (let r = 0; r < rows; r++) {
          const row = chart.cells.subarray(r * columns, (r + 1) * columns);
          expect(mirror.cells.subarray(r * columns, (r + 1) * columns)).toEqual(row.toReversed());
        }
      }),
      { seed: 12, numRuns: 200 },
    );
  });

  it('tells how far it is, from 0 to 1', async () => {
    const steps: Progress[] = [];
    await chartOf(flag, 4, 3, choose(3), { onProgress: (step) => steps.push(step) });
    expect(steps[0]!.done).toBe(0);
    expect(steps.at(-1)!.done).toBe(1);
    expect(steps.map(({ done }) => done)).toEqual(steps.map(({ done }) => done).toSorted((a, b) => a - b));
    expect(steps.every(({ what }) => what.length > 0)).toBe(true);
  });

  it('is not made where it is cancelled, at whichever pause', async () => {
    for (const at of [1, 2, 3]) {
      const controller = new AbortController();
      let pauses = 0;
      const pause = async () => {
        if (++pauses === at) controller.abort();
      };
      const made = await pictureChart(cellsOf(flag, 4, 3), choose(3), { signal: controller.signal, pause });
      expect(made).toMatchObject({ ok: false, problem: { code: 'cancelled' } });
      expect(pauses).toBe(at);
    }
  });
});
