/** Saves to the place that a handle stands for, one save of a file after the other. */
import { basename } from 'node:path';
import type { FileKind, Handle, Stamp } from '../../../shared/bridge.ts';
import { good, type Result } from '../../../shared/result.ts';
import type { Held } from '../handles.ts';
import { saveFile } from '../safekeeping/save-file.ts';
import type { Studio } from '../studio.ts';

export interface SaveTo {
  readonly kind: FileKind;
  readonly target: Handle;
  readonly bytes: Uint8Array;
  /** The version that the new one grew from; null where only the place is known. */
  readonly stamp: Stamp | null;
}

export async function saveTo(
  studio: Studio,
  { kind, target, bytes, stamp }: SaveTo,
): Promise<Result<{ path: string; fileName: string; handle: Handle; stamp: Stamp }>> {
  const held = await studio.reach(target, kind);
  if (!held.ok) return held;
  const { path } = held.value;
  const saved = await studio.inTurn(path, () =>
    saveFile(studio.files, { path, bytes, replaces: replaceable(held.value, stamp) }),
  );
  if (!saved.ok) {
    if (saved.inPlace) studio.handles.note(target, { unconfirmed: saved.inPlace });
    return saved;
  }
  studio.handles.note(target, { seen: saved.value });
  return good({ path, fileName: basename(path), handle: target, stamp: saved.value });
}

function replaceable({ seen, unconfirmed }: Held, stamp: Stamp | null): Stamp[] {
  return [stamp ?? seen, unconfirmed].filter((each) => each !== null && each !== undefined);
}
