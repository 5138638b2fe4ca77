import { limits } from '../../../shared/design/limits.ts';
import type { Result } from '../../../shared/result.ts';
import { openPicture, type StoredPicture, storedAt } from './decoder.ts';
import { type PictureSource, pictureBytes } from './picture-bytes.ts';

/** Longest sides in turn, until the picture is light enough. The last always is: its bare pixels fit. */
const SIDES_PX = [1600, 1200, 900, 700];

/**
 * A picture as a design keeps it under its chart, within `limits.referenceTakenBytes`. Problems: those of
 * `pictureBytes`, `openPicture` and `storedAt`.
 */
export async function referencePicture(source: PictureSource): Promise<Result<StoredPicture>> {
  const bytes = await pictureBytes(source);
  if (!bytes.ok) return bytes;
  const picture = await openPicture(bytes.value);
  if (!picture.ok) return picture;
  for (const side of SIDES_PX) {
    const stored = await storedAt(picture.value, side);
    if (!stored.ok || stored.value.bytes.length <= limits.referenceTakenBytes) return stored;
  }
  throw new Error('a picture of 700 pixels a side is larger than its bare pixels');
}
