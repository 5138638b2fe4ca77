/**
 * Installs the libraries where they are missing or are not those of package-lock.json. Plain Node: it runs before
 * anything is installed. Packages' own install scripts are never run: none of ours needs one.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { Stop } from './stop.mjs';
import { runChild } from './workshop/child.mjs';
import { root } from './workshop/root.mjs';
import { secondsSince } from './workshop/seconds.mjs';

const lockFile = join(root, 'package-lock.json');
const stampFile = join(root, 'node_modules', '.larkrow-stamp');
const busyFile = join(root, '.larkrow', 'set-up.pid');
const machine = `${process.platform}-${process.arch}`;

/** How often npm asks again where the registry does not answer: some 13 s in all, where its own way takes 70. */
const patience = ['--fetch-retries=3', '--fetch-retry-mintimeout=1000', '--fetch-retry-factor=3'];

/**
 * Returns when the libraries are there.
 *
 * @param {{ say?: (line: string) => void }} [options]  `say` shows one line to the person
 */
export async function setUp({ say = console.log } = {}) {
  if (isSetUp()) return;
  await takeTurn(say);
  try {
    // Another start may have done it while this one waited.
    if (!isSetUp()) await install(say);
  } finally {
    rmSync(busyFile, { force: true });
  }
}

/** @returns {boolean} */
function isSetUp() {
  const [stampedMachine, stampedLock] = (readIfThere(stampFile) ?? '').trim().split(' ');
  if (stampedMachine && stampedMachine !== machine) return false;
  if (stampedLock === lockHash()) return true;
  if (!installedMatchesLock()) return false;
  // Somebody ran npm themselves, and rightly.
  stamp();
  return true;
}

/** Whether npm's own note of what it installed holds everything that the lock asks for on every machine. */
function installedMatchesLock() {
  const note = readIfThere(join(root, 'node_modules', '.package-lock.json'));
  if (note === undefined) return false;
  try {
    const installed = JSON.parse(note).packages ?? {};
    const wanted = JSON.parse(readFileSync(lockFile, 'utf8')).packages ?? {};
    return Object.keys(wanted).every((path) => {
      const { version, optional, devOptional } = wanted[path];
      return path === '' || optional || devOptional || installed[path]?.version === version;
    });
  } catch {
    return false;
  }
}

/** @param {(line: string) => void} say */
async function install(say) {
  const began = performance.now();
  say('Installing the libraries that Larkrow needs (npm ci); the first time takes some seconds…');
  const flags = [
    'ci',
    '--include=dev',
    '--include=optional',
    '--ignore-scripts',
    '--no-audit',
    '--no-fund',
    ...patience,
  ];
  const npm = npmCommand();
  const { code, output } = await runChild(npm[0], [...npm.slice(1), ...flags, '--loglevel=error']);
  if (code !== 0) {
    process.stderr.write(output);
    throw new Stop(installFailure(output));
  }
  stamp();
  say(`Installed in ${secondsSince(began)}.`);
}

/**
 * The sentence for a failed install, by what npm complained about.
 *
 * @param {string} output
 */
function installFailure(output) {
  const cause = [
    [
      /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH|network/i,
      'the npm registry could not be reached: check the connection (or the proxy that npm is set to use) and run the command again',
    ],
    [/ENOSPC/, 'the disk is full: free some space and run the command again'],
    [
      /EACCES|EPERM|EROFS/,
      'this folder may not be written to: make it writable or clone Larkrow elsewhere, and run the command again',
    ],
  ].find(([pattern]) => /** @type {RegExp} */ (pattern).test(output));
  return `npm could not install the libraries: ${
    cause?.[1] ?? 'read what npm says above, and run the command again when that is settled'
  }.`;
}

/**
 * npm as it was called, else the one beside this Node, else the one on the path: so that a Node that was only brought
 * for a try is used throughout.
 *
 * @returns {[string, ...string[]]}
 */
function npmCommand() {
  const beside = dirname(process.execPath);
  const script = [
    process.env.npm_execpath ?? '',
    join(beside, '..', 'lib', 'node_modules', 'npm', 'bin', 'npm-cli.js'),
    join(beside, 'node_modules', 'npm', 'bin', 'npm-cli.js'),
  ].find((path) => /npm-cli\.[cm]?js$/.test(path) && existsSync(path));
  if (script) return [process.execPath, script];
  return process.platform === 'win32' ? ['cmd.exe', '/d', '/c', 'npm'] : ['npm'];
}

/**
 * Only one install at a time: two would empty the folder under each other's hands.
 *
 * @param {(line: string) => void} say
 */
async function takeTurn(say) {
  let saidSo = false;
  for (;;) {
    try {
      mkdirSync(dirname(busyFile), { recursive: true });
      writeFileSync(busyFile, String(process.pid), { flag: 'wx' });
      return;
    } catch (error) {
      const code = /** @type {NodeJS.ErrnoException} */ (error).code;
      if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS') throw new Stop(installFailure(code));
      if (code !== 'EEXIST') throw error;
    }
    if (isLeftBehind()) {
      rmSync(busyFile, { force: true });
      continue;
    }
    if (!saidSo) say('Another start of Larkrow is installing the libraries: waiting for it…');
    saidSo = true;
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
}

/** Whether the note of an install is one of a process that was killed, or older than any install takes. */
function isLeftBehind() {
  const ageMs = Date.now() - (statSync(busyFile, { throwIfNoEntry: false })?.mtimeMs ?? Date.now());
  if (ageMs > 10 * 60_000) return true;
  const pid = Number(readIfThere(busyFile));
  // The number is written a moment after the file is made.
  if (!pid) return ageMs > 2000;
  try {
    process.kill(pid, 0);
    return false;
  } catch (error) {
    return /** @type {NodeJS.ErrnoException} */ (error).code === 'ESRCH';
  }
}

function stamp() {
  try {
    writeFileSync(stampFile, `${machine} ${lockHash()}\n`);
  } catch {
    // A folder that may only be read needs no note: the next start compares again.
  }
}

function lockHash() {
  return createHash('sha256').update(readFileSync(lockFile)).digest('hex');
}

/** @param {string} path */
function readIfThere(path) {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}
