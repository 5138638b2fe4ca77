/** Writes the symbol font: `npx tsx build/symbols/make-font.ts`, after the alphabet has changed. */
import { writeFileSync } from 'node:fs';
import { fontBytes } from './font-bytes.ts';

writeFileSync(new URL('../../shared/yarn/larkrow-symbols.otf', import.meta.url), fontBytes());
