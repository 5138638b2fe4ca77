/** The caps on the bytes of what the studio keeps for itself, at the cap and one above it. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { nodeFiles } from '../../../../app/services/files/file-layer.ts';
import { listMotifs, motifPath } from '../../../../app/services/kept/keep-motifs.ts';
import { readStash } from '../../../../app/services/kept/keep-stash.ts';
import { defaults } from '../../../../shared/design/defaults.ts';
import { limits } from '../../../../shared/design/limits.ts';
import { emptyStash, stashYarnOf } from '../../../../shared/yarn/stash.ts';
import { temporaryFolder } from '../../../temporary-folder.ts';

/** Writes the value as JSON, filled up with spaces to exactly so many bytes. */
function writePadded(path: string, value: object, bytes: number): void {
  mkdirSync(dirname(path), { recursive: true });
  const json = Buffer.from(JSON.stringify(value));
  writeFileSync(path, Buffer.concat([json, Buffer.alloc(bytes - json.length, ' ')]));
}

describe('a file that the studio keeps', () => {
  it(`for the stash is read up to ${limits.stashBytes} bytes, and set aside beyond`, async () => {
    const stash = { ...emptyStash, yarns: [stashYarnOf(defaults.yarns[0]!)] };
    const entries = async (bytes: number) => {
      const folder = temporaryFolder();
      writePadded(join(folder, 'stash.json'), stash, bytes);
      const read = await readStash(nodeFiles, folder);
      return read.ok ? read.value.entries.length : read.problem.code;
    };
    expect(await entries(limits.stashBytes)).toBe(1);
    expect(await entries(limits.stashBytes + 1)).toBe(0);
  });

  it(`for a motif is read up to ${limits.motifBytes} bytes, and set aside beyond`, async () => {
    const motif = { id: 'leaf', name: 'Leaf', columns: 2, yarns: [defaults.yarns[0]!], rows: ['2y1'] };
    const motifs = async (bytes: number) => {
      const folder = temporaryFolder();
      writePadded(motifPath(folder, 'leaf'), { format: 'larkrow-motif', version: 1, motif }, bytes);
      const list = await listMotifs(nodeFiles, folder);
      return list.ok ? list.value.motifs.length : list.problem.code;
    };
    expect(await motifs(limits.motifBytes)).toBe(1);
    expect(await motifs(limits.motifBytes + 1)).toBe(0);
  });
});
