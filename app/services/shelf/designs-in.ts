/** The design files of a folder: plain files by their ending, and links only to files within the same folder. */
import { basename, join } from 'node:path';
import type { FileLayer } from '../files/file-layer.ts';
import { isWithin } from '../grants.ts';
import { DESIGN_ENDING } from '../names/file-name.ts';

/** Paths. Rejects where the folder can't be read. */
export async function designsIn(files: FileLayer, folder: string): Promise<string[]> {
  const real = await files.realPath(folder);
  const paths: string[] = [];
  for (const name of await files.list(real)) {
    if (!isDesignName(name)) continue;
    const path = join(real, name);
    if (await isOwnFile(files, path, real)) paths.push(path);
  }
  return paths;
}

export function isDesignName(path: string): boolean {
  const name = basename(path);
  return !name.startsWith('.') && name.toLowerCase().endsWith(DESIGN_ENDING);
}

async function isOwnFile(files: FileLayer, path: string, folder: string): Promise<boolean> {
  try {
    const { kind } = await files.factsOf(path);
    if (kind !== 'link') return kind === 'file';
    const target = await files.realPath(path);
    return isWithin(target, folder) && (await files.factsOf(target)).kind === 'file';
  } catch {
    // It went away meanwhile, or its link leads nowhere.
    return false;
  }
}
