import { limits } from '../../../shared/design/limits.ts';
import type { Result } from '../../../shared/result.ts';
import { openPicture, type StoredPicture, storedAt } from './decoder.ts';
import { type PictureSource, pictureBytes } from './picture-bytes.ts';

/** Longest sides in turn, until the picture is light enough. The last always is: its bare pixels fit. */
interface Fitting {
  readonly sidesPx: readonly number[];
  readonly mostBytes: number;
}

const reference: Fitting = { sidesPx: [1600, 1200, 900, 700], mostBytes: limits.referenceTakenBytes };
const mark: Fitting = { sidesPx: [600, 450, 350, 250], mostBytes: limits.markBytes };

/**
 * A picture as a design keeps it under its chart or on its cover, within `limits.referenceTakenBytes`. Problems: those of
 * `pictureBytes`, `openPicture` and `storedAt`.
 */
export function referencePicture(source: PictureSource): Promise<Result<StoredPicture>> {
  return fitted(source, reference);
}

/** A picture as an imprint keeps it for its mark, within `limits.markBytes`. Problems as of `referencePicture`. */
export function markPicture(source: PictureSource): Promise<Result<StoredPicture>> {
  return fitted(source, mark);
}

async function fitted(
  source: PictureSource,
  { sidesPx, mostBytes }: Fitting,
): Promise<Result<StoredPicture>> {
  const bytes = await pictureBytes(source);
  if (!bytes.ok) return bytes;
  const picture = await openPicture(bytes.value);
  if (!picture.ok) return picture;
  for (const side of sidesPx) {
    const stored = await storedAt(picture.value, side);
    if (!stored.ok || stored.value.bytes.length <= mostBytes) return stored;
  }
  throw new Error('a small picture is larger than its bare pixels');
}
