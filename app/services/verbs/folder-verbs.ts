/** What the studio's own chooser asks, over the folders that were granted; and the system's dialogs, where there are any. */
import { basename, dirname, join } from 'node:path';
import type { Answer, FileKind, Place } from '../../../shared/bridge.ts';
import { good, problem, type Result } from '../../../shared/result.ts';
import { attempt } from '../files/attempt.ts';
import { isWithin } from '../grants.ts';
import type { Handlers } from '../handlers.ts';
import type { Dialogs } from '../host.ts';
import { hasEnding, withEnding } from '../names/endings.ts';
import { nameProblem } from '../names/file-name.ts';
import { stampNow } from '../safekeeping/stamp.ts';
import type { Studio } from '../studio.ts';

type FolderVerb = Extract<keyof Handlers, `folders.${string}` | `dialog.${string}`>;

const byName = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

export function folderVerbs(studio: Studio): Pick<Handlers, FolderVerb> {
  const { handles } = studio;
  return {
    'folders.list': async ({ folder, kind }) => {
      if (folder === null) {
        const granted = (await studio.grants.folders()).map((path) => handles.give('folder', path));
        return good({ trail: [], folders: granted, files: [] });
      }
      const held = await studio.reach(folder, 'folder');
      if (!held.ok) return held;
      return listFolder(studio, held.value.path, kind);
    },
    'folders.place': async ({ folder, name, kind }) => {
      const held = await studio.reach(folder, 'folder');
      return held.ok ? placeIn(studio, held.value.path, name, kind) : held;
    },
    'dialog.open': async ({ kind }) => {
      if (!studio.host.dialogs) return noDialogs;
      const path = await studio.host.dialogs.open(kind);
      if (path === null) return good(null);
      // Where a design is asked for, a pattern with its design inside does as well.
      const isPattern = kind === 'design' && hasEnding(basename(path), 'pattern');
      return good(handles.give(isPattern ? 'pattern' : kind, path, { pointedAt: true }));
    },
    'dialog.saveAs': async ({ kind, suggestedName }) => {
      if (!studio.host.dialogs) return noDialogs;
      return saveAs(studio, studio.host.dialogs, kind, suggestedName);
    },
    'dialog.folder': async () => {
      if (!studio.host.dialogs) return noDialogs;
      const path = await studio.host.dialogs.folder();
      return good(path === null ? null : handles.give('folder', path, { pointedAt: true }));
    },
  };
}

const noDialogs = problem('no-dialogs', 'Larkrow has no dialogs of the system here. Use its own chooser.');

async function listFolder(
  studio: Studio,
  folder: string,
  kind: FileKind,
): Promise<Result<Answer<'folders.list'>>> {
  const { files, handles } = studio;
  const names = await attempt(folder, 'could not be read', () => files.list(folder));
  if (!names.ok) return names;
  const folders: Place[] = [];
  const found: Answer<'folders.list'>['files'] = [];
  for (const name of names.value.sort(byName.compare)) {
    if (name.startsWith('.')) continue;
    const within = await studio.grants.within(join(folder, name)).catch(() => null);
    if (!within?.ok) continue;
    const facts = await files.factsOf(within.value).catch(() => null);
    if (facts?.kind === 'folder') folders.push({ ...handles.give('folder', within.value), name });
    else if (facts?.kind === 'file' && hasEnding(name, kind)) {
      found.push({ ...handles.give(kind, join(folder, name)), modifiedMs: facts.modifiedMs });
    }
  }
  return good({ trail: await trailTo(studio, folder), folders, files: found });
}

/** From the outermost granted folder that holds it. */
async function trailTo({ grants, handles }: Studio, folder: string): Promise<Place[]> {
  const holding = (await grants.folders()).filter((granted) => isWithin(folder, granted));
  const outermost = holding.reduce((a, b) => (b.length < a.length ? b : a), folder);
  const trail = [folder];
  while (trail[0] !== outermost) trail.unshift(dirname(trail[0]!));
  return trail.map((path) => handles.give('folder', path));
}

async function placeIn(
  studio: Studio,
  folder: string,
  name: string,
  kind: FileKind,
): Promise<Result<Answer<'folders.place'>>> {
  if (kind === 'picture') return problem('wrong-kind', 'Larkrow only opens pictures. Save a PNG instead.');
  const full = withEnding(name.trim(), kind);
  const fault = nameProblem(full);
  if (fault) return { ok: false, problem: fault };
  const path = join(folder, full);
  const within = await studio.grants.within(path);
  if (!within.ok) return within;
  return seenPlace(studio, path, kind, false);
}

async function saveAs(
  studio: Studio,
  dialogs: Dialogs,
  kind: FileKind,
  suggestedName: string,
): Promise<Result<Place | null>> {
  if (kind === 'picture') return problem('wrong-kind', 'Larkrow only opens pictures. Save a PNG instead.');
  const name = withEnding(basename(suggestedName).replace(/[<>:"/\\|?*\p{Cc}]/gu, ' '), kind);
  const chosen = await dialogs.saveAs(kind, join(studio.shelfFolder(), name));
  if (chosen === null) return good(null);
  const path = withEnding(chosen, kind);
  const place = await seenPlace(studio, path, kind, true);
  if (!place.ok) return place;
  if (path !== chosen && place.value.exists) {
    // The dialog asked about another name, the one without the ending.
    return problem('exists', `“${basename(path)}” is there already. Choose it itself, or another name.`);
  }
  return good({ handle: place.value.handle, name: place.value.name });
}

/** The person agreed to replace what is there now, and nothing else. */
async function seenPlace(
  { files, handles }: Studio,
  path: string,
  kind: FileKind,
  pointedAt: boolean,
): Promise<Result<Answer<'folders.place'>>> {
  const seen = await attempt(path, 'can’t be saved to', () => stampNow(files, path));
  if (!seen.ok) return seen;
  return good({ ...handles.give(kind, path, { pointedAt, seen: seen.value }), exists: seen.value !== null });
}
