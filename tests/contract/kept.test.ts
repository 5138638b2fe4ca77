import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { defaults } from '../../shared/design/defaults.ts';
import { limits } from '../../shared/design/limits.ts';
import { emptyImprint } from '../../shared/pattern/imprint.ts';
import { failingFiles } from '../unit/services/safekeeping/failing-files.ts';
import { bothHosts } from './both-hosts.ts';
import { refusal, type TestHost, value } from './test-host.ts';

const heather = {
  name: 'Heather',
  color: '#8a6f9e',
  diameterMm: 2,
  metresPer100G: 200,
  skeinG: 50,
  price: 4.5,
  ownedSkeins: 2.5,
  notes: 'Market stall, dye lot 7',
};
const rust = { ...heather, name: 'Rust', color: '#a4502c', ownedSkeins: 0 };

const leaf = {
  id: 'leaf-1',
  name: 'Leaf',
  columns: 3,
  yarns: [defaults.yarns[0]!, defaults.yarns[1]!],
  rows: ['1. 1y1 1.', '3y2', '1. 1y1 1-'],
};

const stashPath = (host: TestHost) => join(host.home.config, 'stash.json');
const motifsFolder = (host: TestHost) => join(host.home.config, 'motifs');

describe.each(bothHosts)('the stash in $name', ({ start }) => {
  it('is empty at first, and is kept for every design and every later start', async () => {
    const host = await start();
    expect(await value(host, 'stash.read', {})).toEqual({ entries: [] });
    expect(await value(host, 'stash.write', { entries: [heather, rust] })).toEqual({
      entries: [heather, rust],
    });
    const again = await start({ home: host.home });
    expect(await value(again, 'stash.read', {})).toEqual({ entries: [heather, rust] });
    expect(JSON.parse(readFileSync(stashPath(host), 'utf8'))).toEqual({
      format: 'larkrow-stash',
      version: 1,
      yarns: [heather, rust],
    });
  });

  it('keeps what a later Larkrow or the maker wrote beside the yarns', async () => {
    const host = await start();
    const file = {
      format: 'larkrow-stash',
      version: 1,
      shelf: 'by the window',
      yarns: [{ ...heather, lot: 7 }],
    };
    writeFileSync(stashPath(host), JSON.stringify(file));
    const { entries } = await value(host, 'stash.read', {});
    await value(host, 'stash.write', { entries: [...entries, rust] });
    expect(JSON.parse(readFileSync(stashPath(host), 'utf8'))).toEqual({
      ...file,
      yarns: [{ ...heather, lot: 7 }, rust],
    });
  });

  it.each([
    ['torn', '{"format": "larkrow-stash", "version": 1, "yarns": [{'],
    ['no text', '\u0000\u0000\u0000'],
    ['of another kind', '{"format": "larkrow-design", "version": 1}'],
    ['with a yarn of no colour', '{"format": "larkrow-stash", "version": 1, "yarns": [{"name": "Heather"}]}'],
  ])('that is %s is set aside under another name, and that is told', async (_, text) => {
    const host = await start();
    writeFileSync(stashPath(host), text);
    const read = await value(host, 'stash.read', {});
    expect(read.entries).toEqual([]);
    expect(read.notice).toMatch(/^Your stash could not be read.*“stash damaged 1\.json”.*\.$/);
    await value(host, 'stash.write', { entries: [rust] });
    expect(readFileSync(join(host.home.config, 'stash damaged 1.json'), 'utf8')).toBe(text);
    expect(await value(host, 'stash.read', {})).toEqual({ entries: [rust] });
  });

  it('of a newer Larkrow is left as it is', async () => {
    const host = await start();
    const text = '{"format": "larkrow-stash", "version": 2, "baskets": []}';
    writeFileSync(stashPath(host), text);
    expect(await refusal(host, 'stash.read', {})).toBe('newer-version');
    expect(await refusal(host, 'stash.write', { entries: [rust] })).toBe('newer-version');
    expect(readFileSync(stashPath(host), 'utf8')).toBe(text);
  });

  it('stays whole where the disk is full', async () => {
    const first = await start();
    await value(first, 'stash.write', { entries: [heather] });
    const host = await start({ home: first.home, files: failingFiles({ always: { write: 'ENOSPC' } }) });
    expect(await refusal(host, 'stash.write', { entries: [] })).toBe('disk-full');
    expect(await value(host, 'stash.read', {})).toEqual({ entries: [heather] });
  });

  it(`holds ${limits.stashYarns} yarns and not one more`, async () => {
    const host = await start();
    const entries = Array.from({ length: limits.stashYarns }, () => ({
      ...heather,
      notes: 'x'.repeat(limits.stashNoteChars),
    }));
    expect((await value(host, 'stash.write', { entries })).entries).toHaveLength(limits.stashYarns);
    expect(await refusal(host, 'stash.write', { entries: [...entries, rust] })).toBe('bad-arguments');
  });

  it('takes yarns written at the same moment one list after the other', async () => {
    const host = await start();
    const lists = [[heather], [rust], [heather, rust]];
    await Promise.all(lists.map((entries) => value(host, 'stash.write', { entries })));
    expect(lists).toContainEqual((await value(host, 'stash.read', {})).entries);
    expect(readdirSync(host.home.config).filter((name) => name.endsWith('.part'))).toEqual([]);
  });
});

