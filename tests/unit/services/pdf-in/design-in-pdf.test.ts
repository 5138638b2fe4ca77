import { deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { makePattern } from '../../../../app/services/pattern/make-pattern.ts';
import { designInPdf, isPdf } from '../../../../app/services/pdf-in/design-in-pdf.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { limits } from '../../../../shared/design/limits.ts';
import { writeDesign } from '../../../../shared/design/write-design.ts';
import { designFromLetters } from '../../../notation.ts';

const design = designFromLetters(['aab-', 'bbaa'], { title: 'Ψαράς над морем (2)' });

async function pattern(of: Design, attachDesign: boolean): Promise<Uint8Array> {
  const made = await makePattern(of, {
    paper: 'a4',
    units: 'metric',
    date: new Date('2026-03-01T12:00:00Z'),
    attachDesign,
  });
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value.bytes;
}

/** The title of the design inside, or the code of what is wrong. */
function outcome(bytes: Uint8Array | string): string {
  const inside = designInPdf(typeof bytes === 'string' ? Buffer.from(bytes, 'latin1') : bytes);
  return inside.ok ? inside.value.design.title : inside.problem.code;
}

const packed = deflateSync(writeDesign(design)).toString('latin1');

function stream(dictionary: string, bytes: string, length: number | string = bytes.length): string {
  return `<< ${dictionary} /Length ${length} >>\nstream\n${bytes}\nendstream`;
}

/** A PDF of these objects, by their numbers, as other programs may write it: without a table of places that is right. */
function pdf(objects: Record<number, string>, trailer = '/Root 1 0 R'): string {
  const body = Object.entries(objects).map(([number, object]) => `${number} 0 obj\n${object}\nendobj\n`);
  return `%PDF-1.7\n${body.join('')}xref\n0 1\ntrailer\n<< ${trailer} >>\nstartxref\n7\n%%EOF`;
}

const plain = {
  1: '<< /Type /Catalog /Names 2 0 R >>',
  2: '<< /EmbeddedFiles << /Kids [3 0 R] >> >>',
  3: '<< /Names [(a) 4 0 R] >>',
  4: '<< /Type /Filespec /F (fox.larkrow) /EF << /F 5 0 R >> >>',
  5: stream('/Type /EmbeddedFile /Filter /FlateDecode', packed),
};

describe('the design inside a pattern', () => {
  it('is the one that the pattern was made from, value for value', async () => {
    const inside = designInPdf(await pattern(design, true));
    expect(inside.ok && inside.value.design).toEqual(design);
    expect(inside.ok && Buffer.from(inside.value.bytes).toString()).toBe(writeDesign(design));
  });

  it('is none where the pattern was made for a buyer', async () => {
    expect(outcome(await pattern(design, false))).toBe('no-design-inside');
  });

  it('is found however the file was saved again', () => {
    const { title } = design;
    expect(outcome(pdf(plain))).toBe(title);
    expect(outcome(pdf({ ...plain, 5: stream('', writeDesign(design)) }))).toBe('damaged');
    const utf8 = Buffer.from(writeDesign(design)).toString('latin1');
    expect(outcome(pdf({ ...plain, 5: stream('', utf8) }))).toBe(title);
    expect(
      outcome(pdf({ ...plain, 5: stream('/Filter [/FlateDecode]', packed, '6 0 R'), 6: `${packed.length}` })),
    ).toBe(title);
    expect(outcome(pdf({ ...plain, 5: stream('/Filter /FlateDecode', packed, 7) }))).toBe(title);
    expect(outcome(pdf({ ...plain, 1: '<< /AF [4 0 R] >>' }))).toBe(title);
    expect(outcome(pdf({ ...plain, 4: '<< /UF <FEFF002E> /EF << /UF 5 0 R >> >>' }))).toBe(title);
    // Changed by adding to its end: the later object counts.
    expect(outcome(`${pdf({ ...plain, 5: 'null' })}\n${pdf(plain)}`)).toBe(title);
    expect(outcome(`${pdf(plain)}\n${pdf({ 5: 'null' })}`)).toBe('no-design-inside');
  });

  it('is found among objects that are packed into a stream', () => {
    const { 5: file, ...rest } = plain;
    const texts = Object.values(rest);
    const head = texts
      .map((_, i) => `${i + 1} ${texts.slice(0, i).join(' ').length + (i > 0 ? 1 : 0)}`)
      .join(' ');
    const bytes = deflateSync(`${head} ${texts.join(' ')}`).toString('latin1');
    const all = stream(`/Type /ObjStm /N 4 /First ${head.length + 1} /Filter /FlateDecode`, bytes);
    expect(outcome(pdf({ 5: file, 9: all }))).toBe(design.title);
  });

  it('is taken by its name before other files, and where it is called otherwise', () => {
    const other = {
      ...plain,
      6: stream('', '{"format": "other"}'),
      7: '<< /F (a.json) /EF << /F 6 0 R >> >>',
    };
    const both = { ...other, 3: '<< /Names [(a) 7 0 R (b) 4 0 R] >>' };
    expect(outcome(pdf(both))).toBe(design.title);
    expect(outcome(pdf({ ...both, 4: plain[4].replace('.larkrow', '.json') }))).toBe(design.title);
    expect(outcome(pdf({ ...other, 3: '<< /Names [(a) 7 0 R] >>' }))).toBe('no-design-inside');
  });

  it('is told in a sentence where it is damaged, locked away, or no PDF at all', () => {
    const garbled = Buffer.from(writeDesign(design).replace('"rows"', '"lost"')).toString('latin1');
    expect(outcome(pdf({ ...plain, 5: stream('', garbled) }))).toBe('damaged');
    const locked = { ...plain, 5: stream('/Filter /FlateDecode', 'kdjfh') };
    expect(outcome(pdf(locked, '/Root 1 0 R /Encrypt 8 0 R'))).toBe('locked');
    expect(outcome(pdf(locked))).toBe('no-design-inside');
    expect(outcome('%PDF-1.7')).toBe('no-design-inside');
    expect(outcome('')).toBe('no-design-inside');
  });

  it('is looked for in files that lead in circles, and in none that are too large', () => {
    const circles = {
      1: '<< /Names 1 0 R /EmbeddedFiles 1 0 R /Kids [1 0 R 2 0 R] /AF 3 0 R >>',
      2: '2 0 R',
      3: '[3 0 R 1 0 R]',
    };
    expect(outcome(pdf(circles))).toBe('no-design-inside');
    expect(outcome(pdf({ ...plain, 4: `${'['.repeat(100_000)}` }))).toBe('no-design-inside');
    const { buffer } = new Uint8Array(limits.patternBytes + 1);
    expect(outcome(new Uint8Array(buffer, 0, limits.patternBytes))).toBe('no-design-inside');
    expect(outcome(new Uint8Array(buffer))).toBe('too-large');
  });

  it('is not unpacked beyond what a design may have', () => {
    const bomb = deflateSync(Buffer.alloc(limits.fileBytes + 1)).toString('latin1');
    const start = performance.now();
    expect(outcome(pdf({ ...plain, 5: stream('/Filter /FlateDecode', bomb) }))).toBe('no-design-inside');
    expect(performance.now() - start).toBeLessThan(2_000);
  });
});

describe('a PDF', () => {
  it('is known by its first bytes, even where some stand before them', async () => {
    expect(isPdf(await pattern(design, false))).toBe(true);
    expect(isPdf(Buffer.from(`\0\0\n${pdf(plain)}`, 'latin1'))).toBe(true);
    expect(isPdf(Buffer.from(writeDesign(design)))).toBe(false);
  });
});
