/**
 * Runs another program and waits for its end. Each child leads a process group of its own, so that stopping it also
 * stops what it started; when this script ends, so do they all.
 */
import { spawn, spawnSync } from 'node:child_process';
import { constants } from 'node:os';
import { root } from './root.mjs';

/** @type {Set<import('node:child_process').ChildProcess>} */
const running = new Set();

/**
 * @typedef {object} Ending
 * @property {number | null} code   The exit code; null where it was stopped by a signal or never began.
 * @property {boolean} timedOut
 * @property {string} output        What it said, where it was not shown as it came.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ env?: NodeJS.ProcessEnv, cwd?: string, show?: boolean, timeoutMs?: number }} [options]
 *   `show` passes its lines on as they come.
 * @returns {Promise<Ending>}
 */
export function runChild(command, args, { env = process.env, cwd = root, show = false, timeoutMs } = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd,
      env,
      stdio: show ? 'inherit' : ['ignore', 'pipe', 'pipe'],
      detached: process.platform !== 'win32',
    });
    running.add(child);
    let output = '';
    let timedOut = false;
    const timer =
      timeoutMs === undefined
        ? undefined
        : setTimeout(() => {
            timedOut = true;
            stopGroup(child, 'SIGKILL');
          }, timeoutMs);
    for (const stream of [child.stdout, child.stderr]) {
      stream?.setEncoding('utf8').on('data', (/** @type {string} */ text) => {
        output += text;
      });
    }
    /** @param {number | null} code */
    const end = (code) => {
      clearTimeout(timer);
      running.delete(child);
      resolve({ code, timedOut, output });
    };
    child.on('error', (error) => {
      output += `${error.message}\n`;
      end(null);
    });
    child.on('close', end);
  });
}

/**
 * @param {import('node:child_process').ChildProcess} child
 * @param {NodeJS.Signals} signal
 */
function stopGroup(child, signal) {
  if (child.pid === undefined) return;
  try {
    if (process.platform === 'win32') spawnSync('taskkill', ['/pid', String(child.pid), '/T', '/F']);
    else process.kill(-child.pid, signal);
  } catch {
    // It ended by itself a moment ago.
  }
}

let codeAfterSignal = (/** @type {keyof typeof constants.signals} */ signal) =>
  128 + constants.signals[signal];

/** For a script whose usual end is Ctrl-C: that is no failure then. */
export function endQuietlyOnSignals() {
  codeAfterSignal = () => 0;
}

for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP'])) {
  process.on(signal, () => {
    for (const child of running) stopGroup(child, signal);
    const end = () => process.exit(codeAfterSignal(signal));
    // A child that tidies up gets its time; one that does not must not hold the terminal.
    setInterval(() => running.size === 0 && end(), 20);
    setTimeout(end, 5000);
  });
}
process.on('exit', () => {
  for (const child of running) stopGroup(child, 'SIGKILL');
});
