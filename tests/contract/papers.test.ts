import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { Makers } from '../../app/services/makers.ts';
import type { Progress } from '../../shared/bridge.ts';
import { BARE } from '../../shared/design/codes.ts';
import { limits } from '../../shared/design/limits.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import { good, problem } from '../../shared/result.ts';
import { bothHosts } from './both-hosts.ts';
import { givenFile, givenPlace, refusal, value } from './test-host.ts';

const text = writeDesign(newDesign({ title: 'Fox', columns: 4, rows: 3 }));
const chart = { columns: 4, rows: 3, pitchMm: 5, rowHeightMm: 5, yarns: { count: 2 } };

/** Left half black, right half white. */
function blackAndWhite(): Promise<Buffer> {
  const pixels = Uint8Array.from({ length: 8 * 6 * 3 }, (_, i) => (Math.floor(i / 3) % 8 < 4 ? 0 : 255));
  return sharp(pixels, { raw: { width: 8, height: 6, channels: 3 } })
    .png()
    .toBuffer();
}

/** A maker that reports until it is cancelled; `heard` tells that it was. */
function endless(): { makers: Partial<Makers>; heard: () => boolean } {
  let heard = false;
  const work = async (options: Parameters<Makers['pictureToChart']>[2]) => {
    for (let n = 1; !options?.signal?.aborted; n++) {
      options?.onProgress?.({ done: 0.01 * (n % 100), what: `Part ${n}` });
      await setTimeout(5);
    }
    heard = true;
    return problem('cancelled', 'It was stopped.');
  };
  return {
    makers: {
      pictureToChart: (_source, _request, options) => work(options),
      makePattern: (_design, options) => work(options),
    },
    heard: () => heard,
  };
}

describe.each(bothHosts)('pictures in $name', ({ start }) => {
  it('that were dropped are looked at and turned into cells, with progress', async () => {
    const host = await start();
    const bytes = new Uint8Array(await blackAndWhite());
    const { handle, name } = await value(host, 'picture.take', { name: 'some/fox.png', bytes });
    expect(name).toBe('fox.png');
    const look = await value(host, 'picture.look', { picture: handle });
    expect(look).toMatchObject({ widthPx: 8, heightPx: 6 });
    expect([...look.preview.subarray(1, 4)]).toEqual([...Buffer.from('PNG')]);
    const heard: Progress[] = [];
    const made = await value(
      host,
      'picture.chart',
      { picture: handle, ...chart },
      { onProgress: (each) => heard.push(each) },
    );
    const [black, white] = [made.cells[0], made.cells[3]];
    expect(black).not.toBe(white);
    expect([...made.cells]).toEqual(Array.from({ length: 12 }, (_, i) => (i % 4 < 2 ? black : white)));
    expect(heard.length).toBeGreaterThan(1);
    expect(heard.every(({ done }) => done >= 0 && done <= 1)).toBe(true);
  });

  it('that are to lie under a chart come back small, as JPEG or with their transparency as PNG', async () => {
    const host = await start();
    const wide = sharp({ create: { width: 3200, height: 80, channels: 3, background: '#28455f' } });
    writeFileSync(join(host.given, 'bay.png'), await wide.png().toBuffer());
    const { handle } = await givenFile(host, 'picture', 'bay.png');
    const taken = await value(host, 'reference.take', { picture: handle });
    expect(taken).toMatchObject({ name: 'bay.png', mediaType: 'image/jpeg', widthPx: 1600, heightPx: 40 });
    expect(await sharp(taken.bytes).metadata()).toMatchObject({ format: 'jpeg', width: 1600, height: 40 });
    const glass = sharp({ create: { width: 8, height: 6, channels: 4, background: '#28455f80' } });
    const bytes = new Uint8Array(await glass.png().toBuffer());
    const dropped = await value(host, 'picture.take', { name: 'some/glass.png', bytes });
    const clear = await value(host, 'reference.take', { picture: dropped.handle });
    expect(clear).toMatchObject({ name: 'glass.png', mediaType: 'image/png', widthPx: 8, heightPx: 6 });
    expect((await sharp(clear.bytes).raw().toBuffer())[3]).toBe(128);
  });

  it('of a folder are read from there', async () => {
    const host = await start();
    writeFileSync(join(host.given, 'fox.png'), await blackAndWhite());
    const { handle } = await givenFile(host, 'picture', 'fox.png');
    expect(await value(host, 'picture.look', { picture: handle })).toMatchObject({ widthPx: 8 });
  });

  it('that are none are refused in words', async () => {
    const host = await start();
    const { handle } = await value(host, 'picture.take', { name: 'a.png', bytes: Buffer.from('<svg/>') });
    expect(await refusal(host, 'picture.look', { picture: handle })).toBe('not-a-picture');
    expect(await refusal(host, 'picture.chart', { picture: handle, ...chart })).toBe('not-a-picture');
    expect(await refusal(host, 'reference.take', { picture: handle })).toBe('not-a-picture');
  });

  it('that were dropped are kept for a while only', async () => {
    const host = await start();
    const bytes = new Uint8Array(await blackAndWhite());
    const handles = [];
    for (let n = 0; n < 3; n++)
      handles.push((await value(host, 'picture.take', { name: 'a.png', bytes })).handle);
    expect(await refusal(host, 'picture.look', { picture: handles[0]! })).toBe('not-there');
    expect(await value(host, 'picture.look', { picture: handles[2]! })).toMatchObject({ widthPx: 8 });
  });

  it('larger than the limit are refused', async () => {
    const host = await start();
    const bytes = new Uint8Array(limits.pictureBytes + 1);
    expect(await refusal(host, 'picture.take', { name: 'a.png', bytes })).toBe('too-large');
  });
});

