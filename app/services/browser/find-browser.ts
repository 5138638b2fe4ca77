/**
 * Finds an installed browser of the Chromium family: the browser host shows the studio in it, and the tests drive it.
 * Looks only, starts nothing.
 */
import { accessSync, constants, statSync } from 'node:fs';
import { posix, win32 } from 'node:path';
import type { Result } from '../../../shared/result.ts';
import { good, problem } from '../../../shared/result.ts';

/** What the search needs to know of the machine. */
export interface Machine {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Whether the path is a file that may be run. */
  isProgram(path: string): boolean;
}

/**
 * The path of the browser to use. LARKROW_BROWSER decides where it is set. Else the first of: chromium, chrome, edge,
 * brave, each looked for on PATH and then in the places where its installer puts it. Problems: `no-browser`.
 */
export function findBrowser(machine: Machine = thisMachine): Result<string> {
  const chosen = machine.env.LARKROW_BROWSER;
  if (chosen) {
    if (machine.isProgram(chosen)) return good(chosen);
    return problem(
      'no-browser',
      `LARKROW_BROWSER names ${chosen}, which is not a program that can be run: correct it or unset it.`,
    );
  }
  const found = candidates(machine).find((path) => machine.isProgram(path));
  if (found) return good(found);
  return problem(
    'no-browser',
    'No browser of the Chromium family was found: install Chromium, or set LARKROW_BROWSER to the path of one.',
  );
}

const thisMachine: Machine = {
  platform: process.platform,
  env: process.env,
  isProgram(path) {
    try {
      accessSync(path, constants.X_OK);
      return statSync(path).isFile();
    } catch {
      return false;
    }
  },
};

function candidates({ platform, env }: Machine): string[] {
  if (platform === 'win32') {
    const roots = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter((path) => !!path);
    return onWindows.flatMap((path) => roots.map((root) => win32.join(root!, path)));
  }
  if (platform === 'darwin') {
    const roots = ['/Applications', ...(env.HOME ? [posix.join(env.HOME, 'Applications')] : [])];
    return onMac.flatMap((name) => roots.map((root) => `${root}/${name}.app/Contents/MacOS/${name}`));
  }
  const folders = [...(env.PATH ?? '').split(':').filter(posix.isAbsolute), ...usualFolders];
  return onLinux.flatMap((name) => folders.map((folder) => posix.join(folder, name)));
}

const onLinux = [
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
  'microsoft-edge-stable',
  'microsoft-edge',
  'brave-browser',
  'brave',
];
const usualFolders = ['/usr/bin', '/usr/local/bin', '/snap/bin', '/var/lib/flatpak/exports/bin'];

const onMac = ['Chromium', 'Google Chrome', 'Microsoft Edge', 'Brave Browser'];

const onWindows = [
  'Chromium\\Application\\chrome.exe',
  'Google\\Chrome\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
  'BraveSoftware\\Brave-Browser\\Application\\brave.exe',
];
