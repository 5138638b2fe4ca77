import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { setUp } from '../set-up.mjs';
import { Stop } from '../stop.mjs';
import { runChild } from './child.mjs';
import { make } from './make.mjs';
import { root } from './root.mjs';

const folder = join(root, 'tests', 'bench');

/**
 * Runs measurements one after the other, each in a process of its own: what one leaves in memory does not weigh on
 * the next.
 *
 * @param {readonly string[]} words  names of measurements; words that begin with - go to each of them
 */
export async function runBenches(words) {
  const names = words.filter((word) => !word.startsWith('-'));
  const options = words.filter((word) => word.startsWith('-'));
  const there = readdirSync(folder).flatMap((name) => /^([\w-]+)\.ts$/.exec(name)?.[1] ?? []);
  const unknown = names.find((name) => !there.includes(name));
  if (unknown !== undefined || names.length === 0) {
    const fault = unknown === undefined ? 'Name what to measure' : `There is no measurement ${unknown}`;
    throw new Stop(`${fault}: npm run bench -- ${there.join(' | ')}`);
  }
  await setUp();
  await make();
  for (const name of names) {
    const script = join(folder, `${name}.ts`);
    const { code } = await runChild(
      process.execPath,
      ['--import', import.meta.resolve('tsx'), script, ...options],
      {
        show: true,
      },
    );
    if (code !== 0) throw new Stop(`The measurement ${name} failed: see above.`);
  }
}
