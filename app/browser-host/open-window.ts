/** Opens the studio in a window of an installed browser, with a profile of its own that is thrown away afterwards. */
import { spawn } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface AppWindow {
  /** When the browser has ended; false where it never showed a window. */
  readonly ended: Promise<boolean>;
  close(): void;
}

const flags = [
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-default-apps',
  '--disable-extensions',
  '--disable-sync',
  '--disable-quic',
  '--window-size=1440,900',
];

/** A browser that ends within this time without a fault of ours never showed a window. */
const SOON_MS = 3000;

export async function openWindow(browser: string, url: string): Promise<AppWindow> {
  const profile = await mkdtemp(join(tmpdir(), 'larkrow-window-'));
  const args = [`--app=${url}`, `--user-data-dir=${profile}`, ...flags, ...flagsOfRoot()];
  const began = Date.now();
  const child = spawn(browser, args, { stdio: 'ignore' });
  const ended = new Promise<boolean>((resolve) => {
    child.on('error', () => resolve(false));
    child.on('exit', (code) => resolve(code === 0 || Date.now() - began > SOON_MS));
  }).finally(() =>
    // The browser's own helpers may hold files for a moment longer; a profile that stays is only a temporary folder.
    rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 }).catch(() => {}),
  );
  return { ended, close: () => child.kill() };
}

/** Chromium has no sandbox for root, and would show a bar about it that pushes the page down. */
function flagsOfRoot(): string[] {
  return process.platform === 'linux' && process.getuid?.() === 0 ? ['--no-sandbox', '--test-type'] : [];
}
