/**
 * Drawing on 400 x 600 cells in the browser, against bare canvas calls: main-thread time of one edit, one pan frame
 * and one zoom frame with the picture really painted, and how long a pointer move takes to be shown.
 */
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { showPage } from '../e2e/browser.ts';
import type { Measured, Scene, Shown } from './draw-page/page.ts';

declare global {
  interface Window {
    measure(scene: Scene): Promise<Measured[]>;
    watch(what: 'larkrow' | 'bare', scene: Scene): Promise<void>;
    shownSoFar(): Shown[];
  }
}

const scenes: readonly Scene[] = [
  { name: 'whole hanging', cellPx: 0, symbols: false },
  { name: '8 px, symbols', cellPx: 8, symbols: true },
  { name: '20 px, knots', cellPx: 20, symbols: false },
];

const folder = fileURLToPath(new URL('../../dist/bench/draw', import.meta.url));
await build({
  root: fileURLToPath(new URL('./draw-page', import.meta.url)),
  configFile: false,
  base: './',
  logLevel: 'error',
  build: { outDir: folder, emptyOutDir: true, assetsInlineLimit: 0, chunkSizeWarningLimit: 4000 },
});

const types: Record<string, string> = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css' };
const server = createServer((request, response) => {
  const path = request.url === '/' ? '/index.html' : request.url!;
  response.setHeader('content-type', types[extname(path)] ?? 'application/octet-stream');
  // A page apart from all others may read the clock to 5 µs instead of 100.
  response.setHeader('cross-origin-opener-policy', 'same-origin');
  response.setHeader('cross-origin-embedder-policy', 'require-corp');
  response.end(readFileSync(join(folder, path)));
});
await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
const shown = await showPage(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`, {
  width: 1180,
  height: 1500,
});
try {
  const { page } = shown;
  console.log('Main-thread ms, painted; 600 samples each, in blocks of 25 that alternate.');
  console.log('scene            deed        larkrow median   p95    bare median   p95    ratio of medians');
  for (const scene of scenes) {
    for (const { deed, larkrow, bare } of await page.evaluate((each) => window.measure(each), scene)) {
      const cells = [larkrow, bare].map((times) => [at(times, 0.5), at(times, 0.95)]);
      const [ours, theirs] = cells as [number[], number[]];
      const ratio = (ours[0]! / theirs[0]!).toFixed(2);
      console.log(
        `${scene.name.padEnd(16)} ${deed.padEnd(11)} ${ms(ours[0]!)}        ${ms(ours[1]!)}   ${ms(theirs[0]!)}     ${ms(theirs[1]!)}  ${ratio}`,
      );
    }
  }
  console.log('\nFrom a pointer move to the end of the frame that shows it (200 moves each):');
  for (const scene of scenes) {
    for (const what of ['bare', 'larkrow'] as const) {
      await page.evaluate(([one, other]) => window.watch(one, other), [what, scene] as const);
      const box = (await page.locator(what === 'bare' ? '#bare' : '#larkrow').boundingBox())!;
      const [x, y] = [box.x + box.width / 2 - 100, box.y + box.height / 2 - 60];
      await page.mouse.move(x, y);
      await page.mouse.down();
      for (let i = 0; i < 200; i++) await page.mouse.move(x + i, y + (i % 60));
      await page.mouse.up();
      await page.waitForTimeout(200);
      const all = await page.evaluate(() => window.shownSoFar());
      const frames = all.map((each) => each.frames);
      const times = all.map((each) => each.ms);
      console.log(
        `${scene.name.padEnd(16)} ${what.padEnd(8)} frames: median ${at(frames, 0.5)}, most ${at(frames, 1)}; ms: median ${ms(at(times, 0.5))}, p95 ${ms(at(times, 0.95))} (${all.length} events)`,
      );
    }
  }
  if (shown.errors.length > 0) throw new Error(shown.errors.join('\n'));
} finally {
  await shown.close();
  server.close();
}

/** The value below which a share of the list lies. */
function at(list: readonly number[], share: number): number {
  const sorted = list.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))]!;
}

function ms(value: number): string {
  return value.toFixed(3).padStart(7);
}
