/**
 * Saves version after version of a file until it is killed: `PATH safely` as the studio does, `PATH truncating` as a
 * careless program does, which empties the file first. Says a line after the first save.
 */
import { writeFile } from 'node:fs/promises';
import { nodeFiles } from '../../../../app/services/files/file-layer.ts';
import { saveFile } from '../../../../app/services/safekeeping/save-file.ts';
import { versionBytes } from './version-bytes.ts';

const [path = '', way] = process.argv.slice(2);
for (let version = 1; ; version++) {
  const bytes = versionBytes(version);
  if (way === 'truncating') await writeFile(path, bytes);
  else await saveFile(nodeFiles, { path, bytes, replaces: 'any' });
  if (version === 1) console.log('saved once');
}
