/** A log of what went wrong unexpectedly, for the person to send along: beside the settings, and never long. */
import { appendFileSync, mkdirSync, renameSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Log } from './answer.ts';

/** When it is longer, it makes room and only the one before it is kept. */
const MOST_BYTES = 1024 * 1024;

export function logFile(folder: string, now: () => Date, also: Log = console.error): Log {
  const path = join(folder, 'larkrow.log');
  return (line) => {
    also(line);
    try {
      mkdirSync(folder, { recursive: true });
      const size = statSync(path, { throwIfNoEntry: false })?.size ?? 0;
      if (size > MOST_BYTES) renameSync(path, join(folder, 'larkrow before.log'));
      appendFileSync(path, `${now().toISOString()} ${line}\n`);
    } catch {
      // A log that can't be written is no reason to stop anybody.
    }
  };
}
