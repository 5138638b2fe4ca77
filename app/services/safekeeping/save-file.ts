/**
 * How the studio saves. The new version is written to a temporary file beside the target, flushed, read back and
 * compared; only then is it renamed over the target, and the folder is flushed. At every moment the target is the whole
 * old version or the whole new one: it is never truncated and never deleted first.
 *
 * Just before the rename the target is looked at again. Where it is no version that the caller expects, nothing is
 * replaced (`changed-outside`): what somebody else wrote is never silently lost. A target that is gone is written anew.
 */
import { basename, dirname, join } from 'node:path';
import type { Stamp } from '../../../shared/bridge.ts';
import { good, type Problem, problem, type Result } from '../../../shared/result.ts';
import { errorCode } from '../files/error-code.ts';
import type { FileLayer } from '../files/file-layer.ts';
import { fileProblem } from '../files/file-problem.ts';
import { keepBoth, type Patience, patienceHere, withPatience } from './busy.ts';
import { putInPlace } from './put-in-place.ts';
import { sameVersion, stampNow, stampOf } from './stamp.ts';
import { Unfaithful, writeTemp } from './write-temp.ts';

export interface SaveRequest {
  readonly path: string;
  readonly bytes: Uint8Array;
  /** The versions that may be replaced; none where the file must be new; or any. */
  readonly replaces: readonly Stamp[] | 'any';
}

/**
 * `inPlace` stands with a problem where the new version is in its place all the same, but the disk did not confirm
 * that it would survive a power cut.
 */
export type Saved = Result<Stamp> & { readonly inPlace?: Stamp };

export async function saveFile(
  files: FileLayer,
  { path, bytes, replaces }: SaveRequest,
  patience: Patience = patienceHere,
): Promise<Saved> {
  let temp: string | null = null;
  try {
    const target = await targetOf(files, path);
    if (target.readOnly) return failed(lockedProblem(path));
    temp = await writeTemp(files, dirname(target.path), bytes, target.mode);
    const stamp = stampOf(bytes, (await files.factsOf(temp)).modifiedMs);
    const now = replaces === 'any' ? undefined : await stampNow(files, target.path);
    if (now && !(replaces as readonly Stamp[]).some((each) => sameVersion(each, now))) {
      return failed(changedProblem(path));
    }
    // Where nothing is there, the name is taken in a way that fails if somebody else takes it in this very moment.
    const made = temp;
    const placed = await withPatience(patience, () =>
      now === null ? putInPlace(files, made, target.path) : files.rename(made, target.path),
    );
    if (placed === 'busy') return failed(await keepBoth(files, made, target.path));
    temp = null;
    return await confirmed(files, target.path, stamp);
  } catch (error) {
    return failed(saveProblem(error, path));
  } finally {
    if (temp) await files.remove(temp).catch(() => {});
  }
}

interface Target {
  readonly path: string;
  /** Null where there is no such file yet. */
  readonly mode: number | null;
  readonly readOnly: boolean;
}

/** The file behind links, so that a link stays one. */
async function targetOf(files: FileLayer, path: string): Promise<Target> {
  try {
    const real = await files.realPath(path);
    const { mode, kind } = await files.factsOf(real);
    if (kind === 'folder') throw Object.assign(new Error(`${path} is a folder`), { code: 'EISDIR' });
    return { path: real, mode, readOnly: (mode & 0o222) === 0 };
  } catch (error) {
    if (errorCode(error) !== 'ENOENT') throw error;
    const folder = await files.realPath(dirname(path));
    return { path: join(folder, basename(path)), mode: null, readOnly: false };
  }
}

async function confirmed(files: FileLayer, target: string, stamp: Stamp): Promise<Saved> {
  try {
    await files.syncFolder(dirname(target));
  } catch (error) {
    // Where a folder can't be opened or flushed at all, the platform does it on its own.
    if (withoutFolderFlush.includes(errorCode(error))) return good(stamp);
    return {
      ...problem(
        'not-confirmed',
        `“${basename(target)}” was written, but the disk did not confirm it. Save again, or save it on another disk.`,
      ),
      inPlace: stamp,
    };
  }
  return good(stamp);
}

const withoutFolderFlush = ['EINVAL', 'EPERM', 'EACCES', 'EISDIR', 'ENOTSUP', 'EBADF', 'ENOSYS'];

function failed(problem: Problem): Saved {
  return { ok: false, problem };
}

function saveProblem(error: unknown, path: string): Problem {
  if (error instanceof Unfaithful) {
    return problem(
      'disk-fault',
      `“${basename(path)}” was not saved: the disk gave back other data than it was given. Save it on another disk, and have this one looked at.`,
    ).problem;
  }
  const code = errorCode(error);
  if (code === 'EEXIST') return changedProblem(path);
  if (code === 'ENOENT')
    return fileProblem(Object.assign(new Error(), { code: 'ENOTDIR' }), path, 'was not saved');
  return fileProblem(error, path, 'was not saved', 'What was there before is untouched.');
}

function changedProblem(path: string): Problem {
  return problem(
    'changed-outside',
    `“${basename(path)}” was changed by something else since it was opened here. Keep yours as a copy, or take the other version.`,
  ).problem;
}

function lockedProblem(path: string): Problem {
  return problem(
    'read-only',
    `“${basename(path)}” is marked as read-only. Save under another name, or take the mark away.`,
  ).problem;
}
