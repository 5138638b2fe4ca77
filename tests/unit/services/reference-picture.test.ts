import sharp, { type Sharp } from 'sharp';
import { describe, expect, it } from 'vitest';
import { referencePicture } from '../../../app/services/pictures/reference-picture.ts';
import { limits } from '../../../shared/design/limits.ts';
import { seeded } from '../../property/random-edit.ts';

/** Every pixel unlike its neighbours, so that no format makes it small. */
function noise(width: number, height: number, channels: 3 | 4) {
  const random = seeded(5);
  const bytes = Uint8Array.from({ length: width * height * channels }, () => Math.floor(random() * 256));
  return sharp(bytes, { raw: { width, height, channels } });
}

async function taken(picture: Sharp) {
  const answer = await referencePicture(
    new Uint8Array(await picture.png({ compressionLevel: 0 }).toBuffer()),
  );
  if (!answer.ok) throw new Error(answer.problem.sentence);
  return answer.value;
}

describe('a picture to lie under a chart', () => {
  it('is never enlarged', async () => {
    expect(await taken(noise(40, 30, 3))).toMatchObject({ widthPx: 40, heightPx: 30 });
  });

  it('keeps its transparency, and is made smaller until it is light enough', async () => {
    const { mediaType, bytes, widthPx, heightPx } = await taken(noise(1600, 1600, 4));
    expect(mediaType).toBe('image/png');
    expect(bytes.length).toBeLessThanOrEqual(limits.referenceTakenBytes);
    expect(widthPx).toBe(heightPx);
    expect(widthPx).toBeLessThan(1600);
    expect(widthPx).toBeGreaterThanOrEqual(700);
  });

  it('with a channel of transparency that hides nothing is a JPEG', async () => {
    const opaque = sharp({ create: { width: 9, height: 9, channels: 4, background: '#28455fff' } });
    expect((await taken(opaque)).mediaType).toBe('image/jpeg');
  });
});
