import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const itself = fileURLToPath(import.meta.url);

const sources = ['app', 'build', 'renderer', 'shared', 'tests']
  .flatMap((folder) => readdirSync(join(root, folder), { recursive: true, withFileTypes: true }))
  .filter((entry) => entry.isFile() && /\.(ts|tsx|mjs|cjs|css|html)$/.test(entry.name))
  .map((entry) => join(entry.parentPath, entry.name))
  .filter((path) => path !== itself)
  .map((path) => ({ path: relative(root, path), lines: readFileSync(path, 'utf8').split('\n') }));

const unwanted: [what: string, pattern: RegExp][] = [
  ['work that is put off', /\b(TODO|FIXME|XXX)\b/],
  ['a rule that is switched off', /@ts-(ignore|expect-error|nocheck)|biome-ignore/],
  [
    'a test that is left out or runs alone',
    /\b(it|test|describe)(\.\w+)*\.(skip|only|todo|skipIf|runIf|fails)\b/,
  ],
  ['a path of one machine', /['"`(]\/(tmp|work|root)\//],
];

describe('the sources', () => {
  it('are found', () => {
    expect(sources.length).toBeGreaterThan(100);
  });

  it('are split before they grow over 400 lines, and tests, which are lists of cases, over 500', () => {
    const most = (path: string) => (path.startsWith('tests/') ? 500 : 400);
    const long = sources.filter(({ path, lines }) => lines.length > most(path) + 1);
    expect(long.map(({ path }) => path)).toEqual([]);
  });

  it.each(unwanted)('hold nothing of %s', (_, pattern) => {
    const found = sources.flatMap(({ path, lines }) =>
      lines.flatMap((line, index) => (pattern.test(line) ? [`${path}:${index + 1}: ${line.trim()}`] : [])),
    );
    expect(found).toEqual([]);
  });
});
