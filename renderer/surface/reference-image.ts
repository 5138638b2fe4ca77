/** The reference picture, decoded once from the design's base64, for as long as the design holds the same one. */
import type { Reference } from '../../shared/design/schema.ts';
import { fromBase64 } from '../bridge/base64.ts';

type Stored = Pick<Reference, 'picture' | 'mediaType'>;

export class ReferenceImage {
  #lines: Reference['picture'] | null = null;
  #image: ImageBitmap | null = null;

  /** The picture where it is ready; else it is decoded, and `onReady` is called when it can be drawn. */
  of(stored: Stored, onReady: () => void): ImageBitmap | null {
    const { picture } = stored;
    if (this.#lines === picture) return this.#image;
    this.forget();
    this.#lines = picture;
    decoded(stored).then((image) => {
      if (this.#lines !== picture) return image?.close();
      this.#image = image;
      onReady();
    });
    return null;
  }

  forget(): void {
    this.#image?.close();
    this.#image = null;
    this.#lines = null;
  }
}

/** True where the browser can show the picture. */
export async function canDecode(stored: Stored): Promise<boolean> {
  const image = await decoded(stored);
  image?.close();
  return image !== null;
}

/** Null where it is no picture. */
async function decoded({ picture, mediaType }: Stored): Promise<ImageBitmap | null> {
  const blob = new Blob([fromBase64(picture.join(''))], { type: mediaType });
  return createImageBitmap(blob).catch(() => null);
}
