/**
 * Drawing on 400 x 600 cells in 12 layers, mirrored both ways, in the browser, against bare canvas calls: main-thread
 * time of each deed with the picture really painted, how long a pointer move takes to be shown, and what a thousand
 * strokes and their undoing leave in memory.
 */
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { build } from 'vite';
import { showPage } from '../e2e/browser.ts';
import type { DrawPage } from './draw-page/page.ts';
import type { Scene } from './draw-page/stage.ts';

declare global {
  interface Window extends DrawPage {}
}

const scenes: readonly Scene[] = [
  { name: 'whole hanging', cellPx: 0, cells: 'knots' },
  { name: '3 px, knots', cellPx: 3, cells: 'knots' },
  { name: '8 px, symbols', cellPx: 8, cells: 'symbols' },
  { name: '20 px, knots', cellPx: 20, cells: 'knots' },
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
  await tellTimes(shown.page);
  await tellMemory(shown.page);
  await tellMoves(shown.page);
  if (shown.errors.length > 0) throw new Error(shown.errors.join('\n'));
} finally {
  await shown.close();
  server.close();
}

async function tellTimes(page: Page): Promise<void> {
  console.log(
    'Main-thread ms, painted; in blocks that alternate. 400 x 600 cells, 12 layers, mirrored both ways.',
  );
  console.log('Bare calls paint again all that is seen, or (*) nothing but the cells of the edit.');
  console.log(
    'scene          deed             larkrow median      p95   bare median      p95   ratio of medians',
  );
  for (const scene of scenes) {
    for (const { deed, bareDraws, larkrow, bare } of await page.evaluate(
      (each) => window.measure(each),
      scene,
    )) {
      const ratio = at(larkrow, 0.5) / at(bare, 0.5);
      const name = `${deed}${bareDraws === 'cells' ? ' *' : ''}`;
      console.log(
        `${scene.name.padEnd(14)} ${name.padEnd(16)} ${ms(at(larkrow, 0.5))}      ${ms(at(larkrow, 0.95))}   ${ms(at(bare, 0.5))}     ${ms(at(bare, 0.95))}   ${ratio.toFixed(2)}`,
      );
    }
  }
}

async function tellMemory(page: Page): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  const usage = async () => {
    // Twice: what the first round lets go may have held more.
    await devtools.send('HeapProfiler.collectGarbage');
    await devtools.send('HeapProfiler.collectGarbage');
    return (await devtools.send('Runtime.getHeapUsage')) as { usedSize: number; backingStorageSize?: number };
  };
  await page.evaluate((scene) => window.openForMemory(scene), scenes[2]!);
  console.log('\nMemory in MiB after the garbage was collected: heap, and bytes of arrays beside it.');
  const tell = async (when: string) => {
    const history = (await page.evaluate(() => window.historyBytes())) / 1024 / 1024;
    const { usedSize, backingStorageSize = Number.NaN } = await usage();
    const [heap, arrays] = [usedSize, backingStorageSize].map((bytes) => (bytes / 1024 / 1024).toFixed(1));
    console.log(`${when.padEnd(34)} heap ${heap}, arrays ${arrays}, history says ${history.toFixed(1)}`);
  };
  await tell('before');
  for (const round of [1, 2, 3]) {
    await page.evaluate(() => window.strokes(1000));
    await tell(`after 1,000 strokes (round ${round})`);
    await page.evaluate(() => window.undos(1000));
    await tell(`after 1,000 undos (round ${round})`);
  }
}

async function tellMoves(page: Page): Promise<void> {
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
}

/** The value below which a share of the list lies. */
function at(list: readonly number[], share: number): number {
  const sorted = list.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))]!;
}

function ms(value: number): string {
  return value.toFixed(3).padStart(7);
}
