/**
 * Moves a file to the person's bin, from where the system's own file manager brings it back; nothing is ever deleted.
 *
 * Linux: the freedesktop.org Trash specification 1.0: the home bin, or `.Trash-UID` at the top of another disk. Mac:
 * `~/.Trash`. Windows, and wherever these can't be used: a folder 'Bin' beside the file. (Electron does it by the
 * system's own call, on every platform.)
 */
import { basename, dirname, extname, join, relative } from 'node:path';
import { errorCode } from '../files/error-code.ts';
import type { FileLayer } from '../files/file-layer.ts';
import { putInPlace } from '../safekeeping/put-in-place.ts';

export interface BinRequest {
  readonly path: string;
  /** See `Home`. */
  readonly bin: string;
  readonly platform: NodeJS.Platform;
  readonly now: Date;
}

/** Where the file is now. Rejects as the file layer does. */
export async function moveToBin(files: FileLayer, request: BinRequest): Promise<string> {
  const beside = () => intoFolder(files, request.path, join(dirname(request.path), 'Bin'));
  if (request.platform === 'win32') return beside();
  try {
    return request.platform === 'darwin'
      ? await intoFolder(files, request.path, request.bin)
      : await intoTrash(files, request, request.bin, null);
  } catch (error) {
    if (!unusable.includes(errorCode(error))) throw error;
  }
  try {
    if (request.platform === 'darwin') return await beside();
    const top = await topOfDisk(files, dirname(request.path));
    return await intoTrash(files, request, join(top, `.Trash-${process.getuid?.() ?? 0}`), top);
  } catch (error) {
    if (!unusable.includes(errorCode(error))) throw error;
    return beside();
  }
}

/** Another disk, or a bin that may not be used. */
const unusable = ['EXDEV', 'EACCES', 'EPERM', 'EROFS', 'ENOTDIR'];

async function intoFolder(files: FileLayer, path: string, folder: string): Promise<string> {
  await files.makeFolder(folder);
  for (let n = 1; ; n++) {
    const to = join(folder, numbered(path, n));
    try {
      await putInPlace(files, path, to);
      return to;
    } catch (error) {
      if (errorCode(error) !== 'EEXIST') throw error;
    }
  }
}

/** The note is made first, and never over another one: so two files never share one. */
async function intoTrash(
  files: FileLayer,
  { path, now }: BinRequest,
  trash: string,
  top: string | null,
): Promise<string> {
  await files.makeFolder(join(trash, 'files'), 0o700);
  await files.makeFolder(join(trash, 'info'), 0o700);
  const from = top === null ? path : relative(top, path);
  const note = Buffer.from(`[Trash Info]\nPath=${escaped(from)}\nDeletionDate=${localTime(now)}\n`);
  for (let n = 1; ; n++) {
    const name = numbered(path, n);
    const notePath = join(trash, 'info', `${name}.trashinfo`);
    try {
      const file = await files.create(notePath, 0o600);
      try {
        await file.write(note);
        await file.sync();
      } finally {
        await file.close();
      }
    } catch (error) {
      if (errorCode(error) === 'EEXIST') continue;
      throw error;
    }
    try {
      const to = join(trash, 'files', name);
      await putInPlace(files, path, to);
      return to;
    } catch (error) {
      await files.remove(notePath).catch(() => {});
      if (errorCode(error) !== 'EEXIST') throw error;
    }
  }
}

function numbered(path: string, n: number): string {
  if (n === 1) return basename(path);
  const ending = extname(path);
  return `${basename(path, ending)} ${n}${ending}`;
}

/** As in a URL, slashes kept, which the specification asks for. */
function escaped(path: string): string {
  return path.split('/').map(encodeURIComponent).join('/');
}

/** YYYY-MM-DDThh:mm:ss in the person's own time zone, which the specification asks for. */
function localTime(date: Date): string {
  const two = (n: number) => String(n).padStart(2, '0');
  const day = `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
  return `${day}T${two(date.getHours())}:${two(date.getMinutes())}:${two(date.getSeconds())}`;
}

async function topOfDisk(files: FileLayer, folder: string): Promise<string> {
  const { device } = await files.factsOf(folder);
  for (let top = folder; ; top = dirname(top)) {
    const above = dirname(top);
    if (above === top || (await files.factsOf(above)).device !== device) return top;
  }
}
