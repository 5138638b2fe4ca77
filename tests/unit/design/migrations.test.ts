import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { laws } from '../../../shared/design/check-design.ts';
import { canMigrate, type Migrations, migrate, migrations } from '../../../shared/design/migrations.ts';
import { readDesign } from '../../../shared/design/read-design.ts';
import { DESIGN_VERSION } from '../../../shared/design/schema.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { designFromLetters } from '../../notation.ts';

/** Three made-up versions before the first: each step renames one field and notes that it ran. Ours follow. */
const chain: Migrations = {
  ...migrations,
  [-2]: ({ name, ...file }) => ({ ...file, heading: name, ran: ['-2'] }),
  [-1]: ({ heading, ran, ...file }) => ({ ...file, caption: heading, ran: [...(ran as string[]), '-1'] }),
  0: ({ caption, ran, ...file }) => ({ ...file, title: caption, ran: [...(ran as string[]), '0'] }),
};

describe('an old file', () => {
  const text = writeDesign(designFromLetters(['ab'], { title: 'Once' }));
  const { title, ...rest } = JSON.parse(text) as Record<string, unknown>;
  const old = { ...rest, version: -2, name: title, stranger: { kept: true } };

  it('goes through every step in order, and becomes a file of our version', () => {
    expect(migrate(old, -2, chain)).toMatchObject({
      version: DESIGN_VERSION,
      title: 'Once',
      ran: ['-2', '-1', '0'],
    });
  });

  it('begins at the step of its own version', () => {
    expect(migrate({ ...rest, version: 0, caption: 'Late', ran: [] }, 0, chain)).toMatchObject({
      title: 'Late',
      ran: ['0'],
    });
  });

  it('keeps the keys that no version knows, and is not changed itself', () => {
    const before = JSON.stringify(old);
    expect(migrate(old, -2, chain).stranger).toEqual({ kept: true });
    expect(JSON.stringify(old)).toBe(before);
  });

  it('is opened by way of the steps', () => {
    const read = readDesign(JSON.stringify(old), { steps: chain, laws });
    expect(read.ok && read.value.title).toBe('Once');
  });

  it('of a version that no step leads on from is refused, and never guessed at', () => {
    expect(canMigrate(-3, chain)).toBe(false);
    expect(() => migrate(old, -3, chain)).toThrow('no step from version -3');
  });
});

describe('a design of version 1', () => {
  const stored = readFileSync(new URL('../../examples/v1/everything.larkrow', import.meta.url), 'utf8');

  it('is written as version 2 with no picture under its chart, and is otherwise as it was', () => {
    const read = readDesign(stored);
    expect(read.ok && writeDesign(read.value)).toBe(
      stored.replace('"version": 1', '"version": 2').replace(/\n\}\n$/, ',\n  "reference": null\n}\n'),
    );
  });

  it('that held a key of another program where version 2 has its picture loses that key alone', () => {
    expect(migrate({ version: 1, reference: 'page 7', page: 7 }, 1)).toEqual({
      version: 2,
      reference: null,
      page: 7,
    });
  });
});

describe('the steps of the studio', () => {
  it('lead from each published version to the next, and each published version has a stored example', () => {
    const published = Array.from({ length: DESIGN_VERSION }, (_, i) => i + 1);
    expect(published.every((version) => canMigrate(version))).toBe(true);
    expect(Object.keys(migrations).map(Number)).toEqual(published.slice(0, -1));
    const stored = readdirSync(new URL('../../examples/', import.meta.url));
    expect(stored.sort()).toEqual(published.map((version) => `v${version}`));
  });
});
