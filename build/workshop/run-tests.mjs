/**
 * npm test: sets up, then runs every part, whatever became of the one before, and closes with one plain line. A part
 * that is no test run counts as one.
 */
import { setUp } from '../set-up.mjs';
import { Stop } from '../stop.mjs';
import { runChild } from './child.mjs';
import { make } from './make.mjs';
import { secondsSince } from './seconds.mjs';
import { runVitest } from './vitest-part.mjs';

/**
 * @typedef {import('./vitest-part.mjs').Tally} Tally
 * @typedef {import('./vitest-part.mjs').Outcome} Outcome
 * @typedef {object} Part
 * @property {string} name
 * @property {boolean} browser      whether it needs one, and so is left out of the fast run
 * @property {boolean} isTestRun    whether a word on the command line chooses among what it runs
 * @property {boolean} isNeeded     whether the test runs need it, so that it also comes before a choice of them
 * @property {(filter: readonly string[]) => Promise<Outcome>} run
 */

/**
 * What npm test runs. All of it is meant to take at most ten minutes; the limits of the test runs, a quarter of an hour each,
 * only stop what hangs.
 *
 * @type {readonly Part[]}
 */
const parts = [
  check('types', () => tool('typescript/bin/tsc', '--build')),
  check('format and lint', () => tool('@biomejs/biome/bin/biome', 'ci', '--error-on-warnings', '.')),
  check('arrows between folders', arrows),
  check('nothing unused', () => tool('knip/bin/knip.js', '--no-progress')),
  { ...check('page and hosts are made', makeAll), isNeeded: true },
  {
    name: 'tests without a browser',
    browser: false,
    isTestRun: true,
    isNeeded: false,
    run: (filter) =>
      runVitest(['unit', 'reference', 'property', 'contract'], {
        filter,
        env: process.env,
        timeoutMs: 15 * 60_000,
      }),
  },
  {
    name: 'tests in a browser',
    browser: true,
    isTestRun: true,
    isNeeded: false,
    run: async (filter) => {
      const { getBrowser } = await import('./get-browser.mjs');
      const env = { ...process.env, ...(await getBrowser(console.log)) };
      return runVitest(['e2e'], { filter, env, timeoutMs: 15 * 60_000 });
    },
  },
];

/** @param {readonly string[]} words  `--fast` leaves out what is slow; others choose test files */
export async function runTests(words) {
  const began = performance.now();
  const fast = words.includes('--fast');
  // Heard by build/vitest.config.ts, which leaves out what is slow.
  if (fast) process.env.LARKROW_TESTS = 'fast';
  const filter = words.filter((word) => !word.startsWith('--'));
  const chosen = parts.filter(
    (part) => !(fast && part.browser) && (filter.length === 0 || part.isTestRun || part.isNeeded),
  );
  const sum = { passed: 0, failed: 0, skipped: 0 };
  /** @type {string[]} */
  const lines = [];
  /** @type {string[]} */
  const failures = [];
  let testsRun = 0;
  /** @param {Part} part */
  const run = async (part) => {
    const partBegan = performance.now();
    console.log(`\n== ${part.name}`);
    const tally = await runSafely(part, filter);
    for (const key of /** @type {const} */ (['passed', 'failed', 'skipped'])) sum[key] += tally[key];
    failures.push(...(tally.failures ?? []));
    if (part.isTestRun) testsRun += tally.passed + tally.failed;
    lines.push(`${part.name.padEnd(26)}${inWords(tally).padEnd(40)}${secondsSince(partBegan)}`);
  };
  if (await isSetUp()) {
    await twoAtATime(
      chosen.filter((part) => !part.isTestRun),
      run,
    );
    // Each of these takes all that the machine has.
    for (const part of chosen.filter(({ isTestRun }) => isTestRun)) await run(part);
    if (filter.length > 0 && testsRun === 0) {
      console.error(`No test file has ${filter.join(' or ')} in its path.`);
      sum.failed += 1;
    }
  } else {
    sum.failed = 1;
  }
  // Told again at the end: what comes before may be thousands of lines, of which a build server keeps the last.
  if (failures.length > 0) console.log(`\n== failed\n${failures.slice(0, 40).join('\n')}`);
  console.log(`\n${[...lines, `all parts took ${secondsSince(began)}`].join('\n')}\n`);
  process.exitCode = sum.failed > 0 ? 1 : 0;
  console.log(inWords(sum));
}

/**
 * @param {readonly Part[]} some
 * @param {(part: Part) => Promise<void>} run
 */
async function twoAtATime(some, run) {
  const waiting = [...some];
  const hand = async () => {
    for (let part = waiting.shift(); part; part = waiting.shift()) await run(part);
  };
  await Promise.all([hand(), hand()]);
}

async function isSetUp() {
  try {
    await setUp();
    return true;
  } catch (error) {
    console.error(error instanceof Stop ? error.message : error);
    return false;
  }
}

/**
 * @param {Part} part
 * @param {readonly string[]} filter
 * @returns {Promise<Outcome>}
 */
async function runSafely(part, filter) {
  try {
    return await part.run(filter);
  } catch (error) {
    console.error(error instanceof Stop ? error.message : error);
    return { passed: 0, failed: 1, skipped: 0 };
  }
}

/**
 * A part that passes or fails as a whole. It says what it found only where it fails.
 *
 * @param {string} name
 * @param {() => Promise<string | undefined>} faultOf
 * @returns {Part}
 */
function check(name, faultOf) {
  return {
    name,
    browser: false,
    isTestRun: false,
    isNeeded: false,
    run: async () => {
      const fault = await faultOf();
      if (fault === undefined) return { passed: 1, failed: 0, skipped: 0 };
      console.error(`\n== ${name}\n${fault}`);
      return { passed: 0, failed: 1, skipped: 0 };
    },
  };
}

/**
 * Runs a tool of node_modules.
 *
 * @param {string} script
 * @param {readonly string[]} args
 */
async function tool(script, ...args) {
  const { code, output } = await runChild(process.execPath, [`node_modules/${script}`, ...args]);
  return code === 0 ? undefined : output || `${script} could not be run.`;
}

/** A run that saw no modules has checked nothing. */
async function arrows() {
  const { code, output } = await runChild(process.execPath, [
    'node_modules/dependency-cruiser/bin/dependency-cruise.mjs',
    ...['shared', 'app', 'renderer', '--output-type', 'err-long'],
  ]);
  if (code !== 0) return output;
  const modules = Number(/\((\d+) modules/.exec(output)?.[1] ?? 0);
  return modules > 100 ? undefined : `Only ${modules} modules were looked at.\n${output}`;
}

async function makeAll() {
  await make();
  return undefined;
}

/** @param {Tally} tally */
function inWords({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed, ${skipped} skipped`;
}
