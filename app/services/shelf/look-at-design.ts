/** What the shelf shows of one file; read again only when the file has changed. */
import type { ShelfEntry } from '../../../shared/bridge.ts';
import type { FileLayer } from '../files/file-layer.ts';
import { fileProblem } from '../files/file-problem.ts';
import { readDesignFile } from '../files/read-design-file.ts';
import { thumbnailOf } from './thumbnail.ts';

export type DesignLook = Omit<ShelfEntry, 'design' | 'fileName'>;

export type Look = (path: string) => Promise<DesignLook>;

/** A looker with a memory of its own. */
export function designLooker(files: FileLayer): Look {
  const known = new Map<string, { readonly version: string; readonly look: DesignLook }>();
  return async (path) => {
    let modifiedMs = 0;
    try {
      const facts = await files.factsOf(await files.realPath(path));
      modifiedMs = facts.modifiedMs;
      const version = `${facts.device} ${facts.inode} ${facts.sizeBytes} ${facts.modifiedMs}`;
      const before = known.get(path);
      if (before?.version === version) return before.look;
      const look = await lookAt(files, path, facts.modifiedMs);
      known.set(path, { version, look });
      return look;
    } catch (error) {
      return { modifiedMs, problem: fileProblem(error, path, 'could not be opened').sentence };
    }
  };
}

async function lookAt(files: FileLayer, path: string, modifiedMs: number): Promise<DesignLook> {
  const read = await readDesignFile(files, path);
  if (!read.ok) return { modifiedMs, problem: read.problem.sentence };
  const { title, columns, rows } = read.value.design;
  return { modifiedMs, title, columns, rows, thumbnail: thumbnailOf(read.value.design) };
}
