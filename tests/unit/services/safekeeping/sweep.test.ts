import { readdirSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { nodeFiles } from '../../../../app/services/files/file-layer.ts';
import { sweep } from '../../../../app/services/safekeeping/sweep.ts';
import { tempName } from '../../../../app/services/safekeeping/temp-name.ts';
import { temporaryFolder } from '../../../temporary-folder.ts';

const HOUR_MS = 60 * 60 * 1000;
/** Above the highest number that Linux gives to a process. */
const DEAD = 4_200_000;

const ofDead = () => tempName().replace(`-${process.pid}-`, `-${DEAD}-`);
const ofElsewhere = () => ofDead().replace(/^\.larkrow-[0-9a-f]{6}/, '.larkrow-000000');

describe('the sweep at the start', () => {
  it('removes what a killed save left, and nothing else', async () => {
    const folder = temporaryFolder();
    const own = tempName();
    const others = ['Fox.larkrow', '.larkrow-notes.part', 'part', own];
    for (const name of [...others, ofDead(), ofDead()]) writeFileSync(join(folder, name), 'x');
    expect(await sweep(nodeFiles, folder, Date.now())).toBe(2);
    expect(readdirSync(folder).sort()).toEqual([...others].sort());
  });

  it('leaves to another machine of a shared folder a day to finish', async () => {
    const folder = temporaryFolder();
    const name = ofElsewhere();
    writeFileSync(join(folder, name), 'x');
    expect(await sweep(nodeFiles, folder, Date.now() + HOUR_MS)).toBe(0);
    const aDayAgo = new Date(Date.now() - 25 * HOUR_MS);
    utimesSync(join(folder, name), aDayAgo, aDayAgo);
    expect(await sweep(nodeFiles, folder, Date.now())).toBe(1);
  });

  it('follows no links', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'Fox.larkrow'), 'x');
    symlinkSync(join(folder, 'Fox.larkrow'), join(folder, ofDead()));
    expect(await sweep(nodeFiles, folder, Date.now())).toBe(0);
    expect(readdirSync(folder)).toContain('Fox.larkrow');
  });

  it('says nothing of a folder that is not there', async () => {
    expect(await sweep(nodeFiles, join(temporaryFolder(), 'gone'), Date.now())).toBe(0);
  });
});
