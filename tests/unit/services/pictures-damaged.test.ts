/**
 * Faults injected: bytes flipped, blocks zeroed, swapped or cut out, ends cut off, in PNG, JPEG and WebP files. A
 * damaged picture may be refused, or read where the format can't tell; it never throws, hangs, or gives a chart that is
 * not one.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lookAtPicture } from '../../../app/services/pictures/look-at-picture.ts';
import { pictureToChart } from '../../../app/services/pictures/picture-to-chart.ts';
import { bridge } from '../../../shared/bridge.ts';
import { codeOf } from '../../../shared/design/codes.ts';
import { kiteOverDunes, sharpOf } from './picture-files.ts';

const scene = kiteOverDunes(16);
const files = await Promise.all([
  sharpOf(scene).png().toBuffer(),
  sharpOf(scene).png({ palette: true }).toBuffer(),
  sharpOf(scene).jpeg().withMetadata({ orientation: 6 }).toBuffer(),
  sharpOf(scene).jpeg({ progressive: true }).withIccProfile('p3').toBuffer(),
  sharpOf(scene).webp().toBuffer(),
  sharpOf(scene).webp({ lossless: true }).toBuffer(),
]);

type Damage = (bytes: Buffer, at: number, value: number) => Buffer;

const damages: Record<string, Damage> = {
  flip: (bytes, at, value) => {
    bytes[at] = bytes[at]! ^ (1 << (value % 8));
    return bytes;
  },
  set: (bytes, at, value) => {
    bytes[at] = value;
    return bytes;
  },
  zero: (bytes, at, value) => bytes.fill(0, at, Math.min(bytes.length, at + value)),
  cutOut: (bytes, at, value) => Buffer.concat([bytes.subarray(0, at), bytes.subarray(at + value)]),
  repeat: (bytes, at, value) => Buffer.concat([bytes.subarray(0, at + value), bytes.subarray(at)]),
  cutOff: (bytes, at) => bytes.subarray(0, at),
};

const damaged = fc
  .record({
    file: fc.constantFrom(...files),
    damage: fc.constantFrom(...Object.values(damages)),
    tenThousandths: fc.integer({ min: 0, max: 9999 }),
    // Headers are short, and more depends on them.
    inHeader: fc.boolean(),
    value: fc.integer({ min: 1, max: 255 }),
  })
  .map(({ file, damage, tenThousandths, inHeader, value }) => {
    const at = Math.floor((tenThousandths / 10_000) * (inHeader ? 200 : file.length));
    return damage(Buffer.from(file), at, value);
  });

describe('a damaged picture', () => {
  it('is refused with a sentence or read as a whole, 400 times', { timeout: 60_000 }, async () => {
    const outcomes = new Map<string, number>();
    await fc.assert(
      fc.asyncProperty(damaged, async (bytes) => {
        const look = await lookAtPicture(bytes);
        if (look.ok) bridge['picture.look'].result.parse(look.value);
        const request = { columns: 12, pitchMm: 5, rowHeightMm: 5, yarns: { count: 4 } };
        const made = await pictureToChart(bytes, request);
        const outcome = made.ok ? 'read' : made.problem.code;
        outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1);
        if (!made.ok) {
          expect(made.problem.sentence).toMatch(/^[A-Z].+\.$/);
          return;
        }
        const { cells, columns, rows, yarns } = bridge['picture.chart'].result.parse(made.value);
        expect(cells.length).toBe(columns * rows);
        expect(new Set(cells)).toEqual(new Set(yarns.map(({ id }) => codeOf(id))));
      }),
      { seed: 13, numRuns: 400 },
    );
    // The damage does find things: many are refused as damaged, some change what no reader looks at.
    expect(outcomes.get('damaged-picture')).toBeGreaterThan(100);
    expect(outcomes.get('not-a-picture')).toBeGreaterThan(5);
    expect(outcomes.get('read')).toBeGreaterThan(5);
  });
});
