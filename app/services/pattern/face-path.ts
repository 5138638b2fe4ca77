/** Where the files of the faces lie on this machine. */
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { faceFiles } from '../../../shared/pattern/faces/face-files.ts';
import type { Face } from '../../../shared/pattern/page/page.ts';

const require = createRequire(import.meta.url);

export function facePath(face: Face): string {
  return face === 'symbols'
    ? fileURLToPath(new URL('../../../shared/yarn/larkrow-symbols.otf', import.meta.url))
    : require.resolve(faceFiles[face]);
}
