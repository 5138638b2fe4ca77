import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { nodeFiles } from '../../../../app/services/files/file-layer.ts';
import { sweep } from '../../../../app/services/safekeeping/sweep.ts';
import { temporaryFolder } from '../../../temporary-folder.ts';
import { isWhole, versionBytes } from './version-bytes.ts';

const KILLS = 40;

/** The child as one file, so that it starts in a moment. */
async function childProgram(folder: string): Promise<string> {
  const outfile = join(folder, 'saving-child.mjs');
  const entry = fileURLToPath(new URL('./saving-child.ts', import.meta.url));
  await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    logLevel: 'error',
  });
  return outfile;
}

/** Lets a child save, and kills it within the next moments, without a chance to tidy up. */
async function killWhileSaving(program: string, path: string, way: 'safely' | 'truncating'): Promise<void> {
  const child: ChildProcess = spawn(process.execPath, [program, path, way], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  await once(child.stdout!, 'data');
  await setTimeout(Math.random() * 25);
  child.kill('SIGKILL');
  await once(child, 'exit');
}

describe('a kill during a save', () => {
  it(`leaves the whole old or the whole new version, ${KILLS} times`, async () => {
    const program = await childProgram(temporaryFolder());
    const folder = temporaryFolder();
    const path = join(folder, 'Fox.larkrow');
    writeFileSync(path, versionBytes(1_000_000));
    let left = 0;
    for (let kill = 1; kill <= KILLS; kill++) {
      await killWhileSaving(program, path, 'safely');
      expect(isWhole(readFileSync(path)), `kill ${kill}`).toBe(true);
      left += readdirSync(folder).length - 1;
      await sweep(nodeFiles, folder, Date.now());
      expect(readdirSync(folder), `kill ${kill}: what was left is swept`).toEqual(['Fox.larkrow']);
    }
    // Most kills fall into the middle of a save, or this would show nothing.
    expect(left).toBeGreaterThan(KILLS / 4);
  });

  it('is seen to tear the file of a program that empties it first, so the kills above are real', async () => {
    const program = await childProgram(temporaryFolder());
    const path = join(temporaryFolder(), 'Fox.larkrow');
    let torn = false;
    for (let kill = 1; kill <= KILLS && !torn; kill++) {
      await killWhileSaving(program, path, 'truncating');
      torn = !isWhole(readFileSync(path));
    }
    expect(torn).toBe(true);
  });
});
