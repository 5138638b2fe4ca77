import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  realpathSync,
  rmSync,
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

/** A clone whose package of Electron holds this in place of what fetches the runtime. Nothing here is Electron. */
function cloneFetchingBy(install: string) {
  const clone = realpathSync(mkdtempSync(join(tmpdir(), 'larkrow-runtime-')));
  clones.push(clone);
  cpSync(build, join(clone, 'build'), { recursive: true });
  const folder = join(clone, 'node_modules', 'electron');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{ "name": "electron", "version": "45.5.0" }');
  writeFileSync(join(folder, 'index.js'), "throw new Error('the package was imported');");
  writeFileSync(join(folder, 'install.js'), install);
  return { clone, folder };
}

/** What `haveElectronRuntime` says and answers in this clone; it gives up after 1 s. */
function ask(clone: string, { retry = false, env = {} }: { retry?: boolean; env?: NodeJS.ProcessEnv } = {}) {
  const script = `
    import { haveElectronRuntime } from './build/workshop/electron-runtime.mjs';
    const lines = [];
    const found = await haveElectronRuntime({ retry: ${retry}, say: (line) => lines.push(line), timeoutMs: 1000 });
    console.log(JSON.stringify({ found: found ?? null, said: lines.join(' ') }));`;
  const { stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', script], {
    cwd: clone,
    env: { ...process.env, ELECTRON_OVERRIDE_DIST_PATH: '', ...env },
    encoding: 'utf8',
  });
  if (stderr) throw new Error(stderr);
  return JSON.parse(stdout) as { found: string | null; said: string };
}

const arrives = `
  const { mkdirSync, writeFileSync } = require('node:fs');
  mkdirSync(__dirname + '/dist');
  writeFileSync(__dirname + '/dist/electron', '', { mode: 0o755 });
  writeFileSync(__dirname + '/path.txt', 'electron');`;

describe("Electron's runtime", () => {
  it('is used where it is there, and nothing is said', () => {
    const { clone, folder } = cloneFetchingBy('process.exit(1)');
    mkdirSync(join(folder, 'dist'));
    writeFileSync(join(folder, 'dist', 'electron'), '', { mode: 0o755 });
    writeFileSync(join(folder, 'path.txt'), 'electron');
    expect(ask(clone)).toEqual({ found: join(folder, 'dist', 'electron'), said: '' });
  });

  it('is found in the folder that ELECTRON_OVERRIDE_DIST_PATH names', () => {
    const { clone, folder } = cloneFetchingBy('process.exit(1)');
    writeFileSync(join(folder, 'path.txt'), 'electron');
    writeFileSync(join(clone, 'electron'), '', { mode: 0o755 });
    expect(ask(clone, { env: { ELECTRON_OVERRIDE_DIST_PATH: clone } }).found).toBe(join(clone, 'electron'));
  });

  it('is fetched where it is missing', () => {
    const { clone, folder } = cloneFetchingBy(arrives);
    const { found, said } = ask(clone);
    expect(found).toBe(join(folder, 'dist', 'electron'));
    expect(said).toMatch(/^Fetching the runtime of Electron 45\.5\.0, .* Fetched it in \d/);
  });

  it('is tried for once: a failure is remembered, until a retry is asked for or Electron changes', () => {
    const { clone, folder } = cloneFetchingBy(
      "require('node:fs').appendFileSync('tries', '.'); process.exit(1)",
    );
    expect(ask(clone).said).toContain('The runtime could not be fetched: using the browser');
    expect(ask(clone).said).toContain('Electron 45.5.0 could not be had before');
    expect(readFileSync(join(clone, 'tries'), 'utf8')).toBe('.');
    writeFileSync(join(folder, 'install.js'), arrives);
    expect(ask(clone).found).toBe(null);
    expect(ask(clone, { retry: true }).found).not.toBe(null);
  });

  it('is tried for again when Electron changes', () => {
    const { clone, folder } = cloneFetchingBy('process.exit(1)');
    ask(clone);
    writeFileSync(join(folder, 'package.json'), '{ "name": "electron", "version": "46.0.0" }');
    expect(ask(clone).said).toContain('Fetching the runtime of Electron 46.0.0');
  });

  it('is given up where it does not arrive in time, with everything that was started for it', async () => {
    const late = `
      const { spawn } = require('node:child_process');
      spawn(process.execPath, ['-e', "setTimeout(() => require('node:fs').writeFileSync('late', ''), 2500)"]);
      setInterval(() => {}, 1000);`;
    const { clone } = cloneFetchingBy(late);
    expect(ask(clone).said).toContain('The runtime did not arrive in 1 s: using the browser');
    await new Promise((resolve) => setTimeout(resolve, 2000));
    expect(existsSync(join(clone, 'late'))).toBe(false);
  });
});
