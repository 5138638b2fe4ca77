/** The bytes of a picture file, asked for its size before it is read. */
import { constants } from 'node:fs';
import { open } from 'node:fs/promises';
import { limits } from '../../../shared/design/limits.ts';
import { good, problem, type Result } from '../../../shared/result.ts';

/** A path, or the bytes of a picture that was dropped or pasted. */
export type PictureSource = string | Uint8Array;

/** Problems: `no-file`, `not-a-picture`, `too-large`, `unreadable`. */
export async function pictureBytes(source: PictureSource): Promise<Result<Uint8Array>> {
  if (typeof source !== 'string') return source.length > limits.pictureBytes ? tooLarge : good(source);
  try {
    // A pipe would wait for a writer for ever; without blocking it opens, and is then seen to be no file.
    const file = await open(source, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    try {
      const stat = await file.stat();
      if (!stat.isFile()) return notAFile;
      if (stat.size > limits.pictureBytes) return tooLarge;
      return good(await file.readFile());
    } finally {
      await file.close();
    }
  } catch (error) {
    return unreadable(error);
  }
}

const tooLarge = problem(
  'too-large',
  `The picture's file is larger than ${limits.pictureBytes / 1024 / 1024} MiB, the most that Larkrow opens. Save it smaller, or as JPEG, where it was made.`,
);

const notAFile = problem('not-a-picture', 'That is not a file. Choose a PNG, JPEG or WebP picture.');

function unreadable(error: unknown): ReturnType<typeof problem> {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === undefined) throw error;
  if (code === 'ENOENT' || code === 'ENOTDIR') {
    return problem(
      'no-file',
      'There is no such picture. Check its name, look for where it was moved to, or choose another.',
    );
  }
  if (code === 'EISDIR') return notAFile;
  if (code === 'EACCES' || code === 'EPERM') {
    return problem(
      'unreadable',
      "The picture can't be opened: you may not read it. Change its permissions, or choose another.",
    );
  }
  return problem(
    'unreadable',
    `The picture can't be read from its disk (${code}). Copy it to another place and try again.`,
  );
}
