/** Files as one ZIP archive. What is packed already, PDF and PNG, is stored as it is: packing it again gains nothing. */
import { type Zippable, zipSync } from 'fflate';

export interface NamedFile {
  /** With its folder before it, behind a slash, where it stands in one. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** `folder` is the one folder that the archive unpacks to. The same files and date give the same bytes. */
export function zipOf(folder: string, files: readonly NamedFile[], date: Date): Uint8Array {
  const entries: Zippable = {};
  for (const { name, bytes } of files) {
    entries[`${folder}/${name}`] = [bytes, { level: /\.(pdf|png)$/.test(name) ? 0 : 6, mtime: date }];
  }
  return zipSync(entries);
}
