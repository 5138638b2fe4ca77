/** Writes the demo designs into a folder, beside what is there. */
import { join } from 'node:path';
import { demoDesigns } from '../../../shared/demos/demo-designs.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { good, type Result } from '../../../shared/result.ts';
import type { FileLayer } from '../files/file-layer.ts';
import { saveNew } from './save-new.ts';

/** How many were written: one that is there already, byte for byte, is not written again. */
export async function addDemos(files: FileLayer, folder: string): Promise<Result<number>> {
  let added = 0;
  for (const { fileName, make } of demoDesigns) {
    const design = make();
    const bytes = Buffer.from(writeDesign(design));
    const there = await files.read(join(folder, fileName)).catch(() => null);
    if (there && Buffer.compare(there, bytes) === 0) continue;
    const saved = await saveNew(files, folder, design.title, bytes);
    if (!saved.ok) return saved;
    added++;
  }
  return good(added);
}
