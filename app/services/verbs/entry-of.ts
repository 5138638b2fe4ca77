/** A file of the shelf as the page sees it. */
import { basename } from 'node:path';
import type { ShelfEntry } from '../../../shared/bridge.ts';
import type { Studio } from '../studio.ts';

export async function entryOf(studio: Studio, path: string): Promise<ShelfEntry> {
  const { handle } = studio.handles.give('design', path);
  return { design: handle, fileName: basename(path), ...(await studio.look(path)) };
}
