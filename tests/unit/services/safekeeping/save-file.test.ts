import {
  chmodSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { nodeFiles } from '../../../../app/services/files/file-layer.ts';
import { saveFile } from '../../../../app/services/safekeeping/save-file.ts';
import { readStamped } from '../../../../app/services/safekeeping/stamp.ts';
import { temporaryFolder } from '../../../temporary-folder.ts';
import { failingFiles } from './failing-files.ts';

const before = Buffer.from('the old version, whole');
const after = Buffer.from('the new version, whole, and longer than the old one');
const codes = ['ENOSPC', 'EIO', 'EPERM', 'EACCES', 'EROFS', 'ENOENT', 'EBUSY', 'EDQUOT'];

function oldFile(): { folder: string; path: string } {
  const folder = temporaryFolder();
  const path = join(folder, 'Fox.larkrow');
  writeFileSync(path, before);
  return { folder, path };
}

async function opened(path: string) {
  return (await readStamped(nodeFiles, path)).stamp;
}

/** The operations of a save that goes well, so that each can be made to fail. */
async function operationsOf(replacing: boolean): Promise<string[]> {
  const { path } = oldFile();
  const files = failingFiles();
  const stamp = await opened(path);
  if (!replacing) rmSync(path);
  await saveFile(files, { path, bytes: after, replaces: replacing ? [stamp] : [] });
  return files.done;
}

describe('a save', () => {
  it('replaces the version that it grew from, and gives the stamp of the new one', async () => {
    const { folder, path } = oldFile();
    const saved = await saveFile(nodeFiles, { path, bytes: after, replaces: [await opened(path)] });
    expect(saved).toEqual({ ok: true, value: await opened(path) });
    expect(readFileSync(path)).toEqual(after);
    expect(readdirSync(folder)).toEqual(['Fox.larkrow']);
  });

  it('makes a file that was not there', async () => {
    const path = join(temporaryFolder(), 'New.larkrow');
    expect(await saveFile(nodeFiles, { path, bytes: after, replaces: [] })).toMatchObject({ ok: true });
    expect(readFileSync(path)).toEqual(after);
  });

  it('writes, flushes, reads back, looks at the target, renames and flushes the folder, in this order', async () => {
    const { path } = oldFile();
    const files = failingFiles();
    await saveFile(files, { path, bytes: after, replaces: [await opened(path)] });
    const order = ['create', 'write', 'sync', 'close', 'read', 'read', 'rename', 'syncFolder'];
    expect(files.done.filter((name) => order.includes(name))).toEqual(order);
  });

  it('goes on where the disk takes only a part at a time', async () => {
    const { path } = oldFile();
    const files = failingFiles({ writeBytes: 7 });
    expect(await saveFile(files, { path, bytes: after, replaces: 'any' })).toMatchObject({ ok: true });
    expect(readFileSync(path)).toEqual(after);
  });

  it('keeps the permissions of the file', async () => {
    const { path } = oldFile();
    chmodSync(path, 0o640);
    await saveFile(nodeFiles, { path, bytes: after, replaces: 'any' });
    expect(statSync(path).mode & 0o777).toBe(0o640);
  });

  it('saves through a link, and leaves the link one', async () => {
    const { folder, path } = oldFile();
    const link = join(folder, 'link.larkrow');
    symlinkSync(path, link);
    await saveFile(nodeFiles, { path: link, bytes: after, replaces: 'any' });
    expect(readFileSync(path)).toEqual(after);
    expect((await nodeFiles.factsOf(link)).kind).toBe('link');
  });
});

describe('a save that finds another version', () => {
  it('replaces nothing, and says so', async () => {
    const { folder, path } = oldFile();
    const stamp = await opened(path);
    writeFileSync(path, 'somebody else was here');
    const saved = await saveFile(nodeFiles, { path, bytes: after, replaces: [stamp] });
    expect(saved).toMatchObject({ ok: false, problem: { code: 'changed-outside' } });
    expect(readFileSync(path, 'utf8')).toBe('somebody else was here');
    expect(readdirSync(folder)).toEqual(['Fox.larkrow']);
  });

  it('keeps what somebody else wrote at any moment before its last look', async () => {
    const theirs = 'somebody else was here';
    const operations = await operationsOf(true);
    // After the look only the rename follows. No system can look and rename in one, so this moment stays.
    const lastLook = operations.lastIndexOf('read');
    expect(operations.slice(lastLook + 1)).toEqual(['rename', 'syncFolder']);
    for (let moment = 0; moment <= lastLook; moment++) {
      const { path } = oldFile();
      const stamp = await opened(path);
      const files = failingFiles({
        before: (_name, at) => {
          if (at === moment) writeFileSync(path, theirs);
        },
      });
      const saved = await saveFile(files, { path, bytes: after, replaces: [stamp] });
      expect(saved, `operation ${moment}`).toMatchObject({ ok: false, problem: { code: 'changed-outside' } });
      expect(readFileSync(path, 'utf8'), `operation ${moment}`).toBe(theirs);
    }
  });

  it('notices a change of the same length at the same time', async () => {
    const { path } = oldFile();
    const stamp = await opened(path);
    writeFileSync(path, String(before).replace('old', 'new'));
    const saved = await saveFile(nodeFiles, { path, bytes: after, replaces: [{ ...stamp }] });
    expect(saved).toMatchObject({ ok: false, problem: { code: 'changed-outside' } });
  });

  it('does not mind a file that was only touched', async () => {
    const { path } = oldFile();
    const stamp = await opened(path);
    writeFileSync(path, before);
    const saved = await saveFile(nodeFiles, { path, bytes: after, replaces: [{ ...stamp, modifiedMs: 0 }] });
    expect(saved).toMatchObject({ ok: true });
  });

  it('writes a file anew that is gone', async () => {
    const { path } = oldFile();
    const stamp = await opened(path);
    rmSync(path);
    expect(await saveFile(nodeFiles, { path, bytes: after, replaces: [stamp] })).toMatchObject({ ok: true });
  });

  it('never takes a name that should be free and is not', async () => {
    const { path } = oldFile();
    const saved = await saveFile(nodeFiles, { path, bytes: after, replaces: [] });
    expect(saved).toMatchObject({ ok: false, problem: { code: 'changed-outside' } });
    expect(readFileSync(path)).toEqual(before);
  });

  it('never takes a free name that somebody takes in the last moment', async () => {
    const path = join(temporaryFolder(), 'Fox.larkrow');
    const files = failingFiles();
    const link = files.link;
    const saved = await saveFile(
      {
        ...files,
        link: (from, to) => {
          writeFileSync(path, before);
          return link(from, to);
        },
      },
      { path, bytes: after, replaces: [] },
    );
    expect(saved).toMatchObject({ ok: false, problem: { code: 'changed-outside' } });
    expect(readFileSync(path)).toEqual(before);
  });
});

describe('a save on a disk that fails', () => {
  it.each([true, false])(
    'leaves the whole old or the whole new version, one sentence, and no temporary file (replacing: %s)',
    async (replacing) => {
      const names = await operationsOf(replacing);
      expect(names.length).toBeGreaterThan(8);
      for (const code of codes) {
        for (const [at, name] of names.entries()) {
          const { folder, path } = oldFile();
          const stamp = await opened(path);
          if (!replacing) rmSync(path);
          const files = failingFiles({ at, code });
          const saved = await saveFile(files, { path, bytes: after, replaces: replacing ? [stamp] : [] });
          const there = readdirSync(folder);
          const content = there.includes('Fox.larkrow') ? readFileSync(path) : null;
          const where = `${code} at ${name}, operation ${at}`;
          if (saved.ok || saved.inPlace) expect(content, where).toEqual(after);
          else expect(content, where).toEqual(replacing ? before : null);
          if (!saved.ok) expect(saved.problem.sentence, where).toMatch(/^“Fox\.larkrow” .+\.$/);
          // A temporary file stays only where removing it was what failed.
          if (name !== 'remove')
            expect(
              there.filter((each) => each.endsWith('.part')),
              where,
            ).toEqual([]);
        }
      }
    },
  );

  it('does not flush the same file again after a failed flush, but writes one new file', async () => {
    const { path } = oldFile();
    const names = await operationsOf(true);
    const files = failingFiles({ at: names.indexOf('sync'), code: 'EIO' });
    expect(await saveFile(files, { path, bytes: after, replaces: 'any' })).toMatchObject({ ok: true });
    expect(files.done.filter((name) => name === 'create')).toHaveLength(2);
    expect(readFileSync(path)).toEqual(after);
  });

  it('gives up after the second failed flush', async () => {
    const { folder, path } = oldFile();
    const files = failingFiles({ always: { sync: 'EIO' } });
    const saved = await saveFile(files, { path, bytes: after, replaces: 'any' });
    expect(saved).toMatchObject({ ok: false, problem: { code: 'disk-fault' } });
    expect(files.done.filter((name) => name === 'create')).toHaveLength(2);
    expect(readFileSync(path)).toEqual(before);
    expect(readdirSync(folder)).toEqual(['Fox.larkrow']);
  });

  it('notices that other bytes come back than were written', async () => {
    const { path } = oldFile();
    const saved = await saveFile(failingFiles({ unfaithful: true }), { path, bytes: after, replaces: 'any' });
    expect(saved).toMatchObject({ ok: false, problem: { code: 'disk-fault' } });
    expect(readFileSync(path)).toEqual(before);
  });

  it('says that a disk which takes nothing is full', async () => {
    const { path } = oldFile();
    const saved = await saveFile(failingFiles({ writeBytes: 0 }), { path, bytes: after, replaces: 'any' });
    expect(saved).toMatchObject({ ok: false, problem: { code: 'disk-full' } });
    expect(readFileSync(path)).toEqual(before);
  });

  it('tells where the new version stands though its folder was not flushed', async () => {
    const { path } = oldFile();
    const files = failingFiles({ always: { syncFolder: 'EIO' } });
    const saved = await saveFile(files, { path, bytes: after, replaces: 'any' });
    expect(saved).toMatchObject({
      ok: false,
      problem: { code: 'not-confirmed' },
      inPlace: await opened(path),
    });
  });

  it('is content where the platform can’t flush folders', async () => {
    const { path } = oldFile();
    const files = failingFiles({ always: { syncFolder: 'EPERM' } });
    expect(await saveFile(files, { path, bytes: after, replaces: 'any' })).toMatchObject({ ok: true });
  });

  it('says that the folder is gone', async () => {
    const path = join(temporaryFolder(), 'gone', 'Fox.larkrow');
    const saved = await saveFile(nodeFiles, { path, bytes: after, replaces: [] });
    expect(saved).toMatchObject({ ok: false, problem: { code: 'not-there' } });
  });

  it('refuses a folder of that name', async () => {
    const path = join(temporaryFolder(), 'Fox.larkrow');
    mkdirSync(path);
    const saved = await saveFile(nodeFiles, { path, bytes: after, replaces: 'any' });
    expect(saved).toMatchObject({ ok: false, problem: { code: 'not-a-file' } });
  });

  it('respects a file that is marked as read-only', async () => {
    const { path } = oldFile();
    chmodSync(path, 0o444);
    const saved = await saveFile(nodeFiles, { path, bytes: after, replaces: 'any' });
    expect(saved).toMatchObject({ ok: false, problem: { code: 'read-only' } });
    expect(readFileSync(path)).toEqual(before);
  });

  it('saves where the disk knows no second names for a file', async () => {
    const path = join(temporaryFolder(), 'Fox.larkrow');
    const files = failingFiles({ always: { link: 'EPERM' } });
    expect(await saveFile(files, { path, bytes: after, replaces: [] })).toMatchObject({ ok: true });
    expect(readFileSync(path)).toEqual(after);
  });

  it('throws what is no fault of a file', async () => {
    const { path } = oldFile();
    const files = failingFiles({ at: 0, code: 'ESOMETHING' });
    await expect(saveFile(files, { path, bytes: after, replaces: 'any' })).rejects.toThrow('ESOMETHING');
  });
});

describe('a target that another program holds, as on Windows', () => {
  const patience = { busyWaitsMs: [1, 1, 1] };

  it('is tried again for a while', async () => {
    const { path } = oldFile();
    let refusals = 2;
    const files = {
      ...nodeFiles,
      rename: async (from: string, to: string) => {
        if (refusals-- > 0) throw Object.assign(new Error('held'), { code: 'EPERM' });
        return nodeFiles.rename(from, to);
      },
    };
    expect(await saveFile(files, { path, bytes: after, replaces: 'any' }, patience)).toMatchObject({
      ok: true,
    });
    expect(readFileSync(path)).toEqual(after);
  });

  it('gets the new version beside it in the end, both are kept, and it is said', async () => {
    const { folder, path } = oldFile();
    const files = failingFiles({ always: { rename: 'EBUSY' } });
    const saved = await saveFile(files, { path, bytes: after, replaces: 'any' }, patience);
    expect(saved).toMatchObject({ ok: false, problem: { code: 'kept-both' } });
    expect(!saved.ok && saved.problem.sentence).toContain('“Fox (kept 1).larkrow”');
    expect(files.done.filter((name) => name === 'rename')).toHaveLength(4);
    expect(readdirSync(folder).sort()).toEqual(['Fox (kept 1).larkrow', 'Fox.larkrow']);
    expect(readFileSync(path)).toEqual(before);
    expect(readFileSync(join(folder, 'Fox (kept 1).larkrow'))).toEqual(after);
  });
});
