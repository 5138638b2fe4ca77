/** The verbs of the shelf. */
import { join } from 'node:path';
import type { ShelfEntry } from '../../../shared/bridge.ts';
import { good, problem } from '../../../shared/result.ts';
import { bin } from '../bin/bin.ts';
import { attempt } from '../files/attempt.ts';
import type { Handlers } from '../handlers.ts';
import { DESIGN_ENDING, stemFor } from '../names/file-name.ts';
import { freeName } from '../names/free-name.ts';
import { addDemos } from '../shelf/add-demos.ts';
import { copyDesign } from '../shelf/copy-design.ts';
import { designsIn } from '../shelf/designs-in.ts';
import { renameDesign } from '../shelf/rename-design.ts';
import type { Studio } from '../studio.ts';
import { entryOf } from './entry-of.ts';

type ShelfVerb = Extract<keyof Handlers, `shelf.${string}`>;

export function shelfVerbs(studio: Studio): Pick<Handlers, ShelfVerb> {
  const { files, handles, state } = studio;
  return {
    'shelf.list': async (_args, { signal }) => {
      const folder = await shelfPath(studio);
      if (!folder.ok) return folder;
      const paths = await attempt(folder.value, 'could not be read', () => designsIn(files, folder.value));
      if (!paths.ok) return paths;
      const entries: ShelfEntry[] = [];
      for (const path of paths.value) {
        if (signal.aborted) return problem('cancelled', 'Looking through the shelf was stopped.');
        entries.push(await entryOf(studio, path));
      }
      entries.sort((a, b) => b.modifiedMs - a.modifiedMs || (a.fileName < b.fileName ? -1 : 1));
      return good({ folder: handles.give('folder', folder.value), entries });
    },
    'shelf.useFolder': async ({ folder }) => {
      const held = await studio.reach(folder, 'folder');
      if (!held.ok) return held;
      const { path } = held.value;
      const listed = await attempt(path, 'could not be read', () => files.list(path));
      if (!listed.ok) return listed;
      const kept = await attempt(path, 'could not be remembered', async () => state.keepShelfFolder(path));
      return kept.ok ? good({}) : kept;
    },
    'shelf.duplicate': async ({ design }) => {
      const held = await studio.reach(design, 'design');
      if (!held.ok) return held;
      const copied = await copyDesign(files, held.value.path);
      return copied.ok ? good(await entryOf(studio, copied.value)) : copied;
    },
    'shelf.rename': async ({ design, title }) => {
      const held = await studio.reach(design, 'design');
      if (!held.ok) return held;
      const { path } = held.value;
      const renamed = await studio.inTurn(path, () => renameDesign(files, path, title));
      if (!renamed.ok) return renamed;
      if (renamed.value !== path) {
        handles.move(design, renamed.value);
        state.moveRecent(path, renamed.value);
      }
      return good(await entryOf(studio, renamed.value));
    },
    'shelf.bin': async ({ design }) => {
      const held = await studio.reach(design, 'design');
      if (!held.ok) return held;
      const { path } = held.value;
      const moved = await attempt(path, 'was not moved to the bin', () => bin(studio, path));
      if (!moved.ok) return moved;
      state.moveRecent(path, null);
      return good({});
    },
    'shelf.addDemos': async () => {
      const folder = await shelfPath(studio);
      if (!folder.ok) return folder;
      const added = await addDemos(files, folder.value);
      return added.ok ? good({ added: added.value }) : added;
    },
    'shelf.newPlace': async ({ title }) => {
      const folder = await shelfPath(studio);
      if (!folder.ok) return folder;
      const name = await attempt(folder.value, 'could not be read', () =>
        freeName(files, folder.value, stemFor(title), DESIGN_ENDING),
      );
      return name.ok ? good(handles.give('design', join(folder.value, name.value), { seen: null })) : name;
    },
  };
}

/** The shelf's folder without links, made where it is missing. */
async function shelfPath({ files, shelfFolder }: Studio) {
  return attempt(shelfFolder(), 'could not be used as the shelf', async () => {
    await files.makeFolder(shelfFolder());
    return files.realPath(shelfFolder());
  });
}
