import { existsSync, mkdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { makeFolders } from '../../../../app/services/files/make-folders.ts';
import { temporaryFolder } from '../../../temporary-folder.ts';

it('makes a folder with all those above it, and leaves one that is there', async () => {
  const folder = join(temporaryFolder(), 'a', 'b', 'c');
  await makeFolders(folder, 0o777);
  await makeFolders(folder, 0o777);
  expect(statSync(folder).isDirectory()).toBe(true);
});

it('says what is wrong where a file stands in the way', async () => {
  const home = temporaryFolder();
  writeFileSync(join(home, 'a'), '');
  await expect(makeFolders(join(home, 'a'), 0o777)).rejects.toMatchObject({ code: 'EEXIST' });
  await expect(makeFolders(join(home, 'a', 'b'), 0o777)).rejects.toMatchObject({ code: 'ENOTDIR' });
});

it('ends where a folder that exists takes no new one', async () => {
  // Linux's /proc is such a folder, and answers as if it were not there itself; elsewhere a name too long must do.
  const refused = existsSync('/proc/self') ? '/proc/larkrow' : join(temporaryFolder(), 'x'.repeat(300));
  await expect(makeFolders(refused, 0o777)).rejects.toThrow(refused);
});

it('gives up where nothing above can be made', async () => {
  const home = temporaryFolder();
  mkdirSync(join(home, 'shut'), { mode: 0o500 });
  // Root may write anywhere, so a name that is too long is refused instead.
  await expect(makeFolders(join(home, 'shut', 'x'.repeat(300), 'y'), 0o777)).rejects.toMatchObject({
    code: 'ENAMETOOLONG',
  });
});
