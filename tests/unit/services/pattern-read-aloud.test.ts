/** Patterns as a screen reader reads them: in the order of their structure, without what only stands on paper. */
import { beforeAll, describe, expect, it } from 'vitest';
import { makePattern } from '../../../app/services/pattern/make-pattern.ts';
import { flatten } from '../../../shared/chart/chart.ts';
import { defaults } from '../../../shared/design/defaults.ts';
import type { Design } from '../../../shared/design/design.ts';
import { englishRows, writtenRowPieces, writtenRows } from '../../../shared/tying/rows/written-rows.ts';
import { alphabet } from '../../../shared/yarn/symbols.ts';
import { designFromLetters } from '../../notation.ts';
import { openPdf, pageOf, readAloud } from '../../pdf/pdf-reader.ts';

const letters = ['aaaaaaaabbaaaaaa', 'aaaaaaabbbbaaaaa', 'aaaacccbbbbaaaaa', 'aaa--ccccccccaaa'];
const design = designFromLetters(letters, { title: 'Tern over Holm', designer: 'Ines Marlow' });

/** The lines of each page. */
async function spoken(
  of: Design,
): Promise<{ pages: string[][]; page: (title: string) => Promise<string[]> }> {
  const made = await makePattern(of, {
    paper: 'a4',
    units: 'metric',
    date: new Date('2026-03-01T12:00:00Z'),
  });
  if (!made.ok) throw new Error(made.problem.sentence);
  const pdf = await openPdf(made.value.bytes);
  const pages = await readAloud(made.value.bytes);
  return { pages, page: async (title) => pages[(await pageOf(pdf, title)) - 1]! };
}

let whole: Awaited<ReturnType<typeof spoken>>;
beforeAll(async () => {
  whole = await spoken(design);
});

describe('a pattern that is read aloud', { timeout: 30_000 }, () => {
  it('begins with its title, and each part with its own', () => {
    const headings = whole.pages.flat().filter((line) => /^H\d /.test(line));
    expect(headings[0]).toBe('H1 Tern over Holm');
    expect(headings.filter((line) => line.startsWith('H1'))).toContain('H1 Materials');
    expect(headings.indexOf('H2 Yarn')).toBeGreaterThan(headings.indexOf('H1 Materials'));
    expect(headings.indexOf('H1 Written rows')).toBeGreaterThan(headings.indexOf('H2 Yarn'));
  });

  it('never tells what stands at the foot, nor a number around the chart', () => {
    const lines = whole.pages.flat().join('\n');
    expect(lines).not.toMatch(/page \d+ of \d+/);
    expect(lines).not.toContain('when printed at full size');
    expect(lines).not.toMatch(/^P \d+$/m);
  });

  it('tells tables cell by cell, each row after the heads of its columns', async () => {
    const lines = await whole.page('Materials');
    const at = lines.indexOf('TH yarn');
    expect(lines.slice(at - 1, at + 7).every((line) => line.startsWith('TH'))).toBe(true);
    const row = lines.indexOf('TH Linen');
    expect(row).toBeGreaterThan(at);
    // 64 cells, less 6 of Dusk in rows 1 and 2, 4 in row 3, 3 and 8 of Tide, 2 bare: 41 (counted by hand).
    expect(lines.slice(row + 1, row + 2)).toEqual(['TD 41']);
    expect(lines.slice(row - 1, row + 7).map((line) => line.slice(0, 2))).toEqual([
      'TD',
      'TH',
      'TD',
      'TD',
      'TD',
      'TD',
      'TD',
      'TD',
    ]);
  });

  it('tells a list entry by entry, the number before its text', async () => {
    const lines = await whole.page('How to read');
    const first = lines.indexOf('Lbl 1');
    expect(lines[first + 1]).toMatch(/^LBody One cell is one knot/);
    expect(lines[first + 2]).toBe('Lbl 2');
  });

  it('tells the chart in words, and never its cells', async () => {
    const lines = await whole.page('Chart');
    expect(lines.some((line) => line.startsWith('Figure (') && line.includes('rows 1'))).toBe(true);
    expect(lines.join('\n')).not.toMatch(/aaaa/);
  });

  it('tells every written row whole, with spaces where lines end', async () => {
    const names = new Map(design.yarns.map((yarn) => [yarn.id, yarn]));
    const text = (await whole.page('Written rows')).join('\n');
    for (const row of writtenRows(flatten(design), names))
      expect(text).toContain(writtenRowPieces(row, englishRows, '–').join(' '));
  });

  it('ends a paragraph that goes on over lines as one', async () => {
    const lines = await whole.page('Materials');
    const basis = lines.find((line) => line.startsWith('P Gauge'))!;
    expect(basis).toMatch(
      /Tie a swatch first; sizes and lengths change with it\. Yarn per knot is an estimate/,
    );
    expect(basis).not.toMatch(/ {2}|[a-z][A-Z]/);
  });

  it('tells the heads of a table once, however many pages it takes', async () => {
    const yarns = Array.from({ length: 64 }, (_, i) => ({
      ...defaults.yarns[0]!,
      id: `y${i + 1}` as const,
      name: `Yarn ${i + 1}`,
      symbol: alphabet[i]!.text,
    }));
    const row = Uint8Array.from({ length: 64 }, (_, c) => c + 1);
    const base = designFromLetters(['a'.repeat(64)], { title: 'Many' });
    const many = { ...base, yarns, layers: [{ ...base.layers.at(-1)!, rows: [row] }] };
    const lines = (await spoken(many)).pages.flat();
    expect(lines.filter((line) => line === 'TH knots')).toHaveLength(1);
    expect(lines.filter((line) => /^TH Yarn \d+$/.test(line))).toHaveLength(64);
    expect(lines.join('\n')).not.toContain('continued');
  });
});
