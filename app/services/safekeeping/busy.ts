/** What is done where the target is held by another program, as Windows lets programs do. */
import { basename, dirname, extname, join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { type Problem, problem } from '../../../shared/result.ts';
import { errorCode } from '../files/error-code.ts';
import type { FileLayer } from '../files/file-layer.ts';
import { putInPlace } from './put-in-place.ts';

/** How a busy target is waited for. */
export interface Patience {
  /** Waits between tries, in ms; none where the platform never calls a file busy. */
  readonly busyWaitsMs: readonly number[];
}

/** Only Windows refuses to rename over a file that is open elsewhere. Some three seconds, as virus scanners need. */
export const patienceHere: Patience = {
  busyWaitsMs: process.platform === 'win32' ? [50, 100, 200, 400, 800, 1600] : [],
};

export async function withPatience(
  { busyWaitsMs }: Patience,
  deed: () => Promise<void>,
): Promise<'done' | 'busy'> {
  for (let tries = 0; ; tries++) {
    try {
      await deed();
      return 'done';
    } catch (error) {
      if (busyWaitsMs.length === 0 || !isBusy(error)) throw error;
    }
    const waitMs = busyWaitsMs[tries];
    if (waitMs === undefined) return 'busy';
    await setTimeout(waitMs);
  }
}

function isBusy(error: unknown): boolean {
  return ['EBUSY', 'EPERM', 'EACCES'].includes(errorCode(error));
}

/** Gives the new version a name of its own beside the one that can't be replaced, and says so. */
export async function keepBoth(files: FileLayer, temp: string, target: string): Promise<Problem> {
  const ending = extname(target);
  const stem = basename(target, ending);
  for (let n = 1; ; n++) {
    const name = `${stem} (kept ${n})${ending}`;
    try {
      await putInPlace(files, temp, join(dirname(target), name));
    } catch (error) {
      if (errorCode(error) === 'EEXIST') continue;
      throw error;
    }
    return problem(
      'kept-both',
      `“${basename(target)}” is held by another program, so your work was saved beside it as “${name}”. Close the other program, then save again.`,
    ).problem;
  }
}
