/** The imprint: one file beside the settings, for all patterns. */
import { dirname, join } from 'node:path';
import { limits } from '../../../shared/design/limits.ts';
import { emptyImprint, type Imprint, imprintSchema } from '../../../shared/pattern/imprint.ts';
import { good, type Result } from '../../../shared/result.ts';
import { attempt } from '../files/attempt.ts';
import type { FileLayer } from '../files/file-layer.ts';
import { saveFile } from '../safekeeping/save-file.ts';
import { type Kept, readKept } from './read-kept.ts';

export interface ImprintAnswer {
  readonly imprint: Imprint;
  readonly notice?: string;
}

const kept: Kept<Imprint> = {
  format: emptyImprint.format,
  version: emptyImprint.version,
  maxBytes: limits.imprintBytes,
  what: 'Your imprint',
  parse: (file) => imprintSchema.safeParse(file).data ?? null,
};

/** `folder` is that of the settings. Problems: those of `readKept`. */
export async function readImprint(files: FileLayer, folder: string): Promise<Result<ImprintAnswer>> {
  const read = await readKept(files, pathIn(folder), kept);
  return read.ok ? good(answerOf(read.value.value ?? emptyImprint, read.value.notice)) : read;
}

/** Other keys of the file stay. Problems: those of `readKept` and `saveFile`. */
export async function writeImprint(
  files: FileLayer,
  folder: string,
  imprint: Imprint,
): Promise<Result<ImprintAnswer>> {
  const path = pathIn(folder);
  const read = await readKept(files, path, kept);
  if (!read.ok) return read;
  const { value, stamp, notice } = read.value;
  const next: Imprint = { ...value, ...imprint };
  const made = await attempt(path, 'was not saved', () => files.makeFolder(dirname(path)));
  if (!made.ok) return made;
  const bytes = Buffer.from(`${JSON.stringify(next, null, 2)}\n`);
  const saved = await saveFile(files, { path, bytes, replaces: stamp ? [stamp] : [] });
  return saved.ok ? good(answerOf(next, notice)) : saved;
}

function pathIn(folder: string): string {
  return join(folder, 'imprint.json');
}

/** Keys that this version does not know stay in the file, and go nowhere else. */
function answerOf(file: Imprint, notice: string | undefined): ImprintAnswer {
  const { format, version, name, workshop, contact, about, mark, accent } = file;
  const imprint = { format, version, name, workshop, contact, about, mark, accent };
  return notice === undefined ? { imprint } : { imprint, notice };
}
