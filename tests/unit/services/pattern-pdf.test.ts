import { describe, expect, it } from 'vitest';
import { makePattern } from '../../../app/services/pattern/make-pattern.ts';
import type { Design } from '../../../shared/design/design.ts';
import { designFromLetters } from '../../notation.ts';
import { outlineOf, pageOf, openPdf as read, textOf, type Words, wordsOn } from '../../pdf/pdf-reader.ts';

const letters = [
  'aaaaaaaabbaaaaaa',
  'aaaaaaabbbbaaaaa',
  'aaaacccbbbbaaaaa',
  'aaa--ccccccccaaa',
  'ddddddddaaadddda',
];
const parts = ['cover', 'materials', 'reading', 'knots', 'chart', 'rows', 'care'] as const;
const date = new Date('2026-03-01T12:00:00Z');

function design(rest: Partial<Design> = {}): Design {
  return designFromLetters(letters, { title: 'Tern over Holm', designer: 'Ines Marlow', ...rest });
}

async function made(of: Design): Promise<{ bytes: Uint8Array; pages: number; notices: readonly string[] }> {
  const result = await makePattern(of, { paper: 'a4', units: 'metric', date });
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
}

describe('a pattern as PDF', { timeout: 30_000 }, () => {
  it('has the pages that were laid out, each in the outline', async () => {
    const { bytes, pages } = await made(design({ pattern: { parts: [...parts] } }));
    const pdf = await read(bytes);
    expect(pdf.numPages).toBe(pages);
    const titles = (await outlineOf(pdf)).map(({ title, page, entries }) => [
      page,
      title,
      ...entries.map((entry) => [entry.page, entry.title]),
    ]);
    expect(titles).toEqual([
      [1, 'Cover'],
      [2, 'Materials'],
      [3, 'How to read and tie the chart'],
      [4, 'The knots explained', [5, 'The knots explained, continued']],
      [6, 'Chart, rows 1–5, cords 1–16'],
      [7, 'Written rows'],
      [8, 'Cautions and care'],
    ]);
  });

  it('is labelled with the page numbers that are printed; a cover, which has none, with its name', async () => {
    const pdf = await read((await made(design({ pattern: { parts: [...parts] } }))).bytes);
    expect(await pdf.getPageLabels()).toEqual(['Cover', '2', '3', '4', '5', '6', '7', '8']);
  });

  it('carries title, designer, what it is, language and the day it was given', async () => {
    const pdf = await read((await made(design())).bytes);
    const { info } = (await pdf.getMetadata()) as unknown as { info: Record<string, string> };
    expect(info).toMatchObject({
      Title: 'Tern over Holm',
      Author: 'Ines Marlow',
      Subject: expect.stringMatching(/^Pattern for a knotted wall hanging: 16 cords, \d+ rows$/),
      Keywords: expect.stringContaining('wall hanging, '),
      Language: 'en',
      CreationDate: 'D:20260301120000Z',
      ModDate: 'D:20260301120000Z',
    });
  });

  it('prints the symbols of the chart as text, row by row in the order of the chart', async () => {
    const pdf = await read((await made(design())).bytes);
    const words = await wordsOn(pdf, await pageOf(pdf, 'Chart'));
    const rows = new Map<number, Words[]>();
    for (const word of words.filter(({ str }) => /^[a-d]+$/.test(str))) {
      rows.set(word.y, [...(rows.get(word.y) ?? []), word]);
    }
    const chartRows = [...rows.values()].map((row) => row.map(({ str }) => str).join(''));
    expect(chartRows.slice(0, 5)).toEqual(letters.map((row) => row.replaceAll('-', '')));
  });

  it('prints the rows in words', async () => {
    const pdf = await read((await made(design())).bytes);
    const text = await textOf(pdf, await pageOf(pdf, 'Written rows'));
    expect(text).toContain('Row 1, left to right: 8 Linen (1–8), 2 Dusk (9–10), 6 Linen (11–16); lift 9, 11');
    expect(text).toContain(
      'Row 4, right to left: 3 Linen (16–14), 8 Tide (13–6), 2 bare (5–4), 3 Linen (3–1)',
    );
  });

  it('prints the cautions, and what to buy', async () => {
    const pdf = await read((await made(design())).bytes);
    const materials = await textOf(pdf, await pageOf(pdf, 'Materials'));
    for (const word of ['Yarn', 'Cord', 'Dowel and tools', 'Take care', 'Linen', '1 × 50 g', 'estimate']) {
      expect(materials).toContain(word);
    }
    expect(await textOf(pdf, await pageOf(pdf, 'Cautions'))).toContain('Cords and loops can strangle.');
  });

  it('is read aloud in order: headings, paragraphs, and the chart as a figure with words of its own', async () => {
    const pdf = await read((await made(design())).bytes);
    const page = await pdf.getPage(await pageOf(pdf, 'Chart'));
    const tree = JSON.stringify(await page.getStructTree());
    expect(tree).toContain('"role":"H1"');
    expect(tree).toContain('"role":"Figure"');
    expect(tree).toContain('Chart, rows 1 to 5, cords 1 to 16.');
  });

  it('is read aloud with each drawing of a knot as one figure, before its sentence', async () => {
    const pdf = await read((await made(design())).bytes);
    const page = await pdf.getPage(await pageOf(pdf, 'The knots explained'));
    const tree = JSON.stringify(await page.getStructTree());
    expect(tree.match(/"role":"Figure"/g)).toHaveLength(12);
    const fold = 'The cord lies over the front of the dowel twice; its fold hangs behind the dowel.';
    expect(tree.slice(tree.indexOf(fold)).indexOf('"role":"P"')).toBeGreaterThan(0);
  });

  it('prints Greek and Cyrillic names as they are', async () => {
    const base = design();
    const names = ['Πράσινο ελιάς', 'Тёмно-синяя', 'Łąka', 'Ḉedilla'];
    const yarns = base.yarns.map((yarn, i) => ({ ...yarn, name: names[i] ?? yarn.name }));
    const { bytes, notices } = await made(design({ yarns, title: 'Φάρος и Маяк' }));
    const pdf = await read(bytes);
    const text = await textOf(pdf, await pageOf(pdf, 'Materials'));
    for (const name of names) expect(text).toContain(name);
    expect(notices).toEqual([]);
  });

  it('puts a question mark for letters that the faces lack, and says so', async () => {
    const { bytes, notices } = await made(design({ title: 'Kite 名' }));
    expect(await textOf(await read(bytes), 1)).toContain('Kite ?');
    expect(notices.join()).toContain('“Kite 名”');
  });

  it('is the same bytes for the same design and day', async () => {
    const [first, second] = [await made(design()), await made(design())];
    expect(Buffer.from(first.bytes).equals(Buffer.from(second.bytes))).toBe(true);
  });

  it('is made of a chart that is wholly bare', async () => {
    const { bytes } = await made(designFromLetters(['---', '---']));
    const pdf = await read(bytes);
    expect(await textOf(pdf, await pageOf(pdf, 'Written rows'))).toContain('all bare, nothing to tie');
  });

  it('is refused with the plan’s own sentence where a piece can’t hold a knot', async () => {
    const base = design();
    const short = design({ tying: { ...base.tying, workingLengthMm: 100 } });
    const result = await makePattern(short, { paper: 'a4', units: 'metric', date });
    expect(result.ok).toBe(false);
  });
});

describe('making a pattern', { timeout: 30_000 }, () => {
  it('tells how far it is, and ends at the whole', async () => {
    const steps: number[] = [];
    await makePattern(design(), {
      paper: 'letter',
      units: 'both',
      date,
      onProgress: ({ done }) => steps.push(done),
    });
    expect(steps.at(-1)).toBe(1);
    expect(steps).toEqual([...steps].sort((a, b) => a - b));
    expect(steps.length).toBeGreaterThan(5);
  });

  it('leaves nothing when it is cancelled between two pages', async () => {
    const cancel = new AbortController();
    let seen = 0;
    const result = await makePattern(design(), {
      paper: 'a4',
      units: 'metric',
      date,
      signal: cancel.signal,
      onProgress: () => {
        if (++seen === 3) cancel.abort();
      },
    });
    expect(result).toMatchObject({ ok: false, problem: { code: 'cancelled' } });
    expect(seen).toBe(3);
  });
});
