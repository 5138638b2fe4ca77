/** One running studio: what its verbs work with. A host makes one at its start. */
import { join } from 'node:path';
import { good, type Result } from '../../shared/result.ts';
import type { Log } from './answer.ts';
import type { FileLayer } from './files/file-layer.ts';
import { createGrants, type Grants } from './grants.ts';
import { createHandles, type HandleKind, type Handles, type Held } from './handles.ts';
import type { Home } from './home/home.ts';
import type { Host } from './host.ts';
import type { Makers } from './makers.ts';
import { type InTurn, inTurn } from './safekeeping/in-turn.ts';
import { sweep } from './safekeeping/sweep.ts';
import { addDemos } from './shelf/add-demos.ts';
import { designsIn } from './shelf/designs-in.ts';
import { designLooker, type Look } from './shelf/look-at-design.ts';
import type { StudioState } from './state/studio-state.ts';

export interface StudioOptions {
  readonly files: FileLayer;
  readonly home: Home;
  readonly state: StudioState;
  readonly host: Host;
  readonly makers: Makers;
  readonly version: string;
  readonly platform: NodeJS.Platform;
  readonly now: () => Date;
  readonly log: Log;
  /** Folders that the person granted at the start, beside the shelf's. */
  readonly folders: readonly string[];
}

export interface Studio extends Omit<StudioOptions, 'folders'> {
  readonly handles: Handles;
  readonly grants: Grants;
  readonly look: Look;
  readonly inTurn: InTurn;
  readonly shelfFolder: () => string;
  /**
   * What a handle stands for, its path without links. A file must lie in a granted folder or have been pointed at.
   * Problems: those of `Handles.take` and `Grants.within`.
   */
  reach(handle: string, kind: HandleKind): Promise<Result<Held>>;
}

/** Sweeps what a kill left behind, and puts the demos on the shelf on the very first start. */
export async function startStudio(options: StudioOptions): Promise<Studio> {
  const { files, state, home, log, now } = options;
  const shelfFolder = () => state.shelfFolder() ?? home.shelf;
  for (const folder of [home.config, join(home.config, 'motifs')])
    await sweep(files, folder, now().getTime());
  const real = async (folder: string) => files.realPath(folder).catch(() => folder);
  try {
    await files.makeFolder(shelfFolder());
    await sweep(files, shelfFolder(), now().getTime());
    if (!state.demosGiven()) await giveDemos(options, shelfFolder());
  } catch (error) {
    // The shelf says so itself, in a sentence, when it is asked; what is open elsewhere can still be worked on.
    log(`The shelf’s folder can’t be used: ${String(error)}`);
  }
  const granted = await Promise.all(options.folders.map(real));
  let shelf = { given: '', real: '' };
  const realShelf = async () => {
    const given = shelfFolder();
    if (shelf.given !== given) shelf = { given, real: await real(given) };
    return shelf.real;
  };
  const handles = createHandles();
  const grants = createGrants(files, async () => [...new Set([await realShelf(), ...granted])]);
  return {
    ...options,
    handles,
    grants,
    look: designLooker(files),
    inTurn: inTurn(),
    shelfFolder,
    async reach(handle, kind) {
      const held = handles.take(handle, kind);
      if (!held.ok || held.value.pointedAt) return held;
      const within = await grants.within(held.value.path);
      return within.ok ? good({ ...held.value, path: within.value }) : within;
    },
  };
}

async function giveDemos({ files, state, log }: StudioOptions, folder: string): Promise<void> {
  if ((await designsIn(files, folder)).length === 0) {
    const added = await addDemos(files, folder);
    if (!added.ok) return log(added.problem.sentence);
  }
  state.noteDemosGiven();
}
