import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { faultOf } from '../../shared/design/check-design.ts';
import type { Design } from '../../shared/design/design.ts';
import { apply } from '../../shared/design/edits.ts';
import { readDesign, readDesignBytes } from '../../shared/design/read-design.ts';
import { codesAllowed, readRow, writeRow } from '../../shared/design/row-text.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import { arbitraryDesign } from './arbitrary-design.ts';
import { randomEdit, seeded } from './random-edit.ts';

fc.configureGlobal({ seed: 1_000 });

function opened(text: string): Design {
  const read = readDesign(text);
  if (!read.ok) throw new Error(read.problem.sentence);
  return read.value;
}

describe('a design through its file', () => {
  it('comes back as it was, keys of other versions included', () => {
    fc.assert(
      fc.property(arbitraryDesign(), (design) => {
        expect(opened(writeDesign(design))).toEqual(design);
      }),
      { numRuns: 300 },
    );
  });

  it('gives the same bytes again when it is written again', () => {
    fc.assert(
      fc.property(arbitraryDesign(), (design) => {
        const text = writeDesign(design);
        expect(writeDesign(opened(text))).toBe(text);
      }),
      { numRuns: 300 },
    );
  });

  it('is the same whatever the order of the keys and the white space of the file', () => {
    fc.assert(
      fc.property(arbitraryDesign(), (design) => {
        const text = writeDesign(design);
        const backwards = JSON.stringify(JSON.parse(text), (_, value: unknown) =>
          typeof value === 'object' && value !== null && !Array.isArray(value)
            ? Object.fromEntries(Object.entries(value).reverse())
            : value,
        );
        expect(writeDesign(opened(backwards))).toBe(text);
      }),
      { numRuns: 200 },
    );
  });

  it('survives the way through UTF-8 bytes, with and without a byte-order mark', () => {
    fc.assert(
      fc.property(arbitraryDesign(), fc.boolean(), (design, marked) => {
        const text = writeDesign(design);
        const read = readDesignBytes(new TextEncoder().encode(marked ? `\uFEFF${text}` : text));
        expect(read.ok && writeDesign(read.value)).toBe(text);
      }),
      { numRuns: 100 },
    );
  });

  it('can be opened again after any edits that the studio makes', () => {
    fc.assert(
      fc.property(arbitraryDesign(), fc.integer(), (design, seed) => {
        const random = seeded(seed);
        let next = design;
        for (let left = 30; left > 0; left--) next = apply(next, randomEdit(random, next));
        expect(faultOf(next)).toBeNull();
        expect(opened(writeDesign(next))).toEqual(next);
      }),
      { numRuns: 200 },
    );
  });
});

describe('a row as text', () => {
  const allowed = codesAllowed([{ id: 'y1' }, { id: 'y9' }, { id: 'y10' }, { id: 'y64' }]);
  const code = fc.constantFrom(0, 255, 1, 9, 10, 64);

  it('comes back as it was', () => {
    fc.assert(
      fc.property(
        fc.uint8Array({ minLength: 1, maxLength: 1000 }),
        fc.array(code, { minLength: 1 }),
        (raw, codes) => {
          const row = raw.map((byte) => codes[byte % codes.length]!);
          expect(readRow(writeRow(row), row.length, allowed)).toEqual(row);
        },
      ),
    );
  });

  it('may hold equal neighbours when it is read, and never when it is written', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 20 }), fc.constantFrom('.', '-', 'y1', 'y64')), {
          minLength: 1,
          maxLength: 40,
        }),
        (tokens) => {
          const columns = tokens.reduce((sum, [count]) => sum + count, 0);
          const row = readRow(tokens.map(([count, mark]) => `${count}${mark}`).join(' '), columns, allowed);
          if (typeof row === 'string') throw new Error(row);
          const marks = writeRow(row)
            .split(' ')
            .map((token) => token.replace(/^\d+/, ''));
          expect(marks.some((mark, i) => mark === marks[i + 1])).toBe(false);
        },
      ),
    );
  });

  it('is refused where its counts add up to anything else', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1000 }), fc.integer({ min: 1, max: 1000 }), (cells, columns) => {
        const row = readRow(`${cells}y1`, columns, allowed);
        if (cells === columns) expect(row).toBeInstanceOf(Uint8Array);
        else expect(row).toContain(`instead of ${columns}`);
      }),
    );
  });
});
