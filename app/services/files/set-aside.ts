/** Gives a damaged file another name beside itself, so that it is out of the way and nothing of it is lost. */
import { basename, dirname, extname, join } from 'node:path';
import { putInPlace } from '../safekeeping/put-in-place.ts';
import { errorCode } from './error-code.ts';
import type { FileLayer } from './file-layer.ts';

/** The name that it has then: 'stash damaged 1.json'. Rejects as the file layer does. */
export async function setAside(files: FileLayer, path: string): Promise<string> {
  const ending = extname(path);
  const stem = basename(path, ending);
  for (let n = 1; ; n++) {
    const name = `${stem} damaged ${n}${ending}`;
    try {
      await putInPlace(files, path, join(dirname(path), name));
      return name;
    } catch (error) {
      if (errorCode(error) !== 'EEXIST') throw error;
    }
  }
}
