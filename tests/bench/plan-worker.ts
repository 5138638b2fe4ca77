/**
 * The studio's workers in the browser, as they are bundled: how soon live figures follow one cell, and a pattern that
 * is made while the page stays free.
 */
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { showPage } from '../e2e/browser.ts';
import type { PlanPage } from './plan-page/page.ts';

declare global {
  interface Window extends PlanPage {}
}

/** Cords, rows, and how many edits. */
type Size = readonly [columns: number, rows: number, count: number];

const folder = fileURLToPath(new URL('../../dist/bench/plan', import.meta.url));
await build({
  root: fileURLToPath(new URL('./plan-page', import.meta.url)),
  configFile: false,
  base: './',
  logLevel: 'error',
  worker: { format: 'es' },
  build: { outDir: folder, emptyOutDir: true, chunkSizeWarningLimit: 4000 },
});

const types: Record<string, string> = { '.html': 'text/html', '.js': 'text/javascript' };
const server = createServer((request, response) => {
  const path = request.url === '/' ? '/index.html' : request.url!;
  response.setHeader('content-type', types[extname(path)] ?? 'application/octet-stream');
  // A page apart from all others may read the clock to 5 µs instead of 100.
  response.setHeader('cross-origin-opener-policy', 'same-origin');
  response.setHeader('cross-origin-embedder-policy', 'require-corp');
  response.end(readFileSync(join(folder, path)));
});
await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
const { page, close, errors } = await showPage(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
try {
  for (const [what, measure] of [
    [
      'One cell to its strands and pieces, in a worker',
      (size: Size) => page.evaluate((each) => window.repairs(...each), size),
    ],
    [
      'One cell to its figures, page to worker and back',
      (size: Size) => page.evaluate((each) => window.edits(...each), size),
    ],
  ] as const) {
    console.log(`${what}, shaded in ten yarns:`);
    for (const size of [
      [40, 48, 1000],
      [200, 300, 1000],
    ] as const) {
      const times = (await measure(size)).sort((a, b) => a - b);
      const at = (share: number) => times[Math.floor(times.length * share)]!.toFixed(2);
      console.log(
        `  ${size[0]} x ${size[1]}: median ${at(0.5)} ms, 95 % ${at(0.95)} ms, 99 % ${at(0.99)} ms (${size[2]} edits)`,
      );
    }
  }
  console.log('\nA pattern on A4:');
  for (const [columns, rows] of [
    [40, 48],
    [200, 300],
  ] as const) {
    const made = await page.evaluate(([c, r]) => window.pattern(c, r), [columns, rows] as const);
    console.log(
      `  ${columns} x ${rows}: first pages after ${made.quickMs.toFixed(0)} ms, all ${made.pages} of the full plan after ` +
        `${made.fullMs.toFixed(0)} ms; the page was held up for ${made.heldUpMs.toFixed(1)} ms at most`,
    );
  }
  if (errors.length > 0) throw new Error(errors.join('\n'));
} finally {
  await close();
  server.close();
}
