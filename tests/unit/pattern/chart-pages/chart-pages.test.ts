import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Chart, goesRight } from '../../../../shared/chart/chart.ts';
import type { YarnId } from '../../../../shared/design/codes.ts';
import { BARE } from '../../../../shared/design/codes.ts';
import { cellInks } from '../../../../shared/pattern/chart-pages/cell-inks.ts';
import type { ChartInput } from '../../../../shared/pattern/chart-pages/chart-layout.ts';
import { chartPages } from '../../../../shared/pattern/chart-pages/chart-pages.ts';
import { keyEntries } from '../../../../shared/pattern/chart-pages/key.ts';
import { printScales } from '../../../../shared/pattern/chart-pages/print-scale.ts';
import type { Draft } from '../../../../shared/pattern/flow/page-foot.ts';
import type { CellsItem, TextItem } from '../../../../shared/pattern/page/page.ts';
import { papers } from '../../../../shared/pattern/page/papers.ts';
import { plainItems } from '../../../../shared/pattern/page/plain-items.ts';
import { chartWords } from '../../../../shared/pattern/words/chart-words.ts';
import { alphabet } from '../../../../shared/yarn/symbols.ts';

function yarns(count: number) {
  return Array.from({ length: count }, (_, i) => ({
    id: `y${i + 1}` as YarnId,
    name: `Yarn ${i + 1}`,
    color: '#566a94',
    symbol: alphabet[i]!.text,
  }));
}

function pagesFor(chart: Chart, yarnCount: number, aspect = 1, firstPage = 4): Draft[] {
  const list = yarns(yarnCount);
  const entries = keyEntries(list, chart);
  return chartPages(inputFor(chart, list, entries, aspect), firstPage);
}

function inputFor(
  chart: Chart,
  list: ReturnType<typeof yarns>,
  entries: ChartInput['entries'],
  aspect = 1,
): ChartInput {
  return {
    chart,
    aspect,
    sheet: papers.a4,
    entries,
    repeats: [],
    cellInks: cellInks(list),
    mapInks: cellInks(list),
    scale: printScales.standard,
    accent: '#9e3329',
    words: chartWords.en,
    namesPage: 3,
    title: 'Chart',
  };
}

function chartOf(columns: number, rows: number, codeAt: (row: number, column: number) => number): Chart {
  const cells = Uint8Array.from({ length: columns * rows }, (_, i) =>
    codeAt(Math.floor(i / columns), i % columns),
  );
  return { columns, rows, startCorner: 'top-left', cells };
}

/** The large block of a page, not the swatches of its key. */
function blockOf(draft: Draft): CellsItem {
  return draft.items.find((item): item is CellsItem => item.kind === 'cells' && Boolean(item.alt))!;
}

function textsOf(draft: Draft): TextItem[] {
  return plainItems(draft.items).filter((item): item is TextItem => item.kind === 'text');
}

/** 'rows 27–52, cords 1–40', counted from 1. */
function rangeOf(draft: Draft): { row: number; column: number } {
  const [, row, column] = /rows? (\d+)\D.*cords? (\d+)/.exec(`${draft.middle} `)!;
  return { row: Number(row), column: Number(column) };
}

const arbitrarySize = fc.record({
  columns: fc.integer({ min: 1, max: 120 }),
  rows: fc.integer({ min: 1, max: 140 }),
  yarns: fc.integer({ min: 1, max: 64 }),
  aspect: fc.double({ min: 0.5, max: 2, noNaN: true }),
});

