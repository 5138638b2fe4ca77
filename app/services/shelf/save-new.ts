/** Saves a design under a free name that goes with its title, and never over another file. */
import { join } from 'node:path';
import { good, type Result } from '../../../shared/result.ts';
import type { FileLayer } from '../files/file-layer.ts';
import { fileProblem } from '../files/file-problem.ts';
import { DESIGN_ENDING, stemFor } from '../names/file-name.ts';
import { freeName } from '../names/free-name.ts';
import { saveFile } from '../safekeeping/save-file.ts';

/** The file name that it got. */
export async function saveNew(
  files: FileLayer,
  folder: string,
  title: string,
  bytes: Uint8Array,
): Promise<Result<string>> {
  for (;;) {
    let name: string;
    try {
      name = await freeName(files, folder, stemFor(title), DESIGN_ENDING);
    } catch (error) {
      return { ok: false, problem: fileProblem(error, folder, 'could not be read') };
    }
    const saved = await saveFile(files, { path: join(folder, name), bytes, replaces: [] });
    if (saved.ok) return good(name);
    // Somebody took the name in this very moment: the next one, then.
    if (saved.problem.code !== 'changed-outside') return saved;
  }
}
