/**
 * The words that stand for files and folders in the page: random, good for one session, and each for one kind of
 * thing. A page that makes up a word, or uses a picture's where a design is asked for, gets a sentence and no file.
 */
import { randomBytes } from 'node:crypto';
import { basename } from 'node:path';
import type { FileKind, Handle, Place, Stamp } from '../../shared/bridge.ts';
import { good, problem, type Result } from '../../shared/result.ts';

export type HandleKind = FileKind | 'folder';

/** What a handle stands for. */
export interface Held {
  readonly kind: HandleKind;
  readonly path: string;
  /** The person pointed at it by the system's own dialog, so it need not lie in a granted folder. */
  readonly pointedAt: boolean;
  /**
   * What may be replaced at a place that was chosen to save to: what was there when it was chosen, or what was
   * written there since. Null: nothing was there. Undefined: the caller says what may be replaced.
   */
  readonly seen?: Stamp | null;
  /** A version that was written here but that the disk did not confirm; the next save may replace it. */
  readonly unconfirmed?: Stamp;
}

/** What may be remembered with a handle. */
export type Note = Partial<Pick<Held, 'pointedAt' | 'seen' | 'unconfirmed'>>;

export interface Handles {
  /** The same word each time for the same kind and path. `note` is remembered with it. */
  give(kind: HandleKind, path: string, note?: Note): Place;
  /** Problems: `unknown-handle`, `wrong-kind`. */
  take(handle: Handle, kind: HandleKind): Result<Held>;
  note(handle: Handle, note: Note): void;
  /** The file has another path from now on, under the same word. */
  move(handle: Handle, path: string): void;
}

export function createHandles(): Handles {
  const held = new Map<Handle, Held>();
  const words = new Map<string, Handle>();
  const keyOf = (kind: HandleKind, path: string) => `${kind} ${path}`;
  return {
    give(kind, path, note = {}) {
      const key = keyOf(kind, path);
      const handle = words.get(key) ?? randomBytes(18).toString('base64url');
      const before = held.get(handle);
      words.set(key, handle);
      held.set(handle, {
        kind,
        path,
        ...before,
        ...note,
        pointedAt: (before?.pointedAt ?? false) || (note.pointedAt ?? false),
      });
      return { handle, name: basename(path) || path };
    },
    take(handle, kind) {
      const found = held.get(handle);
      if (!found) return problem('unknown-handle', 'This file is not known any more. Choose it again.');
      if (found.kind !== kind) {
        return problem('wrong-kind', `This is a ${found.kind}, not a ${kind}. Choose a ${kind}.`);
      }
      return good(found);
    },
    note(handle, note) {
      const found = held.get(handle);
      if (!found) throw new Error('nothing can be noted with a handle that was never given out');
      held.set(handle, { ...found, ...note });
    },
    move(handle, path) {
      const found = held.get(handle);
      if (!found) throw new Error('a handle that was never given out can’t be moved');
      words.delete(keyOf(found.kind, found.path));
      words.set(keyOf(found.kind, path), handle);
      held.set(handle, { ...found, path });
    },
  };
}