describe.each(bothHosts)('long jobs in $name', ({ start }) => {
  it('report how far they are, and end when they are stopped', async () => {
    const { makers, heard } = endless();
    const host = await start({ makers });
    const { handle } = await value(host, 'picture.take', { name: 'a.png', bytes: new Uint8Array(3) });
    const stop = new AbortController();
    const reports: Progress[] = [];
    const result = await host.bridge.call(
      'picture.chart',
      { picture: handle, ...chart },
      {
        signal: stop.signal,
        onProgress: (progress) => {
          reports.push(progress);
          if (reports.length === 3) stop.abort();
        },
      },
    );
    expect(result).toMatchObject({ ok: false, problem: { code: 'cancelled' } });
    expect(reports.slice(0, 3).map(({ what }) => what)).toEqual(['Part 1', 'Part 2', 'Part 3']);
    await expect.poll(heard).toBe(true);
  });

  it('do not begin where they were stopped before', async () => {
    const { makers, heard } = endless();
    const host = await start({ makers });
    const { handle } = await value(host, 'picture.take', { name: 'a.png', bytes: new Uint8Array(3) });
    const args = { picture: handle, ...chart };
    const result = await host.bridge.call('picture.chart', args, { signal: AbortSignal.abort() });
    expect(result).toMatchObject({ ok: false, problem: { code: 'cancelled' } });
    expect(heard()).toBe(false);
  });

  it('leave the others alone when one is stopped', async () => {
    const { makers } = endless();
    const host = await start({ makers });
    const { handle } = await value(host, 'picture.take', { name: 'a.png', bytes: new Uint8Array(3) });
    const [one, other] = [new AbortController(), new AbortController()];
    const calls = [one, other].map(({ signal }) =>
      host.bridge.call('picture.chart', { picture: handle, ...chart }, { signal }),
    );
    one.abort();
    expect(await calls[0]).toMatchObject({ problem: { code: 'cancelled' } });
    let ended = false;
    calls[1]?.then(() => {
      ended = true;
    });
    await setTimeout(50);
    expect(ended).toBe(false);
    other.abort();
    expect(await calls[1]).toMatchObject({ problem: { code: 'cancelled' } });
  });

  it('that are stopped leave no file, not even a part of one', async () => {
    const { makers, heard } = endless();
    const host = await start({ makers });
    const { handle } = await givenPlace(host, 'pattern', 'Fox');
    const stop = new AbortController();
    const call = host.bridge.call(
      'pattern.save',
      { text, paper: 'a4', units: 'metric', target: handle },
      { signal: stop.signal, onProgress: () => stop.abort() },
    );
    expect(await call).toMatchObject({ problem: { code: 'cancelled' } });
    await expect.poll(heard).toBe(true);
    expect(readdirSync(host.given)).toEqual([]);
  });

  it('that were stopped at the very end leave no file either', async () => {
    const stop = new AbortController();
    let finished = false;
    const host = await start({
      makers: {
        makePattern: async (_design, { signal }) => {
          stop.abort();
          while (!signal?.aborted) await setTimeout(1);
          finished = true;
          return good({ bytes: new Uint8Array(3), pages: 1, notices: [] });
        },
      },
    });
    const { handle } = await givenPlace(host, 'pattern', 'Fox');
    const args = { text, paper: 'a4', units: 'metric', target: handle } as const;
    await host.bridge.call('pattern.save', args, { signal: stop.signal });
    await expect.poll(() => finished).toBe(true);
    await setTimeout(50);
    expect(readdirSync(host.given)).toEqual([]);
  });
});

