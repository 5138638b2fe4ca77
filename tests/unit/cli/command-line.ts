/** The command line as the tests call it, and what it is given. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { run } from '../../../app/cli/run.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { designFromLetters } from '../../notation.ts';
import { temporaryFolder } from '../../temporary-folder.ts';

export const script = fileURLToPath(new URL('../../../build/larkrow.mjs', import.meta.url));

interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** The same call within this process: most tests need no more. */
export async function larkrow(standing: string, ...words: string[]): Promise<Ran> {
  let [out, err] = ['', ''];
  const code = await run(words, {
    path: (given) => resolve(standing, given),
    print: (text) => {
      out += text;
    },
    remark: (text) => {
      err += text;
    },
  });
  return { code, out, err };
}

/** Runs the command line as npm does: somewhere else, with the person's own folder in INIT_CWD. */
export async function spawned(standing: string, ...words: string[]): Promise<Ran> {
  const child = spawn(process.execPath, [script, ...words], {
    cwd: fileURLToPath(new URL('../../..', import.meta.url)),
    env: { ...process.env, INIT_CWD: standing },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let [out, err] = ['', ''];
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    out += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    err += text;
  });
  const [code] = (await once(child, 'close')) as [number | null];
  return { code, out, err };
}

/** A folder with one design, and one that is torn. */
export function folderWithFox(): string {
  const folder = temporaryFolder();
  writeFileSync(
    join(folder, 'Fox.larkrow'),
    writeDesign(designFromLetters(['aabb', 'b-ba'], { title: 'Fox' })),
  );
  writeFileSync(
    join(folder, 'Torn.larkrow'),
    readFileSync(join(folder, 'Fox.larkrow'), 'utf8').slice(0, 400),
  );
  return folder;
}

/** Left half black, right half white. */
export async function blackAndWhite(path: string): Promise<void> {
  const pixels = Uint8Array.from({ length: 8 * 6 * 3 }, (_, i) => (Math.floor(i / 3) % 8 < 4 ? 0 : 255));
  await sharp(pixels, { raw: { width: 8, height: 6, channels: 3 } })
    .png()
    .toFile(path);
}
