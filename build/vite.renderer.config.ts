/**
 * The page: renderer/ → dist/renderer. Both hosts serve it under a policy that allows no inline scripts or styles and
 * no data: addresses, so nothing is inlined.
 */
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const folder = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: folder('../renderer'),
  base: './',
  publicDir: false,
  cacheDir: folder('../node_modules/.cache/vite'),
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    outDir: folder('../dist/renderer'),
    emptyOutDir: true,
    assetsInlineLimit: 0,
    // The whole studio is read from this machine: one large file costs nothing there.
    chunkSizeWarningLimit: 4000,
    reportCompressedSize: false,
  },
});
