/** A whole file, asked for its size before it is read. */
import { good, type Problem, type Result } from '../../../shared/result.ts';
import type { FileLayer } from './file-layer.ts';
import { fileProblem } from './file-problem.ts';

export interface ReadFile {
  readonly bytes: Uint8Array;
  readonly modifiedMs: number;
}

/** Problems: `tooLarge` where it has more than `mostBytes`, and those of `fileProblem`. */
export async function readFileWithin(
  files: FileLayer,
  path: string,
  mostBytes: number,
  tooLarge: Problem,
): Promise<Result<ReadFile>> {
  try {
    const { sizeBytes, modifiedMs } = await files.factsOf(await files.realPath(path));
    if (sizeBytes > mostBytes) return { ok: false, problem: tooLarge };
    return good({ bytes: await files.read(path), modifiedMs });
  } catch (error) {
    return { ok: false, problem: fileProblem(error, path, 'could not be opened') };
  }
}
