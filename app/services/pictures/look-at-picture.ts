import type { Answer } from '../../../shared/bridge.ts';
import { good, type Result } from '../../../shared/result.ts';
import { openPicture, previewOf } from './decoder.ts';
import { type PictureSource, pictureBytes } from './picture-bytes.ts';

/** Longest side of the small picture that is shown for cropping. */
const PREVIEW_SIDE_PX = 1600;

/**
 * A picture's size after it is turned upright, and a small PNG of it to show. The whole picture is read for it, so a
 * damaged one is told here. Problems: those of `pictureBytes`, `openPicture` and `previewOf`.
 */
export async function lookAtPicture(source: PictureSource): Promise<Result<Answer<'picture.look'>>> {
  const bytes = await pictureBytes(source);
  if (!bytes.ok) return bytes;
  const picture = await openPicture(bytes.value);
  if (!picture.ok) return picture;
  const preview = await previewOf(picture.value, PREVIEW_SIDE_PX);
  if (!preview.ok) return preview;
  return good({
    widthPx: picture.value.widthPx,
    heightPx: picture.value.heightPx,
    preview: preview.value.png,
    previewWidthPx: preview.value.widthPx,
    previewHeightPx: preview.value.heightPx,
  });
}
