/**
 * A new version of a file in a temporary one beside it: written, flushed, read back and compared. Leaves nothing behind
 * where it fails.
 */
import { join } from 'node:path';
import { errorCode } from '../files/error-code.ts';
import type { FileLayer, OpenedFile } from '../files/file-layer.ts';
import { tempName } from './temp-name.ts';

/** The disk gave back other bytes than it was given, twice. */
export class Unfaithful extends Error {}

class NotFlushed extends Error {}

/** `mode` is that of the file to be replaced, null for a new one. Rejects as the file layer does. */
export async function writeTemp(
  files: FileLayer,
  folder: string,
  bytes: Uint8Array,
  mode: number | null,
): Promise<string> {
  try {
    return await tryTemp(files, join(folder, tempName()), bytes, mode);
  } catch (error) {
    if (!(error instanceof Unfaithful) && !(error instanceof NotFlushed)) throw error;
  }
  // A failed flush is never tried again on the same file: the system may have dropped what it could not write, and
  // call the next flush a success. The bytes are still in memory, so one new file is made of them.
  try {
    return await tryTemp(files, join(folder, tempName()), bytes, mode);
  } catch (error) {
    throw error instanceof NotFlushed ? error.cause : error;
  }
}

async function tryTemp(
  files: FileLayer,
  temp: string,
  bytes: Uint8Array,
  mode: number | null,
): Promise<string> {
  const file = await files.create(temp, mode ?? 0o666);
  try {
    try {
      await writeAll(file, bytes);
      if (mode !== null) await keepMode(file, mode);
      await file.sync().catch((cause: unknown) => {
        throw new NotFlushed('not flushed', { cause });
      });
    } finally {
      await file.close();
    }
    const back = await files.read(temp);
    if (Buffer.compare(back, bytes) !== 0) throw new Unfaithful('other bytes came back');
    return temp;
  } catch (error) {
    await files.remove(temp).catch(() => {});
    throw error;
  }
}

/** A disk that is nearly full takes a part first, and says so only at the next try. */
async function writeAll(file: OpenedFile, bytes: Uint8Array): Promise<void> {
  for (let written = 0; written < bytes.length; ) {
    const count = await file.write(bytes.subarray(written));
    if (count <= 0) throw Object.assign(new Error('nothing was written'), { code: 'ENOSPC' });
    written += count;
  }
}

/** Some disks know no permissions, and refuse to set them. */
async function keepMode(file: OpenedFile, mode: number): Promise<void> {
  await file.chmod(mode).catch((error: unknown) => {
    if (!['EPERM', 'ENOTSUP', 'ENOSYS', 'EINVAL'].includes(errorCode(error))) throw error;
  });
}
