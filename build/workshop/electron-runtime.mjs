/**
 * Electron's runtime: is it there, and can it be had? Its package brings only a loader, which fetches the runtime as
 * soon as it is imported: so it is never imported, only its files are looked at.
 */
import { accessSync, constants, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runChild } from './child.mjs';
import { root } from './root.mjs';
import { secondsSince } from './seconds.mjs';

const packageFolder = join(root, 'node_modules', 'electron');
const noteFile = join(root, 'node_modules', '.larkrow-electron');

/**
 * The path of the runtime's program; undefined where it is missing.
 *
 * @returns {string | undefined}
 */
export function electronRuntime() {
  try {
    const inside = readFileSync(join(packageFolder, 'path.txt'), 'utf8').trim();
    const program = join(process.env.ELECTRON_OVERRIDE_DIST_PATH || join(packageFolder, 'dist'), inside);
    accessSync(program, constants.X_OK);
    return program;
  } catch {
    return undefined;
  }
}

/**
 * The runtime's program, fetched where it is missing: once, for at most 20 s. A failure is remembered for this version
 * of Electron and not tried again unless `retry` is set.
 *
 * @param {{ retry: boolean, say: (line: string) => void, timeoutMs?: number }} options
 *   `say` shows one line to the person
 */
export async function haveElectronRuntime({ retry, say, timeoutMs = 20_000 }) {
  const there = electronRuntime();
  if (there) return there;
  const { version } = JSON.parse(readFileSync(join(packageFolder, 'package.json'), 'utf8'));
  const failedBefore = `Electron ${version}`;
  if (!retry && readIfThere(noteFile)?.trim() === failedBefore) {
    say(
      `${failedBefore} could not be had before (npm start -- --retry-electron tries again): using the browser.`,
    );
    return undefined;
  }
  say(`Fetching the runtime of Electron ${version}, once and for at most ${timeoutMs / 1000} s…`);
  const began = performance.now();
  const { timedOut } = await runChild(process.execPath, [join(packageFolder, 'install.js')], { timeoutMs });
  const fetched = electronRuntime();
  if (fetched) {
    say(`Fetched it in ${secondsSince(began)}.`);
    return fetched;
  }
  say(
    `The runtime ${timedOut ? `did not arrive in ${timeoutMs / 1000} s` : 'could not be fetched'}: using the browser, now and next time.`,
  );
  remember(`${failedBefore}\n`);
  return undefined;
}

/** @param {string} text */
function remember(text) {
  try {
    writeFileSync(noteFile, text);
  } catch {
    // A folder that may only be read is asked again next time.
  }
}

/** @param {string} path */
function readIfThere(path) {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}
