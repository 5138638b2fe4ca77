import { join } from 'node:path';
import { setUp } from '../set-up.mjs';
import { Stop } from '../stop.mjs';
import { endQuietlyOnSignals, runChild } from './child.mjs';
import { haveElectronRuntime } from './electron-runtime.mjs';
import { make } from './make.mjs';
import { root } from './root.mjs';

/**
 * Installs and makes what is missing, then opens the studio in Electron where its runtime and a display are to be
 * had, else in the browser host. Returns when the studio is closed.
 *
 * @param {readonly string[]} words  what stands on the command line; what is not for this script goes to the host
 */
export async function openStudio(words) {
  const own = new Set(['--browser', '--retry-electron']);
  const forHost = words.filter((word) => !own.has(word));
  await setUp();
  await make();
  const runtime = words.includes('--browser')
    ? undefined
    : await haveElectronRuntime({ retry: words.includes('--retry-electron'), say: console.log });
  const [command, args] = runtime && hasDisplay() ? inElectron(runtime) : inBrowser();
  endQuietlyOnSignals();
  // Paths on the command line are meant from where the person stands.
  const cwd = process.env.INIT_CWD ?? process.cwd();
  const { code } = await runChild(command, [...args, ...forHost], { show: true, cwd });
  if (code !== 0) throw new Stop('The studio ended with a mistake: see above what it says.');
}

/** @returns {boolean} */
function hasDisplay() {
  if (process.platform !== 'linux') return true;
  return !!(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
}

/**
 * @param {string} runtime
 * @returns {[string, string[]]}
 */
function inElectron(runtime) {
  // Chromium refuses to sandbox its pages for root.
  const flags = process.platform === 'linux' && process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  return [runtime, [...flags, root]];
}

/** @returns {[string, string[]]} */
function inBrowser() {
  return [
    process.execPath,
    ['--import', import.meta.resolve('tsx'), join(root, 'app', 'browser-host', 'main.ts')],
  ];
}
