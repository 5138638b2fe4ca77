/** A second design with the same cells, under a title and a file name of its own. */
import { dirname, join } from 'node:path';
import { titleOfCopy } from '../../../shared/design/title-of-copy.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { good, type Result } from '../../../shared/result.ts';
import type { FileLayer } from '../files/file-layer.ts';
import { readDesignFile } from '../files/read-design-file.ts';
import { saveNew } from './save-new.ts';

/** The path of the copy. */
export async function copyDesign(files: FileLayer, path: string): Promise<Result<string>> {
  const read = await readDesignFile(files, path);
  if (!read.ok) return read;
  const title = titleOfCopy(read.value.design.title);
  const text = writeDesign({ ...read.value.design, title });
  const saved = await saveNew(files, dirname(path), title, Buffer.from(text));
  return saved.ok ? good(join(dirname(path), saved.value)) : saved;
}
