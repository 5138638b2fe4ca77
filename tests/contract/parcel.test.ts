import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { Args, Progress } from '../../shared/bridge.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import { bothHosts } from './both-hosts.ts';
import { givenFolder, givenPlace, value } from './test-host.ts';

const args: Omit<Args<'parcel.save'>, 'as' | 'target'> = {
  text: writeDesign(newDesign({ title: 'Fox: a study', columns: 4, rows: 3 })),
  units: 'metric',
  languages: ['en'],
  bothHands: false,
  preparedFor: '',
};

/** Every paper, in colour and in symbols, in both sizes; four pictures of the hanging, one of the pages; the listing. */
const usual = { patterns: 8, pictures: 5, listings: 1 };

describe.each(bothHosts)('everything for selling a pattern in $name', ({ start }) => {
  it('is one archive that unpacks to one folder', async () => {
    const host = await start();
    const { handle } = await givenPlace(host, 'parcel', 'Fox for sale');
    const heard: Progress[] = [];
    const saved = await value(
      host,
      'parcel.save',
      { ...args, as: 'archive', target: handle },
      { onProgress: (each) => heard.push(each) },
    );
    expect(saved.fileName).toBe('Fox for sale.zip');
    expect(heard.at(-1)?.done).toBe(1);
    expect(heard.map(({ done }) => done)).toEqual(heard.map(({ done }) => done).toSorted((a, b) => a - b));
    const bytes = readFileSync(join(host.given, saved.fileName));
    expect(bytes).toHaveLength(saved.bytes);
    const files = Object.entries(unzipSync(new Uint8Array(bytes)));
    const ending = (end: string) => files.filter(([name]) => name.endsWith(end));
    expect(files).toHaveLength(saved.files);
    expect(new Set(files.map(([name]) => name.split('/')[0])).size).toBe(1);
    expect(ending('.pdf')).toHaveLength(usual.patterns);
    expect(ending('.png')).toHaveLength(usual.pictures);
    expect(ending('.txt')).toHaveLength(usual.listings);
    for (const [, pdf] of ending('.pdf')) expect(strFromU8(pdf.subarray(0, 5))).toBe('%PDF-');
    // It was told which file of how many is made, each of them once, under its own name.
    const told = [...new Set(heard.map(({ what }) => what))].filter((what) => what.startsWith('File '));
    const made = files.map(([name]) => name.split('/').at(-1));
    told.forEach((what, i) => {
      expect(made.map((name) => `File ${i + 1} of ${files.length}: ${name}`)).toContain(what);
    });
    expect(told).toHaveLength(files.length - usual.listings);
    // What is sold is named in the listing, by the very names of the files.
    const listing = strFromU8(ending('.txt')[0]![1]);
    for (const [name] of ending('.pdf')) expect(listing).toContain(name.split('/')[1]);
  });

  it('is a folder of its own, beside one that is there already', async () => {
    const host = await start();
    const { handle } = await givenFolder(host);
    mkdirSync(join(host.given, 'Fox a study, for sale'));
    const saved = await value(host, 'parcel.save', { ...args, as: 'folder', target: handle });
    expect(saved.fileName).toBe('Fox a study, for sale 2');
    expect(readdirSync(host.given).sort()).toEqual(['Fox a study, for sale', saved.fileName]);
    expect(readdirSync(join(host.given, saved.fileName))).toHaveLength(saved.files);
  });

  it('has a folder for each pack where there is more than one, with a listing that names its own copies', async () => {
    const host = await start();
    const { handle } = await givenFolder(host);
    const wishes = { ...args, languages: ['en', 'de'] as const, bothHands: true };
    const saved = await value(host, 'parcel.save', {
      ...wishes,
      languages: [...wishes.languages],
      as: 'folder',
      target: handle,
    });
    const whole = join(host.given, saved.fileName);
    const packs = readdirSync(whole);
    expect(packs).toHaveLength(4);
    for (const pack of packs) {
      const files = readdirSync(join(whole, pack));
      const copies = files.filter((name) => name.endsWith('.pdf'));
      expect(copies).toHaveLength(usual.patterns);
      expect(files).toHaveLength(usual.patterns + usual.pictures + usual.listings);
      const listing = readFileSync(join(whole, pack, files.find((name) => name.endsWith('.txt'))!), 'utf8');
      expect(listing.match(/\.pdf$/gm)).toHaveLength(copies.length);
      for (const name of copies) expect(listing).toContain(name);
    }
  });

  it('tells where a text of the designer’s own is wrong for the other hand', async () => {
    const host = await start();
    const { handle } = await givenFolder(host);
    const reading =
      'Row 1 goes left to right, row 2 right to left, and so on in turn, without turning the work.';
    const design = { ...newDesign({ title: 'Fox', columns: 4, rows: 3 }), pattern: { texts: { reading } } };
    const wishes = {
      ...args,
      text: writeDesign(design),
      bothHands: true,
      as: 'folder',
      target: handle,
    } as const;
    const { notices } = await value(host, 'parcel.save', { ...wishes, languages: ['en'] });
    expect(notices.filter((notice) => notice.includes('left to right, row 2'))).toHaveLength(1);
    expect(notices.join(' ')).toContain('In “left-handed”');
  });

  it('leaves nothing where it is cancelled', async () => {
    const host = await start();
    const { handle } = await givenFolder(host);
    const stop = new AbortController();
    const options = {
      signal: stop.signal,
      onProgress: ({ done }: Progress) => {
        if (done > 0.3) stop.abort();
      },
    };
    const answer = await host.bridge.call('parcel.save', { ...args, as: 'folder', target: handle }, options);
    expect(answer).toMatchObject({ ok: false, problem: { code: 'cancelled' } });
    expect(readdirSync(host.given)).toEqual([]);
  });
});
