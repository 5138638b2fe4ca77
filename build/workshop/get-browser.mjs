/** The browser that the tests drive: found, or installed where that is in our hands, or its want said plainly. */
import { existsSync } from 'node:fs';
import { tsImport } from 'tsx/esm/api';
import { Stop } from '../stop.mjs';
import { runChild } from './child.mjs';
import { electronRuntime } from './electron-runtime.mjs';
import { secondsSince } from './seconds.mjs';

/**
 * The variables of the environment that tell the tests which browser to drive. Electron's runtime comes first, where
 * it is present and has a display to draw on.
 *
 * @param {(line: string) => void} say  shows one line to the person
 * @returns {Promise<Record<string, string>>}
 */
export async function getBrowser(say) {
  const runtime = electronRuntime();
  if (runtime && hasDisplay()) {
    say(`The browser tests drive Electron's runtime: ${runtime}`);
    return { LARKROW_TEST_ELECTRON: runtime };
  }
  /** @type {typeof import('../../app/services/browser/find-browser.ts')} */
  const { findBrowser } = await tsImport('../../app/services/browser/find-browser.ts', import.meta.url);
  let found = findBrowser();
  if (!found.ok && mayInstall()) {
    await install(say);
    found = findBrowser();
  }
  if (!found.ok) throw new Stop(`The browser tests can't run. ${found.problem.sentence}`);
  say(`The browser tests drive ${found.value}`);
  return { LARKROW_BROWSER: found.value };
}

function hasDisplay() {
  if (process.platform !== 'linux') return true;
  return !!(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
}

/** As root on Debian, unless told not to or told which browser to use. */
function mayInstall() {
  return (
    process.env.LARKROW_NO_INSTALL !== '1' &&
    !process.env.LARKROW_BROWSER &&
    process.getuid?.() === 0 &&
    existsSync('/etc/debian_version') &&
    existsSync('/usr/bin/apt-get')
  );
}

/** @param {(line: string) => void} say */
async function install(say) {
  const began = performance.now();
  say("Installing the distribution's Chromium for the browser tests (LARKROW_NO_INSTALL=1 forbids it)…");
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const steps = [['update'], ['install', '-y', '--no-install-recommends', 'chromium']];
  for (const step of steps) {
    const { code, output } = await runChild('/usr/bin/apt-get', ['-q', ...step], { env });
    if (code === 0) continue;
    process.stderr.write(output);
    throw new Stop(
      `The browser tests can't run: apt-get ${step[0]} failed, see above. Install Chromium by hand, or set LARKROW_BROWSER to the path of a browser of its family.`,
    );
  }
  say(`Installed Chromium in ${secondsSince(began)}.`);
}
