/**
 * A file layer that injects faults: any one operation, by its number, fails with a code of the system; writes may be
 * short; bytes may come back other than they were written. Everything else is done for real.
 */
import { type FileLayer, nodeFiles, type OpenedFile } from '../../../../app/services/files/file-layer.ts';

export interface Faults {
  /** Fails operation number `at`, counted from 0, with `code`. */
  readonly at?: number;
  readonly code?: string;
  /** Fails these operations each time, by name: 'sync', 'rename'. */
  readonly always?: Readonly<Record<string, string>>;
  /** Each write takes at most so many bytes. */
  readonly writeBytes?: number;
  /** Called before each operation: somebody else may do something then. */
  readonly before?: (name: string, at: number) => void;
  /** What is read of temporary files comes back with a wrong byte. */
  readonly unfaithful?: boolean;
}

export interface FailingFiles extends FileLayer {
  /** Names of the operations so far. */
  readonly done: string[];
}

export function failingFiles(faults: Faults = {}): FailingFiles {
  const done: string[] = [];
  const step = async <T>(name: string, deed: () => Promise<T>): Promise<T> => {
    const at = done.length;
    done.push(name);
    faults.before?.(name, at);
    const code = faults.always?.[name] ?? (at === faults.at ? faults.code : undefined);
    if (code) throw Object.assign(new Error(`${code}: injected at ${name}`), { code });
    return deed();
  };
  const opened = (file: OpenedFile): OpenedFile => ({
    write: (bytes) => step('write', () => file.write(bytes.subarray(0, faults.writeBytes ?? bytes.length))),
    chmod: (mode) => step('chmod', () => file.chmod(mode)),
    sync: () => step('sync', () => file.sync()),
    // A close that fails has closed all the same.
    close: async () => {
      await file.close();
      await step('close', async () => {});
    },
  });
  return {
    done,
    factsOf: (path) => step('factsOf', () => nodeFiles.factsOf(path)),
    realPath: (path) => step('realPath', () => nodeFiles.realPath(path)),
    read: (path) =>
      step('read', async () => {
        const bytes = await nodeFiles.read(path);
        if (faults.unfaithful && path.endsWith('.part') && bytes.length > 0) bytes[0] = bytes[0]! ^ 1;
        return bytes;
      }),
    list: (folder) => step('list', () => nodeFiles.list(folder)),
    makeFolder: (folder, mode) => step('makeFolder', () => nodeFiles.makeFolder(folder, mode)),
    create: (path, mode) => step('create', async () => opened(await nodeFiles.create(path, mode))),
    rename: (from, to) => step('rename', () => nodeFiles.rename(from, to)),
    link: (from, to) => step('link', () => nodeFiles.link(from, to)),
    remove: (path) => step('remove', () => nodeFiles.remove(path)),
    syncFolder: (folder) => step('syncFolder', () => nodeFiles.syncFolder(folder)),
  };
}
