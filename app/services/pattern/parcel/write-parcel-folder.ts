/**
 * Writes a parcel as a folder of its own: into a temporary folder beside, which gets its name only when all is in it. A failed or
 * cancelled parcel leaves nothing; an older one of the same name stays, and the new one gets a number.
 */
import { rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Result } from '../../../../shared/result.ts';
import { attempt } from '../../files/attempt.ts';
import type { FileLayer } from '../../files/file-layer.ts';
import { freeName } from '../../names/free-name.ts';
import { saveFile } from '../../safekeeping/save-file.ts';
import { tempName } from '../../safekeeping/temp-name.ts';
import type { MadeParcel } from './make-parcel.ts';

/** The path of the new folder in `place`, which is made where it is missing. */
export async function writeParcelFolder(
  files: FileLayer,
  place: string,
  { name, files: parts }: Pick<MadeParcel, 'name' | 'files'>,
): Promise<Result<string>> {
  const temp = join(place, tempName());
  try {
    const folders = new Set(parts.map((part) => dirname(join(temp, part.name))));
    for (const folder of folders) {
      const made = await attempt(place, 'could not be made', () => files.makeFolder(folder));
      if (!made.ok) return made;
    }
    for (const part of parts) {
      const saved = await saveFile(files, { path: join(temp, part.name), bytes: part.bytes, replaces: [] });
      if (!saved.ok) return saved;
    }
    return await attempt(join(place, name), 'was not written', async () => {
      const path = join(place, await freeName(files, place, name, ''));
      await files.rename(temp, path);
      return path;
    });
  } finally {
    await rm(temp, { recursive: true, force: true });
  }
}
