/**
 * Motifs: a file for each in the folder `motifs` beside the settings, so that what harms one harms no other. A motif's
 * id comes from the page and may be any text, so its file is named by the id's hash.
 */
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { type Motif, motifSchema } from '../../../shared/chart/patch/motif.ts';
import { limits } from '../../../shared/design/limits.ts';
import { good, problem, type Result } from '../../../shared/result.ts';
import { attempt } from '../files/attempt.ts';
import { errorCode } from '../files/error-code.ts';
import type { FileLayer } from '../files/file-layer.ts';
import { saveFile } from '../safekeeping/save-file.ts';
import { type Kept, type ReadKept, readKept } from './read-kept.ts';

const MOTIF_FORMAT = 'larkrow-motif';
const MOTIF_VERSION = 1;

const fileName = /^[0-9a-f]{32}\.json$/;

const kept: Kept<Motif> = {
  format: MOTIF_FORMAT,
  version: MOTIF_VERSION,
  maxBytes: limits.motifBytes,
  what: 'A motif',
  parse: (file) => motifSchema.safeParse((file as { readonly motif?: unknown }).motif).data ?? null,
};

export interface MotifList {
  /** By name. */
  readonly motifs: Motif[];
  readonly notice?: string;
}

/** Those that can't be read are told of in the notice, and the others are there. Problems: those of the file system. */
export async function listMotifs(files: FileLayer, folder: string): Promise<Result<MotifList>> {
  const names = await namesIn(files, folder);
  if (!names.ok) return names;
  const motifs: Motif[] = [];
  const notices: string[] = [];
  for (const name of names.value) {
    const read = await readKept(files, join(folder, name), kept);
    if (!read.ok) notices.push(read.problem.sentence);
    else if (read.value.value) motifs.push(read.value.value);
    else if (read.value.notice) notices.push(read.value.notice);
  }
  motifs.sort((a, b) => byName.compare(a.name, b.name) || (a.id < b.id ? -1 : 1));
  return good(notices.length === 0 ? { motifs } : { motifs, notice: noticeOf(notices) });
}

/** Problems: `exists`, `too-many`, and those of `saveFile`. */
export async function keepMotif(
  files: FileLayer,
  folder: string,
  motif: Motif,
): Promise<Result<Record<string, never>>> {
  const made = await attempt(folder, 'could not be used for motifs', () => files.makeFolder(folder));
  if (!made.ok) return made;
  const names = await namesIn(files, folder);
  if (!names.ok) return names;
  if (names.value.length >= limits.motifs) {
    return problem('too-many', `The list of motifs is full: ${limits.motifs} are kept. Remove one first.`);
  }
  const path = motifPath(folder, motif.id);
  const saved = await saveFile(files, { path, bytes: bytesOf(motif), replaces: [] });
  if (saved.ok) return good({});
  return saved.problem.code === 'changed-outside'
    ? problem('exists', 'This motif is kept already. Keep the patch again under another name.')
    : saved;
}

/** Problems: `not-there`, and those of `readKept` and `saveFile`. */
export async function renameMotif(
  files: FileLayer,
  folder: string,
  id: string,
  name: string,
): Promise<Result<Record<string, never>>> {
  const path = motifPath(folder, id);
  const read = await readKept(files, path, kept);
  if (!read.ok) return read;
  const { value, stamp }: ReadKept<Motif> = read.value;
  if (!value || !stamp) return notKept;
  const saved = await saveFile(files, { path, bytes: bytesOf({ ...value, name }), replaces: [stamp] });
  return saved.ok ? good({}) : saved;
}

/** The motif's file, whether or not there is one. */
export function motifPath(folder: string, id: string): string {
  return join(folder, `${createHash('sha256').update(id).digest('hex').slice(0, 32)}.json`);
}

export const notKept = problem('not-there', 'This motif is not kept any more. Choose another.');

async function namesIn(files: FileLayer, folder: string): Promise<Result<string[]>> {
  return attempt(folder, 'could not be read', async () => {
    const names = await files.list(folder).catch((error: unknown) => {
      if (errorCode(error) === 'ENOENT') return [];
      throw error;
    });
    return names.filter((name) => fileName.test(name));
  });
}

function bytesOf(motif: Motif): Uint8Array {
  const file = { format: MOTIF_FORMAT, version: MOTIF_VERSION, motif };
  return Buffer.from(`${JSON.stringify(file, null, 2)}\n`);
}

const byName = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

function noticeOf(sentences: readonly string[]): string {
  const [first = ''] = sentences;
  const more = sentences.length - 1;
  return more === 0 ? first : `${first} So it is with ${more} more.`;
}
