/** Everything for selling a pattern. */
import { basename } from 'node:path';
import type { Answer, Args } from '../../../shared/bridge.ts';
import { readDesign } from '../../../shared/design/read-design.ts';
import { good, type Result } from '../../../shared/result.ts';
import { cancelled } from '../answer.ts';
import type { Handlers } from '../handlers.ts';
import { readImprint } from '../kept/keep-imprint.ts';
import type { MadeParcel } from '../pattern/parcel/make-parcel.ts';
import { writeParcelFolder } from '../pattern/parcel/write-parcel-folder.ts';
import { zipOf } from '../pattern/parcel/zip.ts';
import type { Studio } from '../studio.ts';
import { saveTo } from './save-to.ts';

export function parcelVerbs(studio: Studio): Pick<Handlers, 'parcel.save'> {
  const { makers, now } = studio;
  return {
    'parcel.save': async ({ text, as, target, ...wishes }, call) => {
      const design = readDesign(text);
      if (!design.ok) return design;
      // A target that can't be used is told before the work, not after it.
      const held = await studio.reach(target, as === 'archive' ? 'parcel' : 'folder');
      if (!held.ok) return held;
      const kept = await studio.inTurn('imprint', () => readImprint(studio.files, studio.home.config));
      if (!kept.ok) return kept;
      const { imprint } = kept.value;
      const date = now();
      const made = await makers.makeParcel(design.value, { ...wishes, imprint, date, ...call });
      if (!made.ok) return made;
      if (call.signal.aborted) return cancelled;
      return as === 'archive'
        ? saveArchive(studio, target, made.value, date)
        : saveFolder(studio, held.value.path, made.value);
    },
  };
}

type Saved = Promise<Result<Answer<'parcel.save'>>>;

async function saveArchive(
  studio: Studio,
  target: Args<'parcel.save'>['target'],
  { name, files, notices }: MadeParcel,
  date: Date,
): Saved {
  const bytes = zipOf(name, files, date);
  const saved = await saveTo(studio, { kind: 'parcel', target, bytes, stamp: null });
  if (!saved.ok) return saved;
  return good({
    fileName: saved.value.fileName,
    files: files.length,
    bytes: bytes.length,
    notices: [...notices],
  });
}

async function saveFolder({ files }: Studio, folder: string, parcel: MadeParcel): Saved {
  const written = await writeParcelFolder(files, folder, parcel);
  if (!written.ok) return written;
  const bytes = parcel.files.reduce((sum, file) => sum + file.bytes.length, 0);
  return good({
    fileName: basename(written.value),
    files: parcel.files.length,
    bytes,
    notices: [...parcel.notices],
  });
}
