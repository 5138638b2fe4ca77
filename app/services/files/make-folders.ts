/**
 * Makes a folder and those above it that are missing, one at a time. Node's own recursive call never ends where a
 * folder that exists refuses a new one with ENOENT, as /proc does.
 */
import { mkdir, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import { errorCode } from './error-code.ts';

/** A folder that is there already is left as it is. Throws as `mkdir` does. */
export async function makeFolders(folder: string, mode: number): Promise<void> {
  try {
    await mkdir(folder, { mode });
  } catch (error) {
    if (await isFolder(folder)) return;
    const above = dirname(folder);
    if (errorCode(error) !== 'ENOENT' || above === folder || (await isFolder(above))) throw error;
    await makeFolders(above, mode);
    await makeFolders(folder, mode);
  }
}

async function isFolder(path: string): Promise<boolean> {
  const stats = await stat(path).catch(() => null);
  return stats?.isDirectory() ?? false;
}
