/** The folder of the program itself, whether it runs from its sources or as a bundle. */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { z } from 'zod';

const packageSchema = z.object({ name: z.literal('larkrow'), version: z.string() });

/** Throws where this file was carried away from its program. */
export function packageRoot(from: string = fileURLToPath(import.meta.url)): string {
  for (let folder = dirname(from); ; folder = dirname(folder)) {
    if (readPackage(folder)) return folder;
    if (dirname(folder) === folder) throw new Error(`${from} lies in no folder of Larkrow`);
  }
}

export function packageVersion(): string {
  return readPackage(packageRoot())?.version ?? '';
}

function readPackage(folder: string): z.infer<typeof packageSchema> | null {
  const path = join(folder, 'package.json');
  if (!existsSync(path)) return null;
  const read = packageSchema.safeParse(JSON.parse(readFileSync(path, 'utf8')));
  return read.success ? read.data : null;
}