describe('chart pages', () => {
  it('show every cell of the chart, each at its own place', () => {
    fc.assert(
      fc.property(arbitrarySize, ({ columns, rows, yarns: count, aspect }) => {
        const chart = chartOf(columns, rows, (r, c) => ((r * 31 + c * 17) % (count + 1) || 255) as number);
        const shown = new Uint8Array(columns * rows);
        let misplaced = 0;
        for (const draft of pagesFor(chart, count, aspect)) {
          const block = blockOf(draft);
          const { row, column } = rangeOf(draft);
          for (let r = 0; r < block.rows; r++) {
            for (let c = 0; c < block.columns; c++) {
              const at = (row - 1 + r) * columns + column - 1 + c;
              if (block.codes[r * block.columns + c] !== chart.cells[at]) misplaced++;
              shown[at] = 1;
            }
          }
        }
        expect(misplaced).toBe(0);
        expect(shown.every((each) => each === 1)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('carry the whole key on each of them: every yarn that the chart uses, with its knots on the whole chart', () => {
    const chart = chartOf(90, 120, (r, c) => ((r + c) % 8 === 7 ? BARE : 1 + ((r + c) % 8)));
    const pages = pagesFor(chart, 9);
    expect(pages.length).toBeGreaterThan(1);
    for (const draft of pages) {
      const texts = textsOf(draft).map(({ text }) => text);
      for (const n of [1, 2, 3, 4, 5, 6, 7]) expect(texts).toContain(`Yarn ${n}`);
      expect(texts).toContain('Bare cord, no knot');
      expect(texts).not.toContain('Yarn 8');
      expect(texts).toContain('1,350');
    }
  });

  it('number every row once, on the side where it starts', () => {
    const chart = chartOf(12, 30, () => 1);
    const [draft] = pagesFor(chart, 1);
    const block = blockOf(draft!);
    const middle = block.x + (block.columns * block.cellWidth) / 2;
    for (let row = 0; row < 30; row++) {
      const level = block.y + (row + 0.5) * block.cellHeight;
      const numbers = textsOf(draft!).filter(
        ({ text, y, x }) =>
          text === String(row + 1) &&
          Math.abs(y - level) < block.cellHeight / 2 &&
          (x < block.x || x > block.x + block.columns * block.cellWidth),
      );
      expect(numbers).toHaveLength(1);
      expect(numbers[0]!.x < middle).toBe(goesRight('top-left', row));
    }
  });

  it('say which page joins where', () => {
    const chart = chartOf(60, 90, () => 1);
    const pages = pagesFor(chart, 1, 1, 4);
    expect(pages.map(({ below }) => below)).toEqual([
      'joins page 5 right, 6 below',
      'joins page 4 left, 7 below',
      'joins page 7 right, 4 above',
      'joins page 6 left, 5 above',
    ]);
    expect(textsOf(pages[0]!).map(({ text }) => text)).toEqual(
      expect.arrayContaining(['page 5', 'page 6', 'Pages']),
    );
  });

  it('carry no joins and no map where there is one page', () => {
    const [draft, ...others] = pagesFor(
      chartOf(16, 12, () => 1),
      1,
    );
    expect(others).toEqual([]);
    expect(draft!.below).toBe('');
    expect(textsOf(draft!).some(({ text }) => text.startsWith('joins') || text === 'Pages')).toBe(false);
  });

  it('say on which page names stand in full, where the key has to shorten them', () => {
    const chart = chartOf(64, 64, (_, c) => 1 + c);
    const list = yarns(64);
    const told = (names: string, namesPage: number | null) => {
      const named = list.map((yarn, i) => ({ ...yarn, name: `${names} ${i + 1}` }));
      const input = { ...inputFor(chart, named, keyEntries(named, chart)), namesPage };
      return chartPages(input, 4).map((draft) =>
        textsOf(draft).flatMap(({ text, link }) => (text.startsWith('names') ? [{ text, link }] : [])),
      );
    };
    const [first, ...later] = told('Wool of the brown sheep beyond the weir', 3);
    const text = 'names in full on page 3';
    expect(first).toEqual([{ text, link: 3 }]);
    expect(later.length).toBeGreaterThan(0);
    for (const each of later) expect(each).toEqual([{ text }]);
    expect(told('Yarn', 3).flat()).toEqual([]);
    expect(told('Wool of the brown sheep beyond the weir', null).flat()).toEqual([]);
  });

  it('make room for a key of 64 yarns, with cells still at least 4 mm wide', () => {
    const chart = chartOf(64, 64, (_, c) => 1 + c);
    for (const draft of pagesFor(chart, 64)) {
      expect(blockOf(draft).cellWidth).toBeGreaterThanOrEqual(4 - 1e-9);
      expect(textsOf(draft).filter(({ text }) => text.startsWith('Yarn '))).toHaveLength(64);
    }
  });
});
