/** Opening and saving designs, and those opened lately. */
import { basename } from 'node:path';
import type { Answer, Place } from '../../../shared/bridge.ts';
import { limits } from '../../../shared/design/limits.ts';
import { readDesign } from '../../../shared/design/read-design.ts';
import { textOfUtf8 } from '../../../shared/design/utf8.ts';
import { good, type Result } from '../../../shared/result.ts';
import { readDesignFile } from '../files/read-design-file.ts';
import { readFileWithin } from '../files/read-file-within.ts';
import type { Handlers } from '../handlers.ts';
import { type DesignInPdf, designInPdf, patternTooLarge } from '../pdf-in/design-in-pdf.ts';
import type { Studio } from '../studio.ts';
import { saveTo } from './save-to.ts';

type DesignVerb = Extract<keyof Handlers, `design.${string}` | `recent.${string}`>;

export function designVerbs(studio: Studio): Pick<Handlers, DesignVerb> {
  const { files, handles, state } = studio;
  return {
    'design.open': async ({ design }) => {
      const held = await studio.reach(design, 'design');
      if (!held.ok) return held;
      const { path } = held.value;
      const read = await readDesignFile(files, path);
      if (!read.ok) return read;
      state.noteRecent(path);
      const { bytes, stamp } = read.value;
      return good({ design, fileName: basename(path), text: textOfUtf8(bytes) ?? '', stamp });
    },
    'design.ofPattern': async ({ pattern }) => {
      if (typeof pattern !== 'string') return textInside(designInPdf(pattern));
      const held = await studio.reach(pattern, 'pattern');
      if (!held.ok) return held;
      const read = await readFileWithin(files, held.value.path, limits.patternBytes, patternTooLarge);
      return read.ok ? textInside(designInPdf(read.value.bytes)) : read;
    },
    'design.save': async ({ target, text, stamp }) => {
      // What could not be opened again must never take the place of what can.
      const sound = readDesign(text);
      if (!sound.ok) return sound;
      const saved = await saveTo(studio, { kind: 'design', target, bytes: Buffer.from(text), stamp });
      if (!saved.ok) return saved;
      state.noteRecent(saved.value.path);
      return good({ design: target, fileName: saved.value.fileName, stamp: saved.value.stamp });
    },
    'recent.list': async () => {
      const entries: Place[] = [];
      for (const path of state.recent()) {
        const place = handles.give('design', path, { pointedAt: studio.host.dialogs !== null });
        const held = await studio.reach(place.handle, 'design');
        if (held.ok && (await isFile(studio, held.value.path))) entries.push(place);
      }
      return good({ entries });
    },
    'recent.clear': () => {
      state.clearRecent();
      return good({});
    },
  };
}

function textInside(inside: Result<DesignInPdf>): Result<Answer<'design.ofPattern'>> {
  return inside.ok ? good({ text: textOfUtf8(inside.value.bytes) ?? '' }) : inside;
}

async function isFile({ files }: Studio, path: string): Promise<boolean> {
  try {
    return (await files.factsOf(await files.realPath(path))).kind === 'file';
  } catch {
    return false;
  }
}
