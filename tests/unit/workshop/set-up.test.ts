import { spawn } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';

const build = fileURLToPath(new URL('../../../build', import.meta.url));
const clones: string[] = [];

afterEach(() => {
  for (const clone of clones.splice(0)) rmSync(clone, { recursive: true, force: true });
});

/** Stands in for npm: notes how it was called, takes a moment, and installs nothing but its own note. */
const standIn = `
const { appendFileSync, mkdirSync, writeFileSync } = require('node:fs');
appendFileSync('calls.txt', process.argv.slice(2).join(' ') + '\\n');
setTimeout(() => {
  if (process.env.FAULT) {
    console.error(process.env.FAULT);
    process.exit(1);
  }
  mkdirSync('node_modules', { recursive: true });
}, 300);
`;

/** A fresh clone: the scripts, a lock, no libraries. */
function freshClone() {
  const clone = mkdtempSync(join(tmpdir(), 'larkrow-clone-'));
  clones.push(clone);
  cpSync(build, join(clone, 'build'), { recursive: true });
  writeFileSync(join(clone, 'package-lock.json'), lockOf('1.0.0'));
  writeFileSync(join(clone, 'npm-cli.js'), standIn);
  return clone;
}

function lockOf(version: string) {
  const packages = {
    '': {},
    'node_modules/yarn-count': { version },
    'node_modules/other': { optional: true },
  };
  return JSON.stringify({ packages });
}

/** Sets the clone up, with the stand-in for npm. */
function setUp(clone: string, fault = ''): Promise<{ code: number | null; said: string; faults: string }> {
  const script =
    "import { run } from './build/stop.mjs'; import { setUp } from './build/set-up.mjs'; await run(() => setUp());";
  const child = spawn(process.execPath, ['--input-type=module', '-e', script], {
    cwd: clone,
    env: { ...process.env, npm_execpath: join(clone, 'npm-cli.js'), FAULT: fault, NODE_ENV: 'production' },
  });
  let said = '';
  let faults = '';
  child.stdout.on('data', (text) => {
    said += text;
  });
  child.stderr.on('data', (text) => {
    faults += text;
  });
  return new Promise((resolve) => child.on('close', (code) => resolve({ code, said, faults })));
}

const calls = (clone: string) => readFileSync(join(clone, 'calls.txt'), 'utf8').trim().split('\n');

describe('setting up a fresh clone', () => {
  it('installs what the lock names, the tools too, without running any script of a package, and says so', async () => {
    const clone = freshClone();
    const { code, said } = await setUp(clone);
    expect(code).toBe(0);
    expect(calls(clone)).toEqual([expect.stringMatching(/^ci --include=dev .*--ignore-scripts/)]);
    expect(said).toMatch(/^Installing the libraries .*\nInstalled in \d.*s\.\n$/);
  });

  it('does it once', async () => {
    const clone = freshClone();
    await setUp(clone);
    expect(await setUp(clone)).toEqual({ code: 0, said: '', faults: '' });
    expect(calls(clone)).toHaveLength(1);
  });

  it('does it again where the lock has changed', async () => {
    const clone = freshClone();
    await setUp(clone);
    writeFileSync(join(clone, 'package-lock.json'), lockOf('1.0.1'));
    await setUp(clone);
    expect(calls(clone)).toHaveLength(2);
  });

  it('does it again where the libraries are those of another machine', async () => {
    const clone = freshClone();
    await setUp(clone);
    const stamp = join(clone, 'node_modules', '.larkrow-stamp');
    writeFileSync(stamp, readFileSync(stamp, 'utf8').replace(/^\S+/, 'amiga-m68k'));
    await setUp(clone);
    expect(calls(clone)).toHaveLength(2);
  });

  it('takes what somebody installed by hand, where it is what the lock names', async () => {
    const clone = freshClone();
    mkdirSync(join(clone, 'node_modules'));
    writeFileSync(join(clone, 'node_modules', '.package-lock.json'), lockOf('1.0.0'));
    await setUp(clone);
    expect(existsSync(join(clone, 'calls.txt'))).toBe(false);
  });

  it('installs once where two start at the same moment', async () => {
    const clone = freshClone();
    // So slow that the second has started, however busy the machine is.
    writeFileSync(join(clone, 'npm-cli.js'), standIn.replace('}, 300)', '}, 3000)'));
    const both = await Promise.all([setUp(clone), setUp(clone)]);
    expect(both.map(({ code }) => code)).toEqual([0, 0]);
    expect(calls(clone)).toHaveLength(1);
    expect(both.map(({ said }) => said).join('')).toContain('waiting for it');
  });

  it('is not held up by an install that was killed', async () => {
    const clone = freshClone();
    const note = join(clone, '.larkrow', 'set-up.pid');
    mkdirSync(join(clone, '.larkrow'));
    writeFileSync(note, String(process.pid));
    const longAgo = new Date(Date.now() - 3_600_000);
    utimesSync(note, longAgo, longAgo);
    expect((await setUp(clone)).code).toBe(0);
    expect(calls(clone)).toHaveLength(1);
  });

  it.each([
    ['npm error code ENOTFOUND', 'the npm registry could not be reached: check the connection'],
    ['npm error code ENOSPC', 'the disk is full: free some space'],
    ['npm error code EACCES', 'this folder may not be written to'],
    ['npm error code EUNHEARD', 'read what npm says above'],
  ])('passes on %s, and closes with a sentence that says what to do', async (fault, sentence) => {
    const clone = freshClone();
    const { code, faults } = await setUp(clone, fault);
    const lines = faults.trim().split('\n');
    expect(code).toBe(1);
    expect(lines[0]).toBe(fault);
    expect(lines.at(-1)).toContain(`npm could not install the libraries: ${sentence}`);
    expect(existsSync(join(clone, '.larkrow', 'set-up.pid'))).toBe(false);
  });
});
