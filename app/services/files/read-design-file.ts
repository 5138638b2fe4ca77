/** A design file, read with its stamp; what is no design, too large or gone gets a sentence. */
import type { Stamp } from '../../../shared/bridge.ts';
import type { Design } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import { readDesignBytes } from '../../../shared/design/read-design.ts';
import { tooManyBytes } from '../../../shared/design/text-problem.ts';
import { good, type Result } from '../../../shared/result.ts';
import { stampOf } from '../safekeeping/stamp.ts';
import type { FileLayer } from './file-layer.ts';
import { fileProblem } from './file-problem.ts';

export interface ReadDesign {
  readonly design: Design;
  readonly bytes: Uint8Array;
  readonly stamp: Stamp;
}

export async function readDesignFile(files: FileLayer, path: string): Promise<Result<ReadDesign>> {
  let bytes: Uint8Array;
  let modifiedMs: number;
  try {
    const facts = await files.factsOf(await files.realPath(path));
    if (facts.sizeBytes > limits.fileBytes) return { ok: false, problem: tooManyBytes };
    modifiedMs = facts.modifiedMs;
    bytes = await files.read(path);
  } catch (error) {
    return { ok: false, problem: fileProblem(error, path, 'could not be opened') };
  }
  const read = readDesignBytes(bytes);
  if (!read.ok) return read;
  return good({ design: read.value, bytes, stamp: stampOf(bytes, modifiedMs) });
}
