/**
 * Makes the page and the bundles of the hosts, each only where its sources changed since it was last made. What is
 * being made grows in a folder of its own and takes the old one's place at the end: a start beside it never finds
 * half a page, and two makers do not disturb one another.
 */
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Stop } from '../stop.mjs';
import { runChild } from './child.mjs';
import { root } from './root.mjs';
import { secondsSince } from './seconds.mjs';
import { sourcesHash } from './sources-hash.mjs';

/**
 * @typedef {object} Product
 * @property {string} name       for the person
 * @property {string} folder     where it goes, under dist/
 * @property {readonly string[]} sources
 * @property {readonly string[]} command  of Node; the folder to write into is added as its last word
 */

/** @type {readonly Product[]} */
const products = [
  {
    name: 'the page',
    folder: 'renderer',
    sources: ['renderer', 'shared', 'build/vite.renderer.config.ts', 'package-lock.json'],
    command: [
      'node_modules/vite/bin/vite.js',
      'build',
      '--config=build/vite.renderer.config.ts',
      '--logLevel=warn',
      '--outDir',
    ],
  },
  {
    name: 'the hosts',
    folder: 'app',
    sources: ['app', 'shared', 'build/bundle-app.mjs', 'package-lock.json'],
    command: ['build/bundle-app.mjs'],
  },
];

/** @param {{ say?: (line: string) => void }} [options]  `say` shows one line to the person */
export async function make({ say = console.log } = {}) {
  for (const product of products) {
    const began = performance.now();
    const hash = sourcesHash(product.sources);
    const target = join(root, 'dist', product.folder);
    const stamp = `${target}.sources`;
    if (existsSync(target) && readIfThere(stamp) === hash) continue;
    const growing = `${target}-${process.pid}`;
    try {
      mkdirSync(growing, { recursive: true });
      const { code, output } = await runChild(process.execPath, [...product.command, growing]);
      if (code !== 0) {
        process.stderr.write(output);
        throw new Stop(
          `Larkrow could not make ${product.name} from its sources: see above what is wrong in them.`,
        );
      }
      rmSync(stamp, { force: true });
      rmSync(target, { recursive: true, force: true });
      renameSync(growing, target);
      writeFileSync(stamp, hash);
    } finally {
      rmSync(growing, { recursive: true, force: true });
    }
    say(`Made ${product.name} in ${secondsSince(began)}.`);
  }
}

/** @param {string} path */
function readIfThere(path) {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}
