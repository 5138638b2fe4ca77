import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** Small files, and words of what our rules say of them; null where they are content. */
const canaries: Record<string, { text: string; complaint: string | null }> = {
  'shared/clock.ts': {
    text: 'export const now = () => Date.now();\n',
    complaint: 'takes the time and chance',
  },
  'shared/today.ts': {
    text: 'export const today = () => new Date();\n',
    complaint: 'takes the time and chance',
  },
  'shared/chance.ts': {
    text: 'export const dice = () => Math.random();\n',
    complaint: 'takes the time and chance',
  },
  'shared/said.ts': { text: "console.log('a knot');\n", complaint: 'Do not use the global' },
  'shared/process.ts': {
    text: 'export const home = process.env.HOME;\n',
    complaint: 'Do not use the global',
  },
  'shared/page.ts': {
    text: 'export const title = () => document.title;\n',
    complaint: 'Do not use the global',
  },
  'shared/given.ts': {
    text: 'export const year = (day: number) => new Date(day).getFullYear();\n',
    complaint: null,
  },
  'app/clock.ts': { text: 'export const now = () => Date.now();\n', complaint: null },
  'renderer/any.ts': { text: 'export const yarn: any = 1;\n', complaint: 'Unexpected any' },
};

interface Report {
  diagnostics: { message: string; location: { path: string | { file: string } } }[];
}

describe('the linter', () => {
  const project = mkdtempSync(join(tmpdir(), 'larkrow-lint-'));
  let report: Report;

  beforeAll(() => {
    cpSync(join(root, 'biome.json'), join(project, 'biome.json'));
    cpSync(join(root, 'build/lint'), join(project, 'build/lint'), { recursive: true });
    for (const [path, { text }] of Object.entries(canaries)) {
      mkdirSync(dirname(join(project, path)), { recursive: true });
      writeFileSync(join(project, path), text);
    }
    const { stdout } = spawnSync(
      process.execPath,
      [join(root, 'node_modules/@biomejs/biome/bin/biome'), 'lint', '--reporter=json', '--vcs-enabled=false'],
      { cwd: project, encoding: 'utf8' },
    );
    report = JSON.parse(stdout) as Report;
  });
  afterAll(() => rmSync(project, { recursive: true, force: true }));

  it.each(Object.entries(canaries))('judges %s rightly', (path, { complaint }) => {
    const said = report.diagnostics
      .filter(({ location }) => JSON.stringify(location.path).includes(path))
      .map(({ message }) => message);
    if (complaint === null) expect(said).toEqual([]);
    else expect(said.join('\n')).toContain(complaint);
  });
});
