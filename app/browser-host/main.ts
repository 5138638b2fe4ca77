/**
 * The browser host as a program: `main.ts [--folder PATH]… [--port N] [--no-window] [FILE.larkrow]…`. Says one line
 * when it is ready, and ends with its last window.
 */
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { findBrowser } from '../services/browser/find-browser.ts';
import { homeHere } from '../services/home/home.ts';
import { logFile } from '../services/log-file.ts';
import { packageRoot, packageVersion } from '../services/package-root.ts';
import { readPageFiles } from '../services/page/page-files.ts';
import { wordsFault } from '../services/words-fault.ts';
import { openWindow } from './open-window.ts';
import { type BrowserHost, startBrowserHost } from './start-browser-host.ts';

const usage = 'Use: [--folder PATH]… [--port N] [--no-window] [FILE.larkrow]…';

interface Wishes {
  readonly folders: string[];
  readonly port: number;
  readonly window: boolean;
  readonly open: string[];
}

async function main(): Promise<number> {
  const wishes = readWishes(process.argv.slice(2));
  if (typeof wishes === 'string') {
    console.error(`${wishes} ${usage}`);
    return 2;
  }
  const host = await startBrowserHost({
    page: readPageFiles(join(packageRoot(), 'dist', 'renderer')),
    version: packageVersion(),
    log: logFile(homeHere().config, () => new Date()),
    ...wishes,
  });
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void host.close());
  await show(host, wishes.window && hasDisplay());
  await host.ended;
  return 0;
}

function readWishes(words: string[]): Wishes | string {
  try {
    const { values, positionals } = parseArgs({
      args: words,
      options: {
        folder: { type: 'string', multiple: true, default: [] },
        port: { type: 'string', default: process.env.LARKROW_PORT || '0' },
        'no-window': { type: 'boolean', default: false },
      },
      allowPositionals: true,
    });
    const port = Number(values.port);
    if (!Number.isInteger(port) || port < 0 || port > 65_535) return `${values.port} is no port.`;
    const missing = [...values.folder, ...positionals].find((path) => !existsSync(path));
    if (missing !== undefined) return `${missing} is not there.`;
    return {
      folders: values.folder.map((path) => resolve(path)),
      port,
      window: !values['no-window'],
      open: positionals.map((path) => resolve(path)),
    };
  } catch (error) {
    return wordsFault(error);
  }
}

/** Opens a window and ends with it; where there can be none, the address is printed. */
async function show(host: BrowserHost, wantsWindow: boolean): Promise<void> {
  const browser = wantsWindow ? findBrowser() : null;
  if (!browser?.ok) {
    if (browser) console.error(browser.problem.sentence);
    console.log(`Larkrow is ready: ${host.url}`);
    return;
  }
  const window = await openWindow(browser.value, host.url);
  host.ended.then(() => window.close());
  console.log(`Larkrow is ready: ${host.origin}, in a window of its own.`);
  window.ended.then((shown) => {
    if (shown) return host.close();
    console.log(`No window could be opened with ${browser.value}. Open this address instead: ${host.url}`);
    return undefined;
  });
}

function hasDisplay(): boolean {
  return process.platform !== 'linux' || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
}

main().then(
  (code) => {
    process.exitCode = code;
  },
  (error: unknown) => {
    console.error(`Larkrow could not start: ${error instanceof Error ? error.message : String(error)}`);
    process.exitCode = 1;
  },
);
