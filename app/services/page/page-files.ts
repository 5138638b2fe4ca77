/**
 * The files of the page, read once at the start: what is not in this list can't be asked for, whatever the address.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';

export interface PageFile {
  readonly type: string;
  readonly bytes: Buffer<ArrayBuffer>;
}

/** By the path of the address: '/index.html', '/assets/index-B2.js'. '/' is the page itself. */
export type PageFiles = ReadonlyMap<string, PageFile>;

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ttf': 'font/ttf',
  '.otf': 'font/otf',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
};

/** Throws where the page was not built. */
export function readPageFiles(folder: string): PageFiles {
  const files = new Map<string, PageFile>();
  for (const entry of readdirSync(folder, { withFileTypes: true, recursive: true })) {
    const type = types[extname(entry.name)];
    if (!entry.isFile() || !type) continue;
    const path = join(entry.parentPath, entry.name);
    const address = path.slice(folder.length).replaceAll('\\', '/');
    files.set(address, { type, bytes: Buffer.from(readFileSync(path)) });
  }
  const index = files.get('/index.html');
  if (!index) throw new Error(`${folder} holds no index.html: build the page first`);
  return files.set('/', index);
}
