/** A design file, read with its stamp; what is no design, too large or gone gets a sentence. */
import type { Stamp } from '../../../shared/bridge.ts';
import type { Design } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import { readDesignBytes } from '../../../shared/design/read-design.ts';
import { tooManyBytes } from '../../../shared/design/text-problem.ts';
import { good, type Result } from '../../../shared/result.ts';
import { stampOf } from '../safekeeping/stamp.ts';
import type { FileLayer } from './file-layer.ts';
import { readFileWithin } from './read-file-within.ts';

export interface ReadDesign {
  readonly design: Design;
  readonly bytes: Uint8Array;
  readonly stamp: Stamp;
}

export async function readDesignFile(files: FileLayer, path: string): Promise<Result<ReadDesign>> {
  const file = await readFileWithin(files, path, limits.fileBytes, tooManyBytes);
  if (!file.ok) return file;
  const { bytes, modifiedMs } = file.value;
  const read = readDesignBytes(bytes);
  if (!read.ok) return read;
  return good({ design: read.value, bytes, stamp: stampOf(bytes, modifiedMs) });
}
