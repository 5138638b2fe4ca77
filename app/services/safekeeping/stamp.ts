/** What a file was when it was last read or written. */
import { createHash } from 'node:crypto';
import type { Stamp } from '../../../shared/bridge.ts';
import { errorCode } from '../files/error-code.ts';
import type { FileLayer } from '../files/file-layer.ts';

export function stampOf(bytes: Uint8Array, modifiedMs: number): Stamp {
  return { size: bytes.length, modifiedMs, sha256: createHash('sha256').update(bytes).digest('hex') };
}

/** Reads a file with its stamp. Rejects as the file layer does. */
export async function readStamped(
  files: FileLayer,
  path: string,
): Promise<{ readonly bytes: Uint8Array; readonly stamp: Stamp }> {
  const real = await files.realPath(path);
  const { modifiedMs } = await files.factsOf(real);
  const bytes = await files.read(real);
  return { bytes, stamp: stampOf(bytes, modifiedMs) };
}

/** The stamp of what is there now; null where nothing is. */
export async function stampNow(files: FileLayer, path: string): Promise<Stamp | null> {
  try {
    return (await readStamped(files, path)).stamp;
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return null;
    throw error;
  }
}

/**
 * The same bytes are the same version, whatever their time: a copy or a touch changes nothing that could be lost.
 */
export function sameVersion(a: Stamp | null, b: Stamp | null): boolean {
  if (a === null || b === null) return a === b;
  return a.size === b.size && a.sha256 === b.sha256;
}
