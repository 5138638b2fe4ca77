/**
 * A small file that the studio keeps for itself: JSON of a format and a version. A damaged one is set aside under
 * another name, never deleted, and that is told in a sentence; one of a newer version is left alone and refused.
 */
import { basename } from 'node:path';
import type { Stamp } from '../../../shared/bridge.ts';
import { textProblem } from '../../../shared/design/text-problem.ts';
import { textOfUtf8 } from '../../../shared/design/utf8.ts';
import { good, problem, type Result } from '../../../shared/result.ts';
import { errorCode } from '../files/error-code.ts';
import type { FileLayer } from '../files/file-layer.ts';
import { fileProblem } from '../files/file-problem.ts';
import { setAside } from '../files/set-aside.ts';
import { readStamped } from '../safekeeping/stamp.ts';

export interface Kept<T> {
  readonly format: string;
  readonly version: number;
  readonly maxBytes: number;
  /** What it is, to begin a sentence: 'Your stash'. */
  readonly what: string;
  /** The value in the file; null where it is not sound. */
  readonly parse: (file: unknown) => T | null;
}

export interface ReadKept<T> {
  /** Null where nothing is kept, or nothing sound. */
  readonly value: T | null;
  /** Null where there is no file now. */
  readonly stamp: Stamp | null;
  /** That a damaged file was set aside, and under which name. */
  readonly notice?: string;
}

/** Problems: `newer-version`, and those of the file system. */
export async function readKept<T>(
  files: FileLayer,
  path: string,
  kept: Kept<T>,
): Promise<Result<ReadKept<T>>> {
  try {
    const size = (await files.factsOf(await files.realPath(path))).sizeBytes;
    if (size > kept.maxBytes) return good(await asideOf(files, path, kept));
    const { bytes, stamp } = await readStamped(files, path);
    const file = jsonOf(bytes);
    if (isNewer(file, kept)) return newer(kept, path);
    const value = isOurs(file, kept) ? kept.parse(file) : null;
    return good(value === null ? await asideOf(files, path, kept) : { value, stamp });
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return good({ value: null, stamp: null });
    return { ok: false, problem: fileProblem(error, path, 'could not be read') };
  }
}

interface Head {
  readonly format: unknown;
  readonly version: unknown;
}

function jsonOf(bytes: Uint8Array): Head | null {
  const text = textOfUtf8(bytes);
  if (text === null || textProblem(text)) return null;
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null && 'format' in value && 'version' in value
      ? value
      : null;
  } catch {
    return null;
  }
}

function isOurs<T>(file: Head | null, { format, version }: Kept<T>): boolean {
  return file?.format === format && file.version === version;
}

function isNewer<T>(file: Head | null, { format, version }: Kept<T>): boolean {
  return file?.format === format && typeof file.version === 'number' && file.version > version;
}

async function asideOf<T>(files: FileLayer, path: string, { what }: Kept<T>): Promise<ReadKept<T>> {
  const name = await setAside(files, path);
  const notice = `${what} could not be read, so its file was set aside as “${name}” in Larkrow’s settings folder. Nothing of it was deleted.`;
  return { value: null, stamp: null, notice };
}

function newer<T>({ what }: Kept<T>, path: string): ReturnType<typeof problem> {
  return problem(
    'newer-version',
    `${what} was saved by a newer Larkrow, as “${basename(path)}”. Update Larkrow to use it; it is left as it is.`,
  );
}
