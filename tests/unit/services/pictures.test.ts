import { mkdtemp, rm, truncate, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { lookAtPicture } from '../../../app/services/pictures/look-at-picture.ts';
import { type PictureRequest, pictureToChart } from '../../../app/services/pictures/picture-to-chart.ts';
import { bridge, type Progress } from '../../../shared/bridge.ts';
import { defaults } from '../../../shared/design/defaults.ts';
import { limits } from '../../../shared/design/limits.ts';
import { deltaE2000 } from '../../../shared/yarn/colour-difference.ts';
import { bomb, kiteOverDunes, layAs, movingPng, scene, sharpOf } from './picture-files.ts';

/** The scene as a chart of 12 cords and 8 rows: sky is y1, sand y2, the kite y3. */
const kite = [
  'aaaaaaaaaaaa',
  'aaaaaaacccaa',
  'aaaaaaacccaa',
  'aaaaaaaaaaaa',
  'aaaaaaaaaaaa',
  'bbbbbbbbbbbb',
  'bbbbbbbbbbbb',
  'bbbbbbbbbbbb',
];
const picture = kiteOverDunes();
const request: PictureRequest = { columns: 12, pitchMm: 5, rowHeightMm: 5, yarns: { count: 3 } };

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'larkrow-pictures-'));
});
afterAll(() => rm(folder, { recursive: true }));

async function chartOf(source: string | Uint8Array, more: Partial<PictureRequest> = {}) {
  const made = await pictureToChart(source, { ...request, ...more });
  if (!made.ok) throw new Error(made.problem.sentence);
  // Hosts hold answers to the bridge's schema; so do these.
  const chart = bridge['picture.chart'].result.parse(made.value);
  const letters = Array.from({ length: chart.rows }, (_, r) =>
    Array.from(chart.cells.subarray(r * chart.columns, (r + 1) * chart.columns), (code) =>
      String.fromCharCode(96 + code),
    ).join(''),
  );
  return { ...chart, letters };
}

async function lookOf(source: string | Uint8Array) {
  const look = await lookAtPicture(source);
  if (!look.ok) throw new Error(look.problem.sentence);
  return bridge['picture.look'].result.parse(look.value);
}

async function problemOf(source: string | Uint8Array, more: Partial<PictureRequest> = {}) {
  const made = await pictureToChart(source, { ...request, ...more });
  return made.ok ? null : made.problem;
}

