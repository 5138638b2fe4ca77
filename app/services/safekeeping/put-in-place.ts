/** Gives a file another name, and never takes one that is in use: rejects with EEXIST then. */
import { errorCode } from '../files/error-code.ts';
import type { FileLayer } from '../files/file-layer.ts';

export async function putInPlace(files: FileLayer, from: string, to: string): Promise<void> {
  try {
    await files.link(from, to);
  } catch (error) {
    if (!withoutLinks.includes(errorCode(error))) throw error;
    // This disk knows no second names. The look before the rename leaves a moment, which can't be helped there.
    if (await isThere(files, to)) throw Object.assign(new Error(`${to} is there`), { code: 'EEXIST' });
    await files.rename(from, to);
    return;
  }
  try {
    await files.remove(from);
  } catch (error) {
    // The file has two names; the new one goes again, so that a failed call has changed nothing.
    await files.remove(to);
    throw error;
  }
}

const withoutLinks = ['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK', 'EACCES'];

/** True for a link that leads nowhere as well: the name is taken. */
async function isThere(files: FileLayer, path: string): Promise<boolean> {
  try {
    await files.factsOf(path);
    return true;
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return false;
    throw error;
  }
}