describe.each(bothHosts)('patterns in $name', ({ start }) => {
  it('are written as PDF, and charts as PNG', async () => {
    const host = await start();
    const pdf = await givenPlace(host, 'pattern', 'Fox');
    const heard: Progress[] = [];
    const args = { text, paper: 'a4', units: 'metric', target: pdf.handle } as const;
    const pattern = await value(host, 'pattern.save', args, { onProgress: (each) => heard.push(each) });
    expect(pattern.fileName).toBe('Fox.pdf');
    expect(pattern.pages).toBeGreaterThan(2);
    const written = readFileSync(join(host.given, 'Fox.pdf'));
    expect(written.subarray(0, 5).toString()).toBe('%PDF-');
    expect(written).toHaveLength(pattern.bytes);
    expect(heard.at(-1)?.done).toBe(1);
    const png = await givenPlace(host, 'png', 'Fox');
    const picture = await value(host, 'png.save', { text, target: png.handle });
    expect(readFileSync(join(host.given, 'Fox.png'))).toHaveLength(picture.bytes);
    expect(readdirSync(host.given).sort()).toEqual(['Fox.pdf', 'Fox.png']);
  });

  it('come with labels for the bundles, in a file of their own', async () => {
    const host = await start();
    const { handle } = await givenPlace(host, 'pattern', 'Labels');
    const args = { text, paper: 'letter', units: 'us', fitted: true, target: handle } as const;
    const labels = await value(host, 'labels.save', args);
    expect(labels).toMatchObject({ fileName: 'Labels.pdf', pages: 1 });
    // The plan that they are of can be kept with the design, and is its own again.
    expect(labels.plan?.rows).toHaveLength(3);
    const written = readFileSync(join(host.given, 'Labels.pdf'));
    expect(written.subarray(0, 5).toString()).toBe('%PDF-');
    expect(written).toHaveLength(labels.bytes);
  });

  it('and labels of a chart that is all bare are not written', async () => {
    const host = await start();
    const { handle } = await givenPlace(host, 'pattern', 'Labels');
    const bare = newDesign({ title: 'Bare', columns: 4, rows: 3 });
    const layers = bare.layers.map((layer) => ({
      ...layer,
      rows: layer.rows.map((row) => row.map(() => BARE)),
    }));
    const args = {
      text: writeDesign({ ...bare, layers }),
      paper: 'a4',
      units: 'metric',
      fitted: false,
    } as const;
    expect(await refusal(host, 'labels.save', { ...args, target: handle })).toBe('nothing-to-cut');
    expect(readdirSync(host.given)).toEqual([]);
  });

  it('come with the papers that go with the finished hanging', async () => {
    const host = await start();
    const { handle } = await givenPlace(host, 'pattern', 'Papers');
    const args = { text, paper: 'letter', units: 'us', target: handle } as const;
    const which = ['packing-note', 'care-card'] as const;
    const made = await value(host, 'papers.save', { ...args, which: [...which] });
    expect(made).toMatchObject({ fileName: 'Papers.pdf', pages: 2 });
    expect(readFileSync(join(host.given, 'Papers.pdf'))).toHaveLength(made.bytes);
  });

  it('and no template of a backing is written for a picture that is too small for one', async () => {
    const host = await start();
    const { handle } = await givenPlace(host, 'pattern', 'Papers');
    const args = { text, paper: 'a4', units: 'metric', target: handle } as const;
    expect(await refusal(host, 'papers.save', { ...args, which: ['backing'] })).toBe('nothing-to-print');
    expect(readdirSync(host.given)).toEqual([]);
  });

  it('of what is no design are not written', async () => {
    const host = await start();
    const { handle } = await givenPlace(host, 'pattern', 'Fox');
    const args = { text: '{}', paper: 'a4', units: 'metric', target: handle } as const;
    expect(await refusal(host, 'pattern.save', args)).toBe('not-a-design');
  });
});
