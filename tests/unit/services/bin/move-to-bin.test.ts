import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { moveToBin } from '../../../../app/services/bin/move-to-bin.ts';
import { nodeFiles } from '../../../../app/services/files/file-layer.ts';
import { temporaryFolder } from '../../../temporary-folder.ts';

const now = new Date(2031, 2, 5, 14, 7, 9);

function shelf(): { bin: string; path: string } {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'My shelf'));
  const path = join(folder, 'My shelf', 'Fox & 50%.larkrow');
  writeFileSync(path, 'fox');
  return { bin: join(folder, 'Trash'), path };
}

describe('the bin on Linux', () => {
  // freedesktop.org, The FreeDesktop.org Trash specification, version 1.0.
  it('holds the file and a note of where and when it was', async () => {
    const { bin, path } = shelf();
    const to = await moveToBin(nodeFiles, { path, bin, platform: 'linux', now });
    expect(to).toBe(join(bin, 'files', 'Fox & 50%.larkrow'));
    expect(readFileSync(to, 'utf8')).toBe('fox');
    expect(existsSync(path)).toBe(false);
    const note = readFileSync(join(bin, 'info', 'Fox & 50%.larkrow.trashinfo'), 'utf8');
    const escaped = path.replace('My shelf', 'My%20shelf').replace('Fox & 50%', 'Fox%20%26%2050%25');
    expect(note).toBe(`[Trash Info]\nPath=${escaped}\nDeletionDate=2031-03-05T14:07:09\n`);
  });

  it('keeps two files of one name apart', async () => {
    const { bin, path } = shelf();
    await moveToBin(nodeFiles, { path, bin, platform: 'linux', now });
    writeFileSync(path, 'another fox');
    const to = await moveToBin(nodeFiles, { path, bin, platform: 'linux', now });
    expect(to).toBe(join(bin, 'files', 'Fox & 50% 2.larkrow'));
    expect(readdirSync(join(bin, 'info'))).toHaveLength(2);
  });

  it('takes no name whose note is gone, and leaves no note without a file', async () => {
    const { bin, path } = shelf();
    mkdirSync(join(bin, 'files'), { recursive: true });
    writeFileSync(join(bin, 'files', 'Fox & 50%.larkrow'), 'a stray one');
    await moveToBin(nodeFiles, { path, bin, platform: 'linux', now });
    expect(readFileSync(join(bin, 'files', 'Fox & 50%.larkrow'), 'utf8')).toBe('a stray one');
    expect(readdirSync(join(bin, 'info'))).toEqual(['Fox & 50% 2.larkrow.trashinfo']);
  });

  it('lies on the disk of the file where that is another one than home’s', async () => {
    const { bin, path } = shelf();
    const otherDisk = {
      ...nodeFiles,
      link: async (from: string, to: string) => {
        if (to.startsWith(bin)) throw Object.assign(new Error('another disk'), { code: 'EXDEV' });
        return nodeFiles.link(from, to);
      },
      // The test’s own folder is the top of that disk.
      factsOf: async (each: string) => {
        const facts = await nodeFiles.factsOf(each);
        return path.startsWith(each) && !each.includes('larkrow-test') ? { ...facts, device: -1 } : facts;
      },
    };
    const to = await moveToBin(otherDisk, { path, bin, platform: 'linux', now });
    expect(to).toMatch(/larkrow-test-[^/]+\/\.Trash-\d+\/files\/Fox & 50%\.larkrow$/);
    const [note = ''] = readdirSync(join(to, '..', '..', 'info'));
    // Relative to the top of the disk, as the specification has it.
    expect(readFileSync(join(to, '..', '..', 'info', note), 'utf8')).toContain('\nPath=My%20shelf/Fox');
  });
});

describe('the bin elsewhere', () => {
  it('is ~/.Trash on a Mac', async () => {
    const { bin, path } = shelf();
    expect(await moveToBin(nodeFiles, { path, bin, platform: 'darwin', now })).toBe(
      join(bin, 'Fox & 50%.larkrow'),
    );
  });

  it('is a folder beside the file on Windows', async () => {
    const { bin, path } = shelf();
    const to = await moveToBin(nodeFiles, { path, bin, platform: 'win32', now });
    expect(to).toBe(join(path, '..', 'Bin', 'Fox & 50%.larkrow'));
    expect(existsSync(bin)).toBe(false);
  });
});
