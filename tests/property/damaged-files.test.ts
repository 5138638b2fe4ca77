/**
 * 10,000 damaged files, always the same ones: each is answered with a design that is whole, or with one sentence, and
 * soon. `LARKROW_DAMAGED=1000000` tries as many as one wishes.
 */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../shared/chart/chart.ts';
import { laws } from '../../shared/design/check-design.ts';
import type { Design } from '../../shared/design/design.ts';
import { limits } from '../../shared/design/limits.ts';
import { readDesign, readDesignBytes } from '../../shared/design/read-design.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import type { Result } from '../../shared/result.ts';
import { arbitraryDesign } from './arbitrary-design.ts';
import { type Damage, damages } from './damage.ts';
import { pick, seeded } from './random-edit.ts';

type Reader = (bytes: Uint8Array) => Result<Design>;

const files = Number(process.env.LARKROW_DAMAGED ?? 10_000);
const maxMs = 2_000;

const folder = new URL('../examples/', import.meta.url);
const examples = readdirSync(folder, { recursive: true })
  .map(String)
  .filter((name) => name.endsWith('.larkrow'))
  .sort()
  .map((name) => readFileSync(new URL(name.replaceAll('\\', '/'), folder), 'utf8'));
const drawn = fc
  .sample(arbitraryDesign({ maxColumns: 40, maxRows: 30 }), { numRuns: 20, seed: 7 })
  .map(writeDesign);
const sound = [...examples, ...drawn];

interface Finding {
  readonly file: number;
  readonly damage: string;
  readonly what: string;
}

/** Damages `count` files, reads each, and tells what went wrong; a search for one finding ends with it. */
function findings(
  read: Reader,
  count: number,
  seed: number,
  most = Number.POSITIVE_INFINITY,
): { found: Finding[]; opened: number } {
  const random = seeded(seed);
  const kinds = Object.entries(damages) as [string, Damage][];
  const found: Finding[] = [];
  let opened = 0;
  for (let file = 0; file < count && found.length < most; file++) {
    const [damage, make] = kinds[file % kinds.length]!;
    const bytes = make(random, pick(random, sound));
    const start = performance.now();
    try {
      const answer = read(bytes);
      if (answer.ok) opened++;
      const what = answer.ok ? unsound(answer.value) : unclear(answer.problem);
      if (what) found.push({ file, damage, what });
    } catch (thrown) {
      found.push({ file, damage, what: `threw ${String(thrown)}` });
    }
    const ms = performance.now() - start;
    if (ms > maxMs) found.push({ file, damage, what: `took ${Math.round(ms)} ms` });
  }
  return { found, opened };
}

/** Why a design that was opened is not whole; asked without the reader's own laws. */
function unsound(design: Design): string | null {
  const codes = new Set([0, 255, ...design.yarns.map(({ id }) => Number(id.slice(1)))]);
  for (const layer of design.layers) {
    if (layer.rows.length !== design.rows) return `layer ${layer.id} has ${layer.rows.length} rows`;
    for (const row of layer.rows) {
      if (row.length !== design.columns) return `layer ${layer.id} has a row of ${row.length} cells`;
      if (row.some((code) => !codes.has(code))) return `layer ${layer.id} has a cell of no yarn`;
    }
  }
  if (!design.yarns.some(({ id }) => id === design.ground)) return 'the ground is no yarn';
  if (new Set(design.yarns.map(({ id }) => id)).size < design.yarns.length) return 'two yarns share an id';
  if (new Set(design.yarns.map(({ symbol }) => symbol)).size < design.yarns.length)
    return 'two yarns share a symbol';
  if (new Set(design.layers.map(({ id }) => id)).size < design.layers.length) return 'two layers share an id';
  if (design.columns * design.rows * design.layers.length > limits.cells) return 'too many cells';
  if (Object.hasOwn(Object.prototype, 'polluted')) return 'the prototype of all objects was changed';
  if (!isPlain(design)) return 'a value has a prototype of its own';
  if (flatten(design).cells.includes(0)) return 'the flat chart has an empty cell';
  const text = writeDesign(design);
  const again = readDesign(text);
  if (!again.ok) return `it can't be opened again: ${again.problem.sentence}`;
  return writeDesign(again.value) === text ? null : 'it is not the same when it is opened again';
}

function isPlain(value: unknown): boolean {
  if (typeof value !== 'object' || value === null || value instanceof Uint8Array) return true;
  const prototype: unknown = Object.getPrototypeOf(value);
  return (
    (prototype === Object.prototype || prototype === Array.prototype) && Object.values(value).every(isPlain)
  );
}

/** Why a refusal does not help a person. */
function unclear({ code, sentence }: { code: string; sentence: string }): string | null {
  if (!['not-a-design', 'damaged', 'too-large', 'newer-version'].includes(code)) return `the code ${code}`;
  if (!/^[A-Z].{30,}\.$/su.test(sentence)) return `no sentence: ${sentence}`;
  if (sentence.length > 300) return `a long sentence: ${sentence}`;
  if (/undefined|NaN|\[object|Error|something else|\{\w+\}/.test(sentence))
    return `a machine's words: ${sentence}`;
  return null;
}

describe(`${files} damaged files`, () => {
  it('are each opened whole or refused with a sentence, within two seconds, and crash nothing', () => {
    const { found, opened } = findings(readDesignBytes, files, 1);
    expect(found).toEqual([]);
    // Some damage hits only a name or white space; were it most of them, the files would not be damaged enough.
    expect(opened).toBeGreaterThan(files / 50);
    expect(opened).toBeLessThan(files / 3);
  }, 600_000);
});

describe('the search through damaged files', () => {
  /** Our reader without its bytes' check, held to `some` of the laws. */
  const readerWith =
    (some: typeof laws): Reader =>
    (bytes) =>
      readDesign(new TextDecoder().decode(bytes), { steps: {}, laws: some });

  it.each(laws.map((_, i) => i))('finds a reader that forgets law %i', (left) => {
    const forgetful = readerWith(laws.filter((_, i) => i !== left));
    expect(findings(forgetful, 100_000, 2, 1).found).toHaveLength(1);
  });

  it('finds a reader that throws where it should answer', () => {
    const careless: Reader = (bytes) => {
      JSON.parse(new TextDecoder().decode(bytes));
      return readDesignBytes(bytes);
    };
    expect(findings(careless, 200, 3).found.some(({ what }) => what.startsWith('threw'))).toBe(true);
  });
});
