/**
 * The folders that the person has granted. Links are followed before it is asked whether something lies within them,
 * so a link out of a granted folder leads nowhere.
 */
import { basename, dirname, join, relative, sep } from 'node:path';
import { good, problem, type Result } from '../../shared/result.ts';
import { errorCode } from './files/error-code.ts';
import type { FileLayer } from './files/file-layer.ts';

export interface Grants {
  /** Real paths. */
  folders(): Promise<readonly string[]>;
  /**
   * The real path of something within a granted folder; it need not exist, its folder must. Problems: `not-granted`,
   * `not-there`.
   */
  within(path: string): Promise<Result<string>>;
}

export function createGrants(files: FileLayer, folders: () => Promise<readonly string[]>): Grants {
  return {
    folders,
    async within(path) {
      const real = await realOrNew(files, path);
      if (real === null) {
        return problem('not-there', `“${basename(path)}” is not there any more. Choose another place.`);
      }
      if ((await folders()).some((folder) => isWithin(real, folder))) return good(real);
      return problem(
        'not-granted',
        `“${basename(path)}” lies outside the folders that Larkrow may use. Choose a place in one of them, or start Larkrow with --folder.`,
      );
    },
  };
}

export function isWithin(path: string, folder: string): boolean {
  const way = relative(folder, path);
  return way === '' || (way !== '..' && !way.startsWith(`..${sep}`) && !isOtherDisk(way));
}

/** On Windows the way to another disk is that disk's whole path. */
function isOtherDisk(way: string): boolean {
  return way.startsWith(sep) || /^[a-z]:/i.test(way);
}

/** Null where not even the folder is there, or the name is a link that leads nowhere. */
async function realOrNew(files: FileLayer, path: string): Promise<string | null> {
  try {
    return await files.realPath(path);
  } catch (error) {
    if (!isAbsence(error)) throw error;
  }
  try {
    await files.factsOf(path);
    return null;
  } catch (error) {
    if (!isAbsence(error)) throw error;
  }
  try {
    return join(await files.realPath(dirname(path)), basename(path));
  } catch (error) {
    if (!isAbsence(error)) throw error;
    return null;
  }
}

function isAbsence(error: unknown): boolean {
  return ['ENOENT', 'ENOTDIR', 'ELOOP', 'EACCES'].includes(errorCode(error));
}
