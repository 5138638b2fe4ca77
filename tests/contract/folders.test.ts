import { existsSync, mkdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { newDesign } from '../../shared/design/new-design.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import { temporaryFolder } from '../temporary-folder.ts';
import { bothHosts } from './both-hosts.ts';
import { givenFile, givenFolder, givenPlace, refusal, value } from './test-host.ts';

const text = writeDesign(newDesign({ title: 'Fox', columns: 4, rows: 3 }));

describe.each(bothHosts)('folders in $name', ({ start }) => {
  it('are those that were granted, the shelf’s first', async () => {
    const host = await start();
    const { trail, folders, files } = await value(host, 'folders.list', { folder: null, kind: 'design' });
    expect(folders.map(({ name }) => name)).toEqual(['Larkrow', 'given']);
    expect([trail, files]).toEqual([[], []]);
  });

  it('show their folders and the files of one kind, by name, without hidden ones', async () => {
    const host = await start();
    for (const name of ['b', 'a', '.hidden']) mkdirSync(join(host.given, name));
    for (const name of ['10.PNG', '9.png', 'x.jpeg', 'x.webp', 'x.svg', 'x.larkrow', '.png', 'png']) {
      writeFileSync(join(host.given, name), '');
    }
    const { handle } = await givenFolder(host);
    const listed = await value(host, 'folders.list', { folder: handle, kind: 'picture' });
    expect(listed.folders.map(({ name }) => name)).toEqual(['a', 'b']);
    expect(listed.files.map(({ name }) => name)).toEqual(['9.png', '10.PNG', 'x.jpeg', 'x.webp']);
    const designs = await value(host, 'folders.list', { folder: handle, kind: 'design' });
    expect(designs.files.map(({ name }) => name)).toEqual(['x.larkrow']);
  });

  it('tell the way down from the granted folder, and no further up', async () => {
    const host = await start();
    mkdirSync(join(host.given, 'a', 'b'), { recursive: true });
    let { handle } = await givenFolder(host);
    for (const name of ['a', 'b']) {
      const { folders } = await value(host, 'folders.list', { folder: handle, kind: 'design' });
      handle = folders.find((each) => each.name === name)?.handle ?? '';
    }
    const { trail } = await value(host, 'folders.list', { folder: handle, kind: 'design' });
    expect(trail.map(({ name }) => name)).toEqual(['given', 'a', 'b']);
  });

  it('give each file the same handle each time', async () => {
    const host = await start();
    writeFileSync(join(host.given, 'Fox.larkrow'), text);
    const once = await givenFile(host, 'design', 'Fox.larkrow');
    expect(await givenFile(host, 'design', 'Fox.larkrow')).toEqual(once);
    expect(await value(host, 'design.open', { design: once.handle })).toMatchObject({ design: once.handle });
  });

  it('lead nowhere through links out of them', async () => {
    const host = await start();
    const outside = temporaryFolder();
    writeFileSync(join(outside, 'Secret.larkrow'), text);
    symlinkSync(outside, join(host.given, 'folder'));
    symlinkSync(join(outside, 'Secret.larkrow'), join(host.given, 'Link.larkrow'));
    const { handle } = await givenFolder(host);
    const { folders, files } = await value(host, 'folders.list', { folder: handle, kind: 'design' });
    expect([folders, files]).toEqual([[], []]);
    expect(
      await refusal(host, 'folders.place', { folder: handle, name: 'Link.larkrow', kind: 'design' }),
    ).toBe('not-granted');
  });

  it('are asked again at each use: a file that became a link out of them is refused', async () => {
    const host = await start();
    const outside = join(temporaryFolder(), 'Secret.larkrow');
    writeFileSync(outside, text);
    writeFileSync(join(host.given, 'Fox.larkrow'), text);
    const { handle } = await givenFile(host, 'design', 'Fox.larkrow');
    const place = await givenPlace(host, 'design', 'New');
    rmSync(join(host.given, 'Fox.larkrow'));
    symlinkSync(outside, join(host.given, 'Fox.larkrow'));
    symlinkSync(join(outside, '..', 'Made.larkrow'), join(host.given, 'New.larkrow'));
    expect(await refusal(host, 'design.open', { design: handle })).toBe('not-granted');
    const save = { target: place.handle, text, stamp: null };
    expect(await refusal(host, 'design.save', save)).toBe('not-there');
    expect(existsSync(join(outside, '..', 'Made.larkrow'))).toBe(false);
  });

  it('give no place under a name that leads elsewhere, or that some platform does not take', async () => {
    const host = await start();
    const { handle } = await givenFolder(host);
    const names = [
      '../Fox',
      '..',
      '.',
      '/etc/passwd',
      'a/b',
      'a\\b',
      'C:Fox',
      'Fox\u0000',
      'F\nox',
      '.hidden',
      'NUL',
    ];
    for (const name of names) {
      const code = await refusal(host, 'folders.place', { folder: handle, name, kind: 'design' });
      expect(code, JSON.stringify(name)).toBe('bad-name');
    }
  });

  it('give a place its ending, and say whether something is replaced', async () => {
    const host = await start();
    writeFileSync(join(host.given, 'Old.pdf'), '');
    expect(await givenPlace(host, 'pattern', 'Old')).toMatchObject({ name: 'Old.pdf', exists: true });
    expect(await givenPlace(host, 'png', 'Old.pdf')).toMatchObject({ name: 'Old.pdf.png', exists: false });
    expect(await givenPlace(host, 'design', ' Fox.LARKROW ')).toMatchObject({ name: 'Fox.LARKROW' });
    const { handle } = await givenFolder(host);
    expect(await refusal(host, 'folders.place', { folder: handle, name: 'x', kind: 'picture' })).toBe(
      'wrong-kind',
    );
  });

  it('say that they are gone', async () => {
    const host = await start();
    const { handle } = await givenFolder(host);
    rmSync(host.given, { recursive: true });
    expect(await refusal(host, 'folders.list', { folder: handle, kind: 'design' })).toBe('not-there');
    expect(await refusal(host, 'shelf.useFolder', { folder: handle })).toBe('not-there');
  });
});