describe.each(bothHosts)('motifs in $name', ({ start }) => {
  it('are kept for every design, listed by name, renamed and removed', async () => {
    const host = await start();
    expect(await value(host, 'motifs.list', {})).toEqual({ motifs: [] });
    await value(host, 'motifs.keep', { motif: leaf });
    await value(host, 'motifs.keep', { motif: { ...leaf, id: '../../any "text" at all', name: 'Acorn' } });
    const again = await start({ home: host.home });
    const names = async () => (await value(again, 'motifs.list', {})).motifs.map(({ name }) => name);
    expect(await names()).toEqual(['Acorn', 'Leaf']);
    expect((await value(again, 'motifs.list', {})).motifs[1]).toEqual(leaf);
    await value(again, 'motifs.rename', { id: 'leaf-1', name: 'A beech leaf' });
    expect(await names()).toEqual(['A beech leaf', 'Acorn']);
    await value(again, 'motifs.remove', { id: 'leaf-1' });
    expect(await names()).toEqual(['Acorn']);
  });

  it('that are removed lie in the bin', async () => {
    const host = await start();
    await value(host, 'motifs.keep', { motif: leaf });
    const [file] = readdirSync(motifsFolder(host));
    const text = readFileSync(join(motifsFolder(host), file!), 'utf8');
    await value(host, 'motifs.remove', { id: leaf.id });
    expect(readdirSync(motifsFolder(host))).not.toContain(file);
    expect(textsOf(host)).toContain(text);
  });

  it('are never replaced by another of the same id, and those that are gone are told', async () => {
    const host = await start();
    await value(host, 'motifs.keep', { motif: leaf });
    expect(await refusal(host, 'motifs.keep', { motif: { ...leaf, name: 'Other' } })).toBe('exists');
    expect((await value(host, 'motifs.list', {})).motifs).toEqual([leaf]);
    expect(await refusal(host, 'motifs.rename', { id: 'none', name: 'Fox' })).toBe('not-there');
    expect(await refusal(host, 'motifs.remove', { id: 'none' })).toBe('not-there');
  });

  it('that are damaged are set aside and told, and harm no other', async () => {
    const host = await start();
    await value(host, 'motifs.keep', { motif: leaf });
    const [file] = readdirSync(motifsFolder(host));
    await value(host, 'motifs.keep', { motif: { ...leaf, id: 'leaf-2' } });
    writeFileSync(join(motifsFolder(host), file!), '{"format": "larkrow-motif", "version": 1, "motif": {}}');
    const list = await value(host, 'motifs.list', {});
    expect(list.motifs).toEqual([{ ...leaf, id: 'leaf-2' }]);
    expect(list.notice).toMatch(/^A motif could not be read.* damaged 1\.json”.*\.$/);
    expect(readdirSync(motifsFolder(host))).toContain(file!.replace('.json', ' damaged 1.json'));
    expect(await value(host, 'motifs.list', {})).toEqual({ motifs: [{ ...leaf, id: 'leaf-2' }] });
  });

  it('of a newer Larkrow are left alone', async () => {
    const host = await start();
    mkdirSync(motifsFolder(host), { recursive: true });
    const path = join(motifsFolder(host), `${'0'.repeat(32)}.json`);
    writeFileSync(path, '{"format": "larkrow-motif", "version": 2}');
    const list = await value(host, 'motifs.list', {});
    expect(list.motifs).toEqual([]);
    expect(list.notice).toContain('saved by a newer Larkrow');
    expect(readFileSync(path, 'utf8')).toContain('"version": 2');
  });

  it('whose rows can’t be read are not kept', async () => {
    const host = await start();
    const torn = { ...leaf, rows: ['2y1', '3y2', '3y9'] };
    expect(await refusal(host, 'motifs.keep', { motif: torn })).toBe('bad-arguments');
    expect(await value(host, 'motifs.list', {})).toEqual({ motifs: [] });
  });

  it(`are at most ${limits.motifs}`, async () => {
    const host = await start();
    mkdirSync(motifsFolder(host), { recursive: true });
    for (let n = 1; n < limits.motifs; n++) {
      const motif = { ...leaf, id: `leaf-${n}` };
      const name = `${n.toString(16).padStart(32, '0')}.json`;
      writeFileSync(
        join(motifsFolder(host), name),
        JSON.stringify({ format: 'larkrow-motif', version: 1, motif }),
      );
    }
    await value(host, 'motifs.keep', { motif: { ...leaf, id: 'the last' } });
    expect((await value(host, 'motifs.list', {})).motifs).toHaveLength(limits.motifs);
    expect(await refusal(host, 'motifs.keep', { motif: { ...leaf, id: 'one more' } })).toBe('too-many');
  });
});

