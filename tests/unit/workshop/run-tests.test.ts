import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const projects: string[] = [];

afterEach(() => {
  for (const project of projects.splice(0)) rmSync(project, { recursive: true, force: true });
});

/** Runs npm test's script over a project of these test files, and nothing else in it. */
function runTests(files: Record<string, string>, words: string[]) {
  const project = mkdtempSync(join(tmpdir(), 'larkrow-tests-'));
  projects.push(project);
  cpSync(join(root, 'build'), join(project, 'build'), { recursive: true });
  for (const name of ['package.json', 'package-lock.json']) cpSync(join(root, name), join(project, name));
  symlinkSync(join(root, 'node_modules'), join(project, 'node_modules'), 'junction');
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(project, path)), { recursive: true });
    writeFileSync(join(project, path), `import { expect, it } from 'vitest';\n${text}`);
  }
  const { status, stdout, stderr } = spawnSync(process.execPath, ['build/test.mjs', '--fast', ...words], {
    cwd: project,
    encoding: 'utf8',
  });
  return { status, last: stdout.trimEnd().split('\n').at(-1), stdout, stderr };
}

const passing = "it('passes', () => expect(1).toBe(1));\n";

describe('npm test', () => {
  it('sums every part in its last line, and counts what could not even be run', () => {
    const { status, last, stdout, stderr } = runTests(
      {
        'tests/unit/knots.test.ts': `${passing}it('fails', () => expect(1).toBe(2));\nit.${'skip'}('waits', () => {});\n`,
        'tests/reference/knots.test.ts': "throw new Error('not even loaded');\n",
        'tests/property/knots.test.ts': passing,
      },
      ['knots'],
    );
    // One failure more is that of the page, whose sources this project lacks.
    expect(last).toBe('2 passed, 3 failed, 1 skipped');
    expect(status).toBe(1);
    expect(stderr).toContain('could not make the page');
    // Whatever else was printed, what failed is told once more at the end, and how.
    const told = stdout.slice(stdout.indexOf('== failed'));
    expect(told).toContain('tests/unit/knots.test.ts: fails\n    AssertionError: expected 1 to be 2');
    expect(told).toMatch(/tests\/reference\/knots\.test\.ts\n {4}.*not even loaded/);
  });

  it('counts an error outside any test', () => {
    const { status, last } = runTests(
      { 'tests/unit/loose.test.ts': `${passing}Promise.reject(new Error('loose'));\n` },
      ['loose'],
    );
    expect(last).toBe('1 passed, 2 failed, 0 skipped');
    expect(status).toBe(1);
  });

  it('fails where a word on the command line chooses nothing', () => {
    const { status, last, stderr } = runTests({ 'tests/unit/knots.test.ts': passing }, ['macaroni']);
    expect(stderr).toContain('No test file has macaroni in its path');
    expect(last).toMatch(/^0 passed, [1-9]\d* failed, 0 skipped$/);
    expect(status).toBe(1);
  });
});
