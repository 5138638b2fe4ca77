import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { printedPicture } from '../../../../shared/pattern/page/printed-picture.ts';

async function picture(kind: 'png' | 'jpeg', width: number, height: number): Promise<Buffer> {
  return sharp({ create: { width, height, channels: 3, background: '#9e3329' } })
    .toFormat(kind)
    .toBuffer();
}

describe('a picture that is kept as text', () => {
  it.each(['png', 'jpeg'] as const)('has its bytes and its size read from its %s', async (kind) => {
    const bytes = await picture(kind, 37, 21);
    const printed = printedPicture({ mediaType: `image/${kind}`, base64: bytes.toString('base64') });
    expect(printed).toMatchObject({ widthPx: 37, heightPx: 21 });
    expect(Buffer.from(printed!.bytes).equals(bytes)).toBe(true);
  });

  it('is the same in lines as in one piece', async () => {
    const base64 = (await picture('png', 40, 40)).toString('base64');
    const lines = base64.match(/.{1,40}/g)!;
    expect(printedPicture({ mediaType: 'image/png', base64: lines })!.bytes).toEqual(
      printedPicture({ mediaType: 'image/png', base64 })!.bytes,
    );
  });

  it('is none where it is cut off, or of another kind than it says', async () => {
    const bytes = await picture('jpeg', 37, 21);
    const base64 = bytes.toString('base64');
    expect(printedPicture({ mediaType: 'image/png', base64 })).toBeNull();
    for (let length = 0; length < 60; length++) {
      const cut = bytes.subarray(0, length).toString('base64');
      expect(printedPicture({ mediaType: 'image/jpeg', base64: cut })).toBeNull();
    }
  });
});
