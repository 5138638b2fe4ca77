/** Pictures that were dropped or pasted: they have no path, so their bytes are kept for a while, the latest two. */
import { basename } from 'node:path';
import type { Handle, Place } from '../../../shared/bridge.ts';
import { good, problem, type Result } from '../../../shared/result.ts';
import type { PictureSource } from '../pictures/picture-bytes.ts';
import type { Studio } from '../studio.ts';

/** Each may take `limits.pictureBytes`. */
const KEPT = 2;

export interface TakenPictures {
  take(name: string, bytes: Uint8Array): Place;
  /** The bytes of a picture that was taken, the path of any other. */
  sourceOf(picture: Handle): Promise<Result<PictureSource>>;
  /** What the picture's file is called; empty for a handle that is no picture's. */
  nameOf(picture: Handle): string;
}

export function takenPictures(studio: Studio): TakenPictures {
  const kept = new Map<Handle, Uint8Array>();
  const names = new Map<Handle, string>();
  let count = 0;
  return {
    take(name, bytes) {
      count++;
      // Not a path of this machine: only a word of its own for this picture.
      const { handle } = studio.handles.give('picture', `taken:${count}`);
      const shown = basename(name) || name;
      names.set(handle, shown);
      kept.set(handle, bytes);
      const [oldest] = kept.keys();
      if (kept.size > KEPT && oldest) kept.delete(oldest);
      return { handle, name: shown };
    },
    async sourceOf(picture) {
      if (names.has(picture)) {
        const bytes = kept.get(picture);
        return bytes
          ? good(bytes)
          : problem('not-there', 'This picture is not kept any more. Drop it again.');
      }
      const held = await studio.reach(picture, 'picture');
      return held.ok ? good(held.value.path) : held;
    },
    nameOf(picture) {
      const held = studio.handles.take(picture, 'picture');
      return names.get(picture) ?? (held.ok ? basename(held.value.path) : '');
    },
  };
}
