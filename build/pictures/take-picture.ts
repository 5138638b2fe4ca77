/**
 * Takes the README's picture of the studio: `npx tsx build/pictures/take-picture.ts`, after `npm run build`. Starts
 * the browser host on an empty home, opens a demo design and draws nothing.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { startBrowserHost } from '../../app/browser-host/start-browser-host.ts';
import { readPageFiles } from '../../app/services/page/page-files.ts';
import { showPage } from '../../tests/e2e/browser.ts';

const target = fileURLToPath(new URL('./draw-light.png', import.meta.url));
const home = mkdtempSync(join(tmpdir(), 'larkrow-picture-'));
const host = await startBrowserHost({
  page: readPageFiles(fileURLToPath(new URL('../../dist/renderer', import.meta.url))),
  version: '0.0.0',
  log: console.error,
  home: { shelf: join(home, 'Larkrow'), config: join(home, 'config'), bin: join(home, 'bin'), folders: [] },
  graceMs: null,
});
const { page, close } = await showPage(host.url, { width: 1280, height: 800 });
await page.getByRole('button', { name: 'Open Lamp at Harrow Point' }).click();
await page.getByText('Loose ends').waitFor();
const chart = (await page.getByRole('application').boundingBox())!;
await page.mouse.move(chart.x + chart.width * 0.58, chart.y + chart.height * 0.56);
await page.waitForTimeout(600);
await sharp(await page.screenshot())
  .png({ palette: true })
  .toFile(target);
await close();
await host.close();
rmSync(home, { recursive: true });