/** The text of every file at home, the bin's too. */
function textsOf(host: TestHost): string[] {
  return readdirSync(dirname(host.home.config), { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .map((each) => readFileSync(join(each.parentPath, each.name), 'utf8'));
}

const imprintPath = (host: TestHost) => join(host.home.config, 'imprint.json');

describe.each(bothHosts)('the imprint in $name', ({ start }) => {
  const imprint = {
    ...emptyImprint,
    name: 'Ada Fenn',
    workshop: 'Fenn & Daughter',
    contact: ['Mill Lane 3', 'ada@harrow.example'],
    accent: '#345678',
  };

  it('is empty at first, and is kept for every pattern and every later start', async () => {
    const host = await start();
    expect(await value(host, 'imprint.read', {})).toEqual({ imprint: emptyImprint });
    expect(await value(host, 'imprint.write', { imprint })).toEqual({ imprint });
    const again = await start({ home: host.home });
    expect(await value(again, 'imprint.read', {})).toEqual({ imprint });
  });

  it('keeps what a later Larkrow wrote beside it', async () => {
    const host = await start();
    writeFileSync(imprintPath(host), JSON.stringify({ ...imprint, motto: 'Slowly' }));
    await value(host, 'imprint.write', { imprint: { ...imprint, name: 'Ada' } });
    expect(JSON.parse(readFileSync(imprintPath(host), 'utf8'))).toMatchObject({
      name: 'Ada',
      motto: 'Slowly',
    });
  });

  it('that is damaged is set aside, and said so', async () => {
    const host = await start();
    writeFileSync(imprintPath(host), '{ "format": "larkrow-imprint", "version": 1, ');
    const read = await value(host, 'imprint.read', {});
    expect(read.imprint).toEqual(emptyImprint);
    expect(read.notice).toContain('imprint');
    expect(readdirSync(host.home.config).some((name) => name.includes('damaged'))).toBe(true);
  });

  it('takes a mark that is light enough to stand in every copy', async () => {
    const host = await start();
    const noise = Uint8Array.from({ length: 900 * 700 * 4 }, (_, i) => (i * 2_654_435_761) >>> 13);
    const png = await sharp(noise, { raw: { width: 900, height: 700, channels: 4 } })
      .png()
      .toBuffer();
    const { handle } = await value(host, 'picture.take', { name: 'mark.png', bytes: new Uint8Array(png) });
    const mark = await value(host, 'mark.take', { picture: handle });
    expect(mark.mediaType).toBe('image/png');
    expect(mark.bytes.length).toBeLessThanOrEqual(limits.markBytes);
    const kept = {
      ...imprint,
      mark: { mediaType: mark.mediaType, base64: Buffer.from(mark.bytes).toString('base64') },
    };
    expect((await value(host, 'imprint.write', { imprint: kept })).imprint).toEqual(kept);
  });
});
