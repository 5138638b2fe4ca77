import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './root.mjs';

/**
 * One hash over the names and bytes of all files at these paths, folders with all that is in them. It changes when
 * any of them does; what was made from them is then made again.
 *
 * @param {readonly string[]} paths  from the root of the repository; those that do not exist count as empty
 */
export function sourcesHash(paths) {
  const hash = createHash('sha256');
  for (const path of paths.flatMap(filesAt).sort()) {
    const bytes = readFileSync(join(root, path));
    hash.update(`${path}\0${bytes.length}\0`).update(bytes);
  }
  return hash.digest('hex');
}

/**
 * @param {string} path
 * @returns {string[]}
 */
function filesAt(path) {
  const found = statSync(join(root, path), { throwIfNoEntry: false });
  if (!found) return [];
  if (!found.isDirectory()) return [path];
  return readdirSync(join(root, path)).flatMap((name) => filesAt(`${path}/${name}`));
}
