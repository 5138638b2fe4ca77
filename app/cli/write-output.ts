/** Writes a file that was named on the command line, whole or not at all, and says so. */
import { dirname } from 'node:path';
import type { Result } from '../../shared/result.ts';
import { attempt } from '../services/files/attempt.ts';
import { nodeFiles } from '../services/files/file-layer.ts';
import { saveFile } from '../services/safekeeping/save-file.ts';
import { done, type Terminal } from './cli-verb.ts';

/** A file that was named replaces the one that is there: the convention of command lines. */
export async function writeOutput(
  terminal: Terminal,
  path: string,
  bytes: Uint8Array,
  what: string,
): Promise<Result<null>> {
  const folder = await attempt(dirname(path), 'could not be made', () => nodeFiles.makeFolder(dirname(path)));
  if (!folder.ok) return folder;
  const saved = await saveFile(nodeFiles, { path, bytes, replaces: 'any' });
  if (!saved.ok) return saved;
  terminal.print(`${path}: ${what}\n`);
  return done;
}