describe('a picture becomes a chart', () => {
  const exact = {
    PNG: sharpOf(picture).png(),
    'PNG of 16 bits': sharpOf(picture).toColourspace('rgb16').png(),
    'PNG with a palette': sharpOf(picture).png({ palette: true }),
    'interlaced PNG': sharpOf(picture).png({ progressive: true }),
    'PNG that can be seen through, but is not': sharpOf(picture).ensureAlpha().png(),
    'WebP without loss': sharpOf(picture).webp({ lossless: true }),
  };
  it.each(Object.entries(exact))('from a %s, with its colours exactly', async (_, file) => {
    const { columns, rows, letters, yarns } = await chartOf(await file.toBuffer());
    expect([columns, rows]).toEqual([12, 8]);
    expect(letters).toEqual(kite);
    expect(yarns.map(({ color }) => color)).toEqual([scene.sky, scene.sand, scene.kite]);
    expect(yarns.map(({ name }) => name)).toEqual(['Light blue', 'Light brown', 'Red']);
  });

  const near = {
    JPEG: [sharpOf(picture).jpeg({ quality: 90 }), 3],
    'progressive JPEG': [sharpOf(picture).jpeg({ quality: 90, progressive: true }), 3],
    'WebP with loss': [sharpOf(picture).webp({ quality: 90 }), 4],
    'JPEG in CMYK, whose inks can show less': [
      sharpOf(picture).toColourspace('cmyk').jpeg({ quality: 95 }),
      8,
    ],
  } as const;
  it.each(Object.entries(near))('from a %s, with colours close to its own', async (_, [file, deltaE]) => {
    const { letters, yarns } = await chartOf(await file.toBuffer());
    expect(letters).toEqual(kite);
    const wanted = [scene.sky, scene.sand, scene.kite];
    for (const [i, { color }] of yarns.entries()) expect(deltaE2000(color, wanted[i]!)).toBeLessThan(deltaE);
  });

  it('from a grey picture of 8 or 16 bits, in greys', async () => {
    for (const space of ['b-w', 'grey16']) {
      const { letters, yarns } = await chartOf(await sharpOf(picture).toColourspace(space).png().toBuffer());
      expect(letters).toEqual(kite);
      for (const { color } of yarns) expect(color).toMatch(/^#(..)\1\1$/);
    }
  });

  it('in sRGB, whatever profile its colours were stored by', async () => {
    const wide = await sharpOf(picture).withIccProfile('p3').png().toBuffer();
    const stored = await sharp(wide, { ignoreIcc: true }).raw().toBuffer();
    expect(stored.subarray(0, 3)).not.toEqual(picture.rgb.subarray(0, 3));
    const { yarns } = await chartOf(wide);
    const wanted = [scene.sky, scene.sand, scene.kite];
    for (const [i, { color }] of yarns.entries()) expect(deltaE2000(color, wanted[i]!)).toBeLessThan(1);
  });

  it('upright, whichever of the eight ways its EXIF tag says it lies', async () => {
    for (const tag of [1, 2, 3, 4, 5, 6, 7, 8] as const) {
      const laid = sharpOf(layAs(tag, picture));
      const jpeg = await laid.jpeg({ quality: 95 }).withMetadata({ orientation: tag }).toBuffer();
      expect((await chartOf(jpeg)).letters, `tag ${tag}`).toEqual(kite);
      expect(await lookOf(jpeg), `tag ${tag}`).toMatchObject({ widthPx: 120, heightPx: 80 });
      const crop = { x: 50, y: 10, width: 70, height: 30 };
      expect((await chartOf(jpeg, { crop, columns: 7, yarns: { count: 2 } })).letters, `tag ${tag}`).toEqual([
        'aabbbaa',
        'aabbbaa',
        'aaaaaaa',
      ]);
    }
  });

  it('from the first frame of a moving picture', async () => {
    const first = await sharpOf(picture).png().toBuffer();
    const second = await sharpOf(picture).negate().png().toBuffer();
    const webp = await sharp([first, second], { join: { animated: true } })
      .webp({ lossless: true })
      .toBuffer();
    expect((await sharp(webp).metadata()).pages).toBe(2);
    for (const moving of [webp, movingPng(first, second)]) {
      expect((await chartOf(moving)).letters).toEqual(kite);
      expect(await lookOf(moving)).toMatchObject({ widthPx: 120, heightPx: 80 });
    }
  });

  it('from its crop only, in pixels of the upright picture', async () => {
    const png = await sharpOf(picture).png().toBuffer();
    const crop = { x: 60, y: 10, width: 60, height: 50 };
    const chart = await chartOf(png, { crop, columns: 6 });
    expect(chart.letters).toEqual(['abbbaa', 'abbbaa', 'aaaaaa', 'aaaaaa', 'cccccc']);
    // A crop drawn with a mouse may lie between pixels: it is taken to the nearest ones.
    const loose = { x: 59.6, y: 10.4, width: 60.2, height: 49.8 };
    expect(await chartOf(png, { crop: loose, columns: 6 })).toEqual(chart);
  });

  it('with the background showing through where it is transparent', async () => {
    const clear = await sharp({
      create: { width: 24, height: 16, channels: 4, background: { r: 9, g: 9, b: 9, alpha: 0 } },
    })
      .png()
      .toBuffer();
    expect((await chartOf(clear)).yarns.map(({ color }) => color)).toEqual([defaults.yarns[0]!.color]);
    const ground = { ...defaults.yarns[2]!, diameterMm: 4 };
    const [yarn] = (await chartOf(clear, { ground })).yarns;
    expect(yarn).toMatchObject({ color: ground.color, diameterMm: 4 });
    expect((await chartOf(clear, { yarns: { from: [...defaults.yarns] }, ground })).letters[0]).toBe(
      'c'.repeat(12),
    );
    expect((await chartOf(clear, { yarns: { from: [...defaults.yarns] } })).letters[0]).toBe('a'.repeat(12));
  });

  it('in the yarns of a design', async () => {
    const yarns = [
      { ...defaults.yarns[0]!, id: 'y7' as const, color: '#e8d8a8' },
      { ...defaults.yarns[1]!, id: 'y3' as const, color: '#7799aa' },
      { ...defaults.yarns[4]!, id: 'y5' as const, color: '#990000' },
    ];
    const chart = await chartOf(await sharpOf(picture).png().toBuffer(), { yarns: { from: yarns } });
    expect(chart.yarns).toEqual(yarns);
    expect(new Set(chart.cells)).toEqual(new Set([3, 5, 7]));
  });

  it('with as many rows as keep its proportions, or as many as asked', async () => {
    const png = await sharpOf(picture).png().toBuffer();
    // 60 cords of 5 mm are 300 mm; two thirds of that, 200 mm, hold 41.67 rows of 4.8 mm.
    expect((await chartOf(png, { columns: 60, rowHeightMm: 4.8 })).rows).toBe(42);
    expect((await chartOf(png, { rows: 20 })).rows).toBe(20);
  });

  it('from a file of any name', async () => {
    const path = join(folder, 'Дюны, čtvrtek.gif');
    await writeFile(path, await sharpOf(picture).png().toBuffer());
    expect((await chartOf(path)).letters).toEqual(kite);
  });

  it('with more cords than the picture has pixels', async () => {
    const small = await sharpOf(kiteOverDunes(1)).png().toBuffer();
    expect((await chartOf(small, { columns: 24 })).letters).toEqual(
      kite.flatMap((row) => Array(2).fill([...row].map((letter) => letter + letter).join(''))),
    );
  });

  it('telling how far it is', async () => {
    const steps: Progress[] = [];
    const png = await sharpOf(picture).png().toBuffer();
    await pictureToChart(png, request, { onProgress: (step) => steps.push(step) });
    const done = steps.map((step) => step.done);
    expect(done).toEqual(done.toSorted((a, b) => a - b));
    expect([done[0], done.at(-1)]).toEqual([0, 1]);
  });

  it('not at all where it is cancelled, whenever that is', async () => {
    const png = await sharpOf(picture).png().toBuffer();
    for (const at of [0, 0.4, 0.8, 0.85]) {
      const controller = new AbortController();
      const onProgress = ({ done }: Progress) => {
        if (done >= at) controller.abort();
      };
      const made = await pictureToChart(png, request, { signal: controller.signal, onProgress });
      expect(made, `cancelled at ${at}`).toMatchObject({ ok: false, problem: { code: 'cancelled' } });
    }
  });
});

describe('looking at a picture', () => {
  it('gives its size and a PNG of it', async () => {
    const look = await lookOf(await sharpOf(picture).jpeg().toBuffer());
    expect(look).toMatchObject({ widthPx: 120, heightPx: 80, previewWidthPx: 120, previewHeightPx: 80 });
    expect(await sharp(look.preview).metadata()).toMatchObject({ format: 'png', width: 120, height: 80 });
  });

  it('gives a large one at most 1600 pixels a side', async () => {
    const wide = await sharpOf(kiteOverDunes(300)).jpeg().toBuffer();
    const look = await lookOf(wide);
    expect(look).toMatchObject({
      widthPx: 3600,
      heightPx: 2400,
      previewWidthPx: 1600,
      previewHeightPx: 1067,
    });
    const tall = await sharpOf(kiteOverDunes(300)).rotate(90).png().toBuffer();
    expect(await lookOf(tall)).toMatchObject({ previewWidthPx: 1067, previewHeightPx: 1600 });
  });
});

describe('a picture is refused', () => {
  const png = () => sharpOf(picture).png().toBuffer();

  it('where it is of another format, whatever it is called', async () => {
    const svg = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>');
    const ftyp = Buffer.from('0000001c667479706865696300000000', 'hex');
    const gif = Buffer.from('R0lGODlhAQABAAAAACwAAAAAAQABAAACAkQBADs=', 'base64');
    const tiff = Buffer.from('49492a0008000000', 'hex');
    const pdf = Buffer.from('%PDF-1.7\n');
    const wave = Buffer.from('RIFF\0\0\0\0WAVEfmt ', 'latin1');
    for (const bytes of [svg, ftyp, gif, tiff, pdf, wave, Buffer.alloc(0), Buffer.from('no picture')]) {
      const path = join(folder, 'picture.png');
      await writeFile(path, bytes);
      expect(await problemOf(path)).toMatchObject({ code: 'not-a-picture' });
      expect(await lookAtPicture(path)).toMatchObject({ ok: false, problem: { code: 'not-a-picture' } });
    }
  });

  it('where it is another format behind the first bytes of a PNG', async () => {
    const disguised = Buffer.concat([
      (await png()).subarray(0, 8),
      Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'),
    ]);
    expect(await problemOf(disguised)).toMatchObject({ code: 'damaged-picture' });
  });

  it('where it is cut short, never half read', async () => {
    const large = sharpOf(kiteOverDunes(40));
    for (const bytes of [
      await large.png().toBuffer(),
      await large.jpeg().toBuffer(),
      await large.webp().toBuffer(),
    ]) {
      for (const share of [0.2, 0.5, 0.9]) {
        const cut = bytes.subarray(0, Math.floor(bytes.length * share));
        expect(await problemOf(cut)).toMatchObject({ code: 'damaged-picture' });
        expect(await lookAtPicture(cut)).toMatchObject({ ok: false, problem: { code: 'damaged-picture' } });
      }
    }
  });

  it('where it has more pixels than the limit, by its header alone', async () => {
    const side = Math.sqrt(limits.picturePixels / 10);
    const inside = bomb(side * 10, side, await png());
    const above = bomb(side * 10 + 1, side, await png());
    // The first is let through to the decoder, which then misses the pixels.
    expect(await problemOf(inside)).toMatchObject({ code: 'damaged-picture' });
    expect(await problemOf(above)).toMatchObject({ code: 'too-many-pixels' });
    const before = process.memoryUsage().rss;
    for (const [width, height] of [
      [60_000, 60_000],
      [0x7fffffff, 1],
      [1_000_000, 1_000_000],
    ] as const) {
      const problem = await problemOf(bomb(width, height, await png()));
      expect(problem?.code).toMatch(/^(too-many-pixels|damaged-picture)$/);
    }
    expect(process.memoryUsage().rss - before).toBeLessThan(50_000_000);
  });

  it('where its file is larger than the limit, before it is read', async () => {
    const path = join(folder, 'large.png');
    await writeFile(path, await png());
    await truncate(path, limits.pictureBytes);
    // As large as the limit it is read; bytes after its end are nobody's.
    expect((await chartOf(path)).letters).toEqual(kite);
    await truncate(path, limits.pictureBytes + 1);
    expect(await problemOf(path)).toMatchObject({ code: 'too-large' });
    expect(await problemOf(new Uint8Array(limits.pictureBytes + 1))).toMatchObject({ code: 'too-large' });
  });

  it('where there is no file, or a folder instead', async () => {
    expect(await problemOf(join(folder, 'gone.png'))).toMatchObject({ code: 'no-file' });
    expect(await problemOf(folder)).toMatchObject({ code: 'not-a-picture' });
  });

  it('where the crop does not lie inside', async () => {
    const bytes = await png();
    for (const crop of [
      { x: -1, y: 0, width: 10, height: 10 },
      { x: 0, y: 0, width: 121, height: 10 },
      { x: 0, y: 71, width: 10, height: 10 },
      { x: 5, y: 5, width: 0.2, height: 10 },
      { x: 5, y: 5, width: -3, height: 10 },
      { x: Number.NaN, y: 5, width: 3, height: 10 },
    ]) {
      const problem = await problemOf(bytes, { crop });
      expect(problem).toMatchObject({ code: 'crop-outside' });
      expect(problem?.sentence).toContain('120 × 80');
    }
  });

  it('where its chart would be larger than the limits', async () => {
    const bytes = await png();
    expect((await chartOf(bytes, { columns: limits.columns, rows: 2 })).columns).toBe(limits.columns);
    expect(await problemOf(bytes, { columns: limits.columns + 1 })).toMatchObject({ code: 'bad-size' });
    expect(await problemOf(bytes, { rows: limits.rows + 1 })).toMatchObject({ code: 'bad-size' });
    expect(await problemOf(bytes, { columns: 0 })).toMatchObject({ code: 'bad-size' });
    // 12 cords of 5 mm are 60 mm wide and 40 mm high: 2000 rows of 0.02 mm.
    expect((await chartOf(bytes, { rowHeightMm: 0.02 })).rows).toBe(limits.rows);
    expect(await problemOf(bytes, { rowHeightMm: 0.0199 })).toMatchObject({ code: 'too-many-rows' });
  });

  it('with one sentence that says what to do', async () => {
    const problems = [
      await problemOf(Buffer.from('x')),
      await problemOf((await png()).subarray(0, 99)),
      await problemOf(bomb(60_000, 60_000, await png())),
      await problemOf(join(folder, 'gone.png')),
      await problemOf(await png(), { crop: { x: 0, y: 0, width: 999, height: 9 } }),
    ];
    for (const problem of problems) {
      expect(problem?.sentence).toMatch(/^[A-Z].*\.$/);
      expect(problem?.sentence).toMatch(/Save|Copy|Choose|choose|Draw/);
    }
  });
});
