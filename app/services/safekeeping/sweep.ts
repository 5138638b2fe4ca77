/** Removes the temporary files that a kill or a power cut left in a folder, and nothing else. */
import { join } from 'node:path';
import type { FileLayer } from '../files/file-layer.ts';
import { tempWriter } from './temp-name.ts';

/** Where another machine may be writing into a shared folder, its temporary files are left alone for a day. */
const PATIENCE_MS = 24 * 60 * 60 * 1000;

/** How many were removed. A folder that can't be read has none. */
export async function sweep(files: FileLayer, folder: string, nowMs: number): Promise<number> {
  const names = await files.list(folder).catch(() => []);
  let removed = 0;
  for (const name of names) {
    const writer = tempWriter(name);
    if (!writer) continue;
    const path = join(folder, name);
    try {
      const facts = await files.factsOf(path);
      const abandoned = writer.here && !isRunning(writer.processId);
      if (facts.kind !== 'file' || (!abandoned && nowMs - facts.modifiedMs < PATIENCE_MS)) continue;
      await files.remove(path);
      removed++;
    } catch {
      // It went away meanwhile, or may not be removed: it harms nobody.
    }
  }
  return removed;
}

function isRunning(processId: number): boolean {
  try {
    process.kill(processId, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}
