/** The endings of the files that the studio opens and saves; the first one is given to new files. */
import type { FileKind } from '../../../shared/bridge.ts';

export const endings: Record<FileKind, readonly [string, ...string[]]> = {
  design: ['.larkrow'],
  picture: ['.png', '.jpg', '.jpeg', '.webp'],
  pattern: ['.pdf'],
  png: ['.png'],
  parcel: ['.zip'],
};

export function hasEnding(name: string, kind: FileKind): boolean {
  const small = name.toLowerCase();
  return endings[kind].some((ending) => small.endsWith(ending) && small.length > ending.length);
}

/** The name or path with the ending of its kind. */
export function withEnding(name: string, kind: FileKind): string {
  return hasEnding(name, kind) ? name : `${name}${endings[kind][0]}`;
}
