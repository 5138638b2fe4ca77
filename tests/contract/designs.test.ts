import {
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { nodeFiles } from '../../app/services/files/file-layer.ts';
import type { ShelfEntry } from '../../shared/bridge.ts';
import { demoDesigns } from '../../shared/demos/demo-designs.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import { readDesign } from '../../shared/design/read-design.ts';
import { DESIGN_VERSION } from '../../shared/design/schema.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import { temporaryFolder } from '../temporary-folder.ts';
import { bothHosts } from './both-hosts.ts';
import { givenFile, givenFolder, givenPlace, refusal, type TestHost, value } from './test-host.ts';

const textOf = (title: string, columns = 4) => writeDesign(newDesign({ title, columns, rows: 3 }));

async function entries(host: TestHost): Promise<ShelfEntry[]> {
  return (await value(host, 'shelf.list', {})).entries;
}

async function entry(host: TestHost, title: string): Promise<ShelfEntry> {
  const found = (await entries(host)).find((each) => each.title === title);
  if (!found) throw new Error(`${title} is not on the shelf`);
  return found;
}

describe.each(bothHosts)('the shelf of $name', ({ start }) => {
  it('shows the demos on the very first start, as small pictures', async () => {
    const host = await start({ firstStart: true });
    const { folder, entries } = await value(host, 'shelf.list', {});
    expect(folder.name).toBe('Larkrow');
    expect(entries.map(({ fileName }) => fileName).sort()).toEqual(
      demoDesigns.map((each) => each.fileName).sort(),
    );
    for (const { thumbnail, columns, rows, problem } of entries) {
      expect(problem).toBeUndefined();
      expect(thumbnail?.columns).toBe(Math.min(columns ?? 0, 200));
      expect(thumbnail?.rows).toBe(Math.min(rows ?? 0, 200));
      expect(thumbnail?.cells).toHaveLength((thumbnail?.columns ?? 0) * (thumbnail?.rows ?? 0));
      expect(thumbnail?.aspect).toBeGreaterThan(0.3);
      for (const code of new Set(thumbnail?.cells))
        if (code !== 255) expect(thumbnail?.colors).toHaveProperty(`${code}`);
    }
  });

  it('does not bring the demos back that were moved to the bin, unless it is asked to', async () => {
    const first = await start({ firstStart: true });
    for (const { design } of await entries(first)) await value(first, 'shelf.bin', { design });
    const second = await start({ home: first.home });
    expect(await entries(second)).toEqual([]);
    expect(await value(second, 'shelf.addDemos', {})).toEqual({ added: 3 });
    expect(await value(second, 'shelf.addDemos', {})).toEqual({ added: 0 });
    expect(await entries(second)).toHaveLength(3);
  });

  it('lists damaged files with what is wrong with them, newest first, and leaves them where they are', async () => {
    const host = await start();
    writeFileSync(join(host.home.shelf, 'Torn.larkrow'), textOf('Torn').slice(0, 300));
    writeFileSync(join(host.home.shelf, 'Picture.larkrow'), '%PDF-1.7');
    writeFileSync(join(host.home.shelf, 'notes.txt'), 'not for the shelf');
    mkdirSync(join(host.home.shelf, 'Folder.larkrow'));
    const list = await entries(host);
    expect(list).toHaveLength(4);
    expect(list.map(({ modifiedMs }) => modifiedMs)).toEqual(
      list.map((each) => each.modifiedMs).sort((a, b) => b - a),
    );
    for (const name of ['Torn.larkrow', 'Picture.larkrow']) {
      const found = list.find(({ fileName }) => fileName === name);
      expect(found?.problem).toMatch(/^[A-Z“].*\.$/);
      expect(found?.title).toBeUndefined();
      expect(readdirSync(host.home.shelf)).toContain(name);
    }
  });

  it('sees a file that changed', async () => {
    const host = await start();
    writeFileSync(join(host.home.shelf, 'Fox.larkrow'), textOf('Fox'));
    expect(await entry(host, 'Fox')).toMatchObject({ columns: 4 });
    writeFileSync(join(host.home.shelf, 'Fox.larkrow'), textOf('Owl', 9));
    expect(await entry(host, 'Owl')).toMatchObject({ columns: 9, fileName: 'Fox.larkrow' });
  });

  it('follows no link out of its folder', async () => {
    const host = await start();
    const outside = join(temporaryFolder(), 'Secret.larkrow');
    writeFileSync(outside, textOf('Secret'));
    writeFileSync(join(host.home.shelf, 'Fox.larkrow'), textOf('Fox'));
    symlinkSync(outside, join(host.home.shelf, 'Link.larkrow'));
    symlinkSync(join(host.home.shelf, 'gone'), join(host.home.shelf, 'Dangling.larkrow'));
    symlinkSync('Fox.larkrow', join(host.home.shelf, 'Inside.larkrow'));
    const names = (await entries(host)).map(({ fileName }) => fileName);
    expect(names).toContain('Inside.larkrow');
    expect(names).not.toContain('Link.larkrow');
    expect(names).not.toContain('Dangling.larkrow');
  });

  it('duplicates a design under a title and a name of its own', async () => {
    const host = await start();
    const { design } = await entry(host, 'Moth at the window');
    const names = [];
    for (let n = 0; n < 2; n++) names.push((await value(host, 'shelf.duplicate', { design })).fileName);
    expect(names).toEqual(['Moth at the window copy.larkrow', 'Moth at the window copy 2.larkrow']);
    expect((await entries(host)).filter(({ title }) => title === 'Moth at the window copy')).toHaveLength(2);
  });

  it('renames a design inside and outside, and its handle goes with it', async () => {
    const host = await start();
    const { design } = await entry(host, 'Moth at the window');
    const renamed = await value(host, 'shelf.rename', { design, title: 'Night: moth?' });
    expect(renamed).toMatchObject({ design, fileName: 'Night moth.larkrow', title: 'Night: moth?' });
    expect(readdirSync(host.home.shelf)).not.toContain('Moth at the window.larkrow');
    expect(await value(host, 'design.open', { design })).toMatchObject({ fileName: 'Night moth.larkrow' });
    expect(await value(host, 'shelf.rename', { design, title: 'night: MOTH?' })).toMatchObject({
      fileName: 'night MOTH.larkrow',
    });
  });

  it('renames to no name that is in use', async () => {
    const host = await start();
    const lamp = readFileSync(join(host.home.shelf, 'Lamp at Harrow Point.larkrow'));
    const { design } = await entry(host, 'Moth at the window');
    const renamed = await value(host, 'shelf.rename', { design, title: 'Lamp at Harrow Point' });
    expect(renamed.fileName).toBe('Lamp at Harrow Point 2.larkrow');
    expect(readFileSync(join(host.home.shelf, 'Lamp at Harrow Point.larkrow'))).toEqual(lamp);
  });

  it('moves a design to the bin, and takes it off the recent list', async () => {
    const host = await start();
    const { design } = await entry(host, 'Moth at the window');
    await value(host, 'design.open', { design });
    await value(host, 'shelf.bin', { design });
    expect(await entries(host)).toHaveLength(1);
    expect(await value(host, 'recent.list', {})).toEqual({ entries: [] });
    expect(await refusal(host, 'design.open', { design })).toBe('not-there');
    expect(await refusal(host, 'shelf.bin', { design })).toBe('not-there');
  });

  it('can be another folder, and stays that at the next start', async () => {
    const host = await start();
    writeFileSync(join(host.given, 'Fox.larkrow'), textOf('Fox'));
    const { handle } = await givenFolder(host);
    await value(host, 'shelf.useFolder', { folder: handle });
    expect(await entries(host)).toMatchObject([{ title: 'Fox' }]);
    const again = await start({ home: host.home, given: join(temporaryFolder(), 'given') });
    expect((await entries(again)).map(({ title }) => title)).toEqual(['Fox']);
  });

  it('says a sentence where its folder can’t be used', async () => {
    const host = await start();
    rmSync(host.home.shelf, { recursive: true });
    writeFileSync(host.home.shelf, 'a file in its place');
    expect(await refusal(host, 'shelf.list', {})).toBe('exists');
  });
});

describe.each(bothHosts)('designs in $name', ({ start }) => {
  it('are saved to a new place, opened, changed and saved again', async () => {
    const host = await start();
    const place = await value(host, 'shelf.newPlace', { title: 'Fox' });
    expect(place.name).toBe('Fox.larkrow');
    const saved = await value(host, 'design.save', {
      target: place.handle,
      text: textOf('Fox'),
      stamp: null,
    });
    const opened = await value(host, 'design.open', { design: saved.design });
    expect(opened).toEqual({
      design: saved.design,
      fileName: 'Fox.larkrow',
      text: textOf('Fox'),
      stamp: saved.stamp,
    });
    const longer = textOf('Fox', 9);
    const again = await value(host, 'design.save', {
      target: saved.design,
      text: longer,
      stamp: opened.stamp,
    });
    expect(readFileSync(join(host.home.shelf, 'Fox.larkrow'), 'utf8')).toBe(longer);
    expect(again.stamp.size).toBe(Buffer.byteLength(longer));
    expect(await value(host, 'recent.list', {})).toMatchObject({ entries: [{ name: 'Fox.larkrow' }] });
    await value(host, 'recent.clear', {});
    expect(await value(host, 'recent.list', {})).toEqual({ entries: [] });
  });

  it('keep every letter, and lose only a byte-order mark', async () => {
    const host = await start();
    writeFileSync(join(host.home.shelf, 'Сова.larkrow'), `\uFEFF${textOf('Сова и λύρα 🦉')}`);
    const { design } = await entry(host, 'Сова и λύρα 🦉');
    expect((await value(host, 'design.open', { design })).text).toBe(textOf('Сова и λύρα 🦉'));
  });

  it('that were changed outside are not replaced', async () => {
    const host = await start();
    const { design } = await entry(host, 'Moth at the window');
    const { text, stamp } = await value(host, 'design.open', { design });
    const path = join(host.home.shelf, 'Moth at the window.larkrow');
    writeFileSync(path, textOf('Theirs'));
    expect(await refusal(host, 'design.save', { target: design, text, stamp })).toBe('changed-outside');
    expect(await refusal(host, 'design.save', { target: design, text, stamp: null })).toBe('changed-outside');
    expect(readFileSync(path, 'utf8')).toBe(textOf('Theirs'));
    expect(await value(host, 'design.open', { design })).toMatchObject({ text: textOf('Theirs') });
  });

  it('that two windows save at once: one wins, the other is told', async () => {
    const host = await start();
    const { design } = await entry(host, 'Moth at the window');
    const { stamp } = await value(host, 'design.open', { design });
    const saves = ['One', 'Two'].map((title) =>
      host.bridge.call('design.save', { target: design, text: textOf(title), stamp }),
    );
    const results = await Promise.all(saves);
    expect(results.filter(({ ok }) => ok)).toHaveLength(1);
    expect(results.find(({ ok }) => !ok)).toMatchObject({ problem: { code: 'changed-outside' } });
  });

  it('never take a place that somebody took after it was chosen', async () => {
    const host = await start();
    const place = await value(host, 'shelf.newPlace', { title: 'Fox' });
    writeFileSync(join(host.home.shelf, 'Fox.larkrow'), textOf('Theirs'));
    const save = { target: place.handle, text: textOf('Fox'), stamp: null };
    expect(await refusal(host, 'design.save', save)).toBe('changed-outside');
    expect(readFileSync(join(host.home.shelf, 'Fox.larkrow'), 'utf8')).toBe(textOf('Theirs'));
  });

  it('replace exactly the file that the person agreed to replace', async () => {
    const host = await start();
    writeFileSync(join(host.given, 'Fox.larkrow'), textOf('Old'));
    const place = await givenPlace(host, 'design', 'Fox');
    expect(place).toMatchObject({ name: 'Fox.larkrow', exists: true });
    const save = { target: place.handle, text: textOf('Fox'), stamp: null };
    await value(host, 'design.save', save);
    await value(host, 'design.save', save);
    writeFileSync(join(host.given, 'Fox.larkrow'), textOf('Theirs'));
    expect(await refusal(host, 'design.save', save)).toBe('changed-outside');
  });

  it('that could not be opened again are never written', async () => {
    const host = await start();
    const place = await value(host, 'shelf.newPlace', { title: 'Fox' });
    for (const text of [
      '',
      '{}',
      textOf('Fox').slice(0, 200),
      textOf('Fox').replace(`"version": ${DESIGN_VERSION}`, `"version": ${DESIGN_VERSION + 1}`),
    ]) {
      const result = await host.bridge.call('design.save', { target: place.handle, text, stamp: null });
      const own = readDesign(text);
      expect(result.ok ? '' : result.problem).toEqual(own.ok ? null : own.problem);
    }
    expect(readdirSync(host.home.shelf)).not.toContain('Fox.larkrow');
  });

  it('come out of a pattern that was made with its design inside, which stays as it is', async () => {
    const host = await start();
    const text = textOf('Fox');
    const place = await givenPlace(host, 'pattern', 'Fox for me.pdf');
    const save = { text, paper: 'a4', units: 'metric', target: place.handle } as const;
    await value(host, 'pattern.save', { ...save, attachDesign: true });
    const bytes = readFileSync(join(host.given, 'Fox for me.pdf'));
    const pattern = await givenFile(host, 'pattern', 'Fox for me.pdf');
    expect(await value(host, 'design.ofPattern', { pattern: pattern.handle })).toEqual({ text });
    expect(await value(host, 'design.ofPattern', { pattern: new Uint8Array(bytes) })).toEqual({ text });
    const over = { target: pattern.handle, text, stamp: null };
    expect(await refusal(host, 'design.save', over)).toBe('wrong-kind');
    expect(readFileSync(join(host.given, 'Fox for me.pdf')).equals(bytes)).toBe(true);
    await value(host, 'pattern.save', save);
    expect(await refusal(host, 'design.ofPattern', { pattern: pattern.handle })).toBe('no-design-inside');
  });

  it('that are damaged, foreign, newer or gone are refused, each in its own words', async () => {
    const host = await start();
    const files: Record<string, [string, string]> = {
      'Torn.larkrow': [textOf('Torn').slice(0, 300), 'damaged'],
      'Foreign.larkrow': ['%PDF-1.7 \u0000', 'not-a-design'],
      'Newer.larkrow': [
        textOf('Newer').replace(`"version": ${DESIGN_VERSION}`, '"version": 9'),
        'newer-version',
      ],
      'Gone.larkrow': [textOf('Gone'), 'not-there'],
    };
    for (const [name, [text]] of Object.entries(files)) writeFileSync(join(host.given, name), text);
    for (const [name, [, code]] of Object.entries(files)) {
      const { handle } = await givenFile(host, 'design', name);
      if (code === 'not-there') unlinkSync(join(host.given, name));
      expect(await refusal(host, 'design.open', { design: handle }), name).toBe(code);
    }
    expect(await value(host, 'recent.list', {})).toEqual({ entries: [] });
  });

  it('can be saved again after the disk had not confirmed a save', async () => {
    let confirms = true;
    const host = await start({
      files: {
        ...nodeFiles,
        syncFolder: async (folder) => {
          if (!confirms) throw Object.assign(new Error('not flushed'), { code: 'EIO' });
          await nodeFiles.syncFolder(folder);
        },
      },
    });
    const { design } = await entry(host, 'Moth at the window');
    const { stamp } = await value(host, 'design.open', { design });
    const save = { target: design, text: textOf('Fox'), stamp };
    confirms = false;
    expect(await refusal(host, 'design.save', save)).toBe('not-confirmed');
    confirms = true;
    expect((await value(host, 'design.save', save)).fileName).toBe('Moth at the window.larkrow');
  });

  it('on a full disk stay as they were, and it is said', async () => {
    let full = false;
    const host = await start({
      files: {
        ...nodeFiles,
        create: async (path, mode) => {
          const file = await nodeFiles.create(path, mode);
          if (!full) return file;
          return {
            ...file,
            write: () => Promise.reject(Object.assign(new Error('full'), { code: 'ENOSPC' })),
          };
        },
      },
    });
    const { design } = await entry(host, 'Moth at the window');
    const { text, stamp } = await value(host, 'design.open', { design });
    full = true;
    const files = readdirSync(host.home.shelf);
    expect(await refusal(host, 'design.save', { target: design, text: textOf('Fox'), stamp })).toBe(
      'disk-full',
    );
    expect(readdirSync(host.home.shelf)).toEqual(files);
    expect((await value(host, 'design.open', { design })).text).toBe(text);
  });
});
