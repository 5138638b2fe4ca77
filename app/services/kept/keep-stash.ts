/** The stash: one file beside the settings, shared by all designs. */
import { dirname, join } from 'node:path';
import { limits } from '../../../shared/design/limits.ts';
import { good, type Result } from '../../../shared/result.ts';
import { emptyStash, type Stash, type StashYarn, stashSchema } from '../../../shared/yarn/stash.ts';
import { attempt } from '../files/attempt.ts';
import type { FileLayer } from '../files/file-layer.ts';
import { saveFile } from '../safekeeping/save-file.ts';
import { type Kept, readKept } from './read-kept.ts';

export interface StashAnswer {
  readonly entries: StashYarn[];
  readonly notice?: string;
}

const kept: Kept<Stash> = {
  format: emptyStash.format,
  version: emptyStash.version,
  maxBytes: limits.stashBytes,
  what: 'Your stash',
  parse: (file) => stashSchema.safeParse(file).data ?? null,
};

/** `folder` is that of the settings. Problems: those of `readKept`. */
export async function readStash(files: FileLayer, folder: string): Promise<Result<StashAnswer>> {
  const read = await readKept(files, pathIn(folder), kept);
  return read.ok ? good(answerOf(read.value.value ?? emptyStash, read.value.notice)) : read;
}

/** All yarns anew; other keys of the file stay. Problems: those of `readKept` and `saveFile`. */
export async function writeStash(
  files: FileLayer,
  folder: string,
  entries: readonly StashYarn[],
): Promise<Result<StashAnswer>> {
  const path = pathIn(folder);
  const read = await readKept(files, path, kept);
  if (!read.ok) return read;
  const { value, stamp, notice } = read.value;
  const stash: Stash = { ...(value ?? emptyStash), yarns: [...entries] };
  const made = await attempt(path, 'was not saved', () => files.makeFolder(dirname(path)));
  if (!made.ok) return made;
  const bytes = Buffer.from(`${JSON.stringify(stash, null, 2)}\n`);
  const saved = await saveFile(files, { path, bytes, replaces: stamp ? [stamp] : [] });
  return saved.ok ? good(answerOf(stash, notice)) : saved;
}

function pathIn(folder: string): string {
  return join(folder, 'stash.json');
}

function answerOf({ yarns }: Stash, notice: string | undefined): StashAnswer {
  return notice === undefined ? { entries: yarns } : { entries: yarns, notice };
}
