/**
 * The browser that end-to-end tests drive. npm test says which: Electron's runtime where it is present and has a
 * display (LARKROW_TEST_ELECTRON), else an installed browser of the Chromium family. Without either, a test fails
 * with the sentence that says what to do.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { _electron, type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { findBrowser } from '../../app/services/browser/find-browser.ts';

export interface View {
  readonly width?: number;
  readonly height?: number;
  readonly colorScheme?: 'light' | 'dark';
  /** Device pixels a CSS pixel. */
  readonly scale?: number;
}

export interface ShownPage {
  readonly page: Page;
  /** Addresses that were asked for outside the page's own origin: in the studio there must be none. */
  readonly foreignRequests: readonly string[];
  /** What went wrong in the page: errors that nobody caught, and lines written to its console as errors. */
  readonly errors: readonly string[];
  close(): Promise<void>;
}

export interface TestBrowser {
  /** Shows an address in a window of its own, with nothing kept from an earlier one. */
  showPage(url: string, view?: View): Promise<ShownPage>;
  /** Closes what is still shown, too. */
  close(): Promise<void>;
}

/** A browser that begins with its first page, and shows one after another. Electron begins anew for each of them. */
export function testBrowser(): TestBrowser {
  const runtime = process.env.LARKROW_TEST_ELECTRON;
  let launched: Promise<Browser> | undefined;
  return {
    async showPage(url, view = {}) {
      if (runtime) return watched(await inElectron(runtime, view), url);
      launched ??= launchChromium();
      return watched(await inChromium(await launched, view), url);
    },
    async close() {
      await (await launched)?.close();
    },
  };
}

/** Shows an address in a browser that ends with it. */
export async function showPage(url: string, view: View = {}): Promise<ShownPage> {
  const browser = testBrowser();
  try {
    const shown = await browser.showPage(url, view);
    return {
      ...shown,
      async close() {
        await shown.close();
        await browser.close();
      },
    };
  } catch (error) {
    await browser.close();
    throw error;
  }
}

interface Blank {
  context: BrowserContext;
  page: Page;
  close(): Promise<void>;
}

async function watched({ context, page, close }: Blank, url: string): Promise<ShownPage> {
  const foreignRequests: string[] = [];
  const errors: string[] = [];
  const { origin } = new URL(url);
  context.on('request', (request) => {
    const asked = request.url();
    // blob: and data: addresses stay inside the page.
    if (/^(https?|wss?):/.test(asked) && new URL(asked).origin !== origin) foreignRequests.push(asked);
  });
  page.on('pageerror', (error) => errors.push(error.stack ?? error.message));
  page.on('console', (line) => {
    if (line.type() === 'error') errors.push(`${line.text()} (${line.location().url})`);
  });
  await page.goto(url);
  return { page, foreignRequests, errors, close };
}

async function launchChromium(): Promise<Browser> {
  const found = findBrowser();
  if (!found.ok) throw new Error(found.problem.sentence);
  return chromium.launch({
    executablePath: found.value,
    // Chromium has no sandbox for root; elsewhere it stays on.
    chromiumSandbox: process.getuid?.() !== 0,
    args: ['--headless=new', ...quietly],
  });
}

async function inChromium(browser: Browser, view: View): Promise<Blank> {
  const context = await browser.newContext({
    viewport: sizeOf(view),
    deviceScaleFactor: view.scale ?? 1,
    colorScheme: view.colorScheme ?? 'light',
    acceptDownloads: false,
  });
  return { context, page: await context.newPage(), close: () => context.close() };
}

async function inElectron(runtime: string, view: View): Promise<Blank> {
  const profile = mkdtempSync(join(tmpdir(), 'larkrow-test-'));
  const { width, height } = sizeOf(view);
  const electron = await _electron.launch({
    executablePath: runtime,
    args: [
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      ...quietly,
      `--user-data-dir=${profile}`,
      `--force-device-scale-factor=${view.scale ?? 1}`,
      fileURLToPath(new URL('./blank-window.cjs', import.meta.url)),
      String(width),
      String(height),
    ],
  });
  const page = await electron.firstWindow();
  await page.emulateMedia({ colorScheme: view.colorScheme ?? 'light' });
  return {
    context: electron.context(),
    page,
    close: async () => {
      await electron.close();
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

function sizeOf({ width = 1280, height = 800 }: View) {
  return { width, height };
}

const quietly = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
