// Bundles Electron's main process and its preload script: node build/bundle-app.mjs FOLDER. The browser host and the
// command line run from their sources.
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = process.argv[2] ?? join(root, 'dist', 'app');

/** Packages that bring machine code or files of their own along, and so must lie in node_modules. */
const external = ['electron', 'sharp', '@napi-rs/canvas', 'pdfkit'];

/** @type {import('esbuild').BuildOptions} */
const shared = {
  bundle: true,
  platform: 'node',
  format: 'cjs',
  target: 'node22',
  external,
  legalComments: 'none',
  logLevel: 'warning',
};

await build({
  ...shared,
  entryPoints: [join(root, 'app', 'electron', 'main.ts')],
  outfile: join(folder, 'electron', 'main.cjs'),
  // A CommonJS file knows its place by another name than a module does.
  define: { 'import.meta.url': 'placeOfThisFile' },
  banner: { js: "const placeOfThisFile = require('node:url').pathToFileURL(__filename).href;" },
});

// In the sandbox there is no `require` but for Electron itself.
await build({
  ...shared,
  entryPoints: [join(root, 'app', 'electron', 'preload.ts')],
  outfile: join(folder, 'electron', 'preload.cjs'),
});
