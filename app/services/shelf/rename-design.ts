/**
 * Another title, and the file name that goes with it. The title is saved first, under the old name; then the file gets
 * its new name, and never one that is in use. A kill between the two leaves a whole file whose name is the old one.
 */
import { basename, dirname, join } from 'node:path';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { good, type Result } from '../../../shared/result.ts';
import { errorCode } from '../files/error-code.ts';
import type { FileLayer } from '../files/file-layer.ts';
import { fileProblem } from '../files/file-problem.ts';
import { readDesignFile } from '../files/read-design-file.ts';
import { DESIGN_ENDING, stemFor } from '../names/file-name.ts';
import { freeName } from '../names/free-name.ts';
import { putInPlace } from '../safekeeping/put-in-place.ts';
import { saveFile } from '../safekeeping/save-file.ts';

/** The path that the design has then. */
export async function renameDesign(files: FileLayer, path: string, title: string): Promise<Result<string>> {
  const read = await readDesignFile(files, path);
  if (!read.ok) return read;
  const { design, stamp } = read.value;
  if (title !== design.title) {
    const bytes = Buffer.from(writeDesign({ ...design, title }));
    const saved = await saveFile(files, { path, bytes, replaces: [stamp] });
    if (!saved.ok) return saved;
  }
  try {
    return good(await moveToFreeName(files, path, stemFor(title)));
  } catch (error) {
    return { ok: false, problem: fileProblem(error, path, 'has its new title, but kept its file name') };
  }
}

async function moveToFreeName(files: FileLayer, path: string, stem: string): Promise<string> {
  const folder = dirname(path);
  const old = basename(path);
  for (;;) {
    const name = await freeName(files, folder, stem, DESIGN_ENDING, old);
    if (name === old) return path;
    const to = join(folder, name);
    try {
      // Where only capitals differ, some disks take both for one name, which no other file can have.
      if (name.toLowerCase() === old.toLowerCase()) await files.rename(path, to);
      else await putInPlace(files, path, to);
      return to;
    } catch (error) {
      if (errorCode(error) !== 'EEXIST') throw error;
    }
  }
}
