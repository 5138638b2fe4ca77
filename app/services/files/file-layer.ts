/**
 * The few file operations that the studio uses, as one small value: what keeps designs safe is tried by passing one
 * whose operations fail. Each rejects as Node's own do, with an error that has a `code`.
 */
import { constants } from 'node:fs';
import * as fs from 'node:fs/promises';
import { makeFolders } from './make-folders.ts';

export interface FileFacts {
  readonly sizeBytes: number;
  readonly modifiedMs: number;
  /** Permission bits only. */
  readonly mode: number;
  readonly kind: 'file' | 'folder' | 'link' | 'other';
  /** Tells disks apart. */
  readonly device: number;
  /** Tells the files of one disk apart. */
  readonly inode: number;
}

export interface OpenedFile {
  /** Writes what it can of `bytes`, and says how many that were. */
  write(bytes: Uint8Array): Promise<number>;
  chmod(mode: number): Promise<void>;
  sync(): Promise<void>;
  close(): Promise<void>;
}

export interface FileLayer {
  /** Facts of a link itself, not of what it points to. */
  factsOf(path: string): Promise<FileFacts>;
  /** The path without links. */
  realPath(path: string): Promise<string>;
  read(path: string): Promise<Uint8Array>;
  list(folder: string): Promise<string[]>;
  /** Makes a folder, and those above it, where they are missing. `mode` is for the ones that are made. */
  makeFolder(folder: string, mode?: number): Promise<void>;
  /** Opens a new file to write to; rejects with EEXIST where there is one. */
  create(path: string, mode: number): Promise<OpenedFile>;
  /** Replaces `to`. */
  rename(from: string, to: string): Promise<void>;
  /** A second name for the same file; rejects with EEXIST where `to` exists. */
  link(from: string, to: string): Promise<void>;
  remove(path: string): Promise<void>;
  syncFolder(folder: string): Promise<void>;
}

export const nodeFiles: FileLayer = {
  factsOf: async (path) => {
    const stats = await fs.lstat(path);
    return {
      sizeBytes: stats.size,
      modifiedMs: stats.mtimeMs,
      mode: stats.mode & 0o777,
      kind: stats.isFile()
        ? 'file'
        : stats.isDirectory()
          ? 'folder'
          : stats.isSymbolicLink()
            ? 'link'
            : 'other',
      device: stats.dev,
      inode: stats.ino,
    };
  },
  realPath: (path) => fs.realpath(path),
  // A pipe or a device of that name would never end; it is opened without waiting, and only a file is read.
  read: async (path) => {
    const file = await fs.open(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    try {
      const stats = await file.stat();
      if (stats.isDirectory()) throw Object.assign(new Error(`${path} is a folder`), { code: 'EISDIR' });
      if (!stats.isFile()) throw Object.assign(new Error(`${path} is no file`), { code: 'ENOTFILE' });
      return await file.readFile();
    } finally {
      await file.close();
    }
  },
  list: (folder) => fs.readdir(folder),
  makeFolder: (folder, mode = 0o777) => makeFolders(folder, mode),
  create: async (path, mode) => {
    const file = await fs.open(path, 'wx', mode);
    return {
      write: async (bytes) => (await file.write(bytes, 0, bytes.length)).bytesWritten,
      chmod: (bits) => file.chmod(bits),
      sync: () => file.sync(),
      close: () => file.close(),
    };
  },
  rename: (from, to) => fs.rename(from, to),
  link: (from, to) => fs.link(from, to),
  remove: (path) => fs.unlink(path),
  syncFolder: async (folder) => {
    const opened = await fs.open(folder, 'r');
    try {
      await opened.sync();
    } finally {
      await opened.close();
    }
  },
};
