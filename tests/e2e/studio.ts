/** The studio as a person has it before them: the real page, in a real browser, over the browser host. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, onTestFinished } from 'vitest';
import { startBrowserHost } from '../../app/browser-host/start-browser-host.ts';
import { readPageFiles } from '../../app/services/page/page-files.ts';
import { temporaryFolder } from '../temporary-folder.ts';
import { type ShownPage, testBrowser, type View } from './browser.ts';

/** One for all tests of a file: to begin it takes longer than many of them do. */
const browser = testBrowser();
afterAll(() => browser.close());

export interface Studio extends ShownPage {
  /** A folder that the person granted, beside the shelf's. */
  readonly folder: string;
  readonly shelf: string;
  /** What the host wrote to its log: nothing, while all is well. */
  readonly logged: readonly unknown[];
}

export async function openStudio(view: View = {}): Promise<Studio> {
  const home = temporaryFolder();
  const folder = join(home, 'Pictures and patterns');
  const shelf = join(home, 'shelf');
  for (const each of [folder, shelf]) mkdirSync(each);
  const logged: unknown[] = [];
  const host = await startBrowserHost({
    page: readPageFiles(fileURLToPath(new URL('../../dist/renderer', import.meta.url))),
    version: '0.0.0',
    log: (...words) => logged.push(words),
    folders: [folder],
    home: { shelf, config: join(home, 'config'), bin: join(home, 'bin'), folders: [] },
    graceMs: null,
  });
  const shown = await browser.showPage(host.url, view);
  onTestFinished(async () => {
    await shown.close();
    await host.close();
  });
  return { ...shown, folder, shelf, logged };
}
