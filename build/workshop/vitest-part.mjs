import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { runChild } from './child.mjs';
import { root } from './root.mjs';

/**
 * @typedef {{ passed: number, failed: number, skipped: number }} Tally
 * @typedef {Tally & { failures?: readonly string[] }} Outcome   `failures`: each test that failed, and how, in a few lines
 */

/**
 * Runs the tests of some folders under tests/ and counts them. A file that could not be run, an error outside any
 * test, and a folder none of whose tests ran each count as one failure.
 *
 * @param {readonly string[]} folders
 * @param {{ filter: readonly string[], env: NodeJS.ProcessEnv, timeoutMs: number }} options
 *   `filter`: only files whose path holds one of these words; then a folder without such files is no failure;
 *   `timeoutMs`: a run that takes longer hangs, and is stopped
 * @returns {Promise<Outcome>}
 */
export async function runVitest(folders, { filter, env, timeoutMs }) {
  const reports = join(root, 'node_modules', '.cache', 'larkrow');
  mkdirSync(reports, { recursive: true });
  const report = join(reports, `${folders.join('-')}-${process.pid}.json`);
  const { code, timedOut } = await runChild(
    process.execPath,
    [
      'node_modules/vitest/vitest.mjs',
      'run',
      '--config=build/vitest.config.ts',
      ...folders.map((folder) => `--project=${folder}`),
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
      ...(filter.length > 0 ? ['--passWithNoTests', ...filter] : []),
    ],
    { show: true, env, timeoutMs },
  );
  const files = readReport(report);
  rmSync(report, { force: true });
  const tally = count(files);
  if (timedOut) console.error(`These tests were stopped after ${timeoutMs / 60_000} minutes.`);
  if (filter.length === 0) {
    for (const folder of folders) {
      if (files.some((file) => inFolder(file, folder) && file.assertionResults.some(wasRun))) continue;
      console.error(`No test under tests/${folder} was run.`);
      tally.failed += 1;
    }
  }
  if (code !== 0 && tally.failed === 0) {
    if (!timedOut) console.error(`vitest ended with exit code ${code} though no test failed: see above.`);
    tally.failed = 1;
  }
  return { ...tally, failures: files.flatMap(failuresIn) };
}

/**
 * @typedef {{ status: string, fullName: string, failureMessages: string[] | null }} TestReport
 * @typedef {{ name: string, status: string, message: string, assertionResults: TestReport[] }} FileReport
 *
 * @param {string} path
 * @returns {FileReport[]}
 */
function readReport(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8')).testResults;
  } catch {
    return [];
  }
}

/**
 * @param {readonly FileReport[]} files
 * @returns {Tally}
 */
function count(files) {
  const tally = { passed: 0, failed: 0, skipped: 0 };
  for (const file of files) {
    const failedBefore = tally.failed;
    for (const { status } of file.assertionResults) {
      if (status === 'passed') tally.passed += 1;
      else if (status === 'failed') tally.failed += 1;
      else tally.skipped += 1;
    }
    if (file.status === 'failed' && tally.failed === failedBefore) tally.failed += 1;
  }
  return tally;
}

/** @param {{ status: string }} test */
function wasRun({ status }) {
  return status === 'passed' || status === 'failed';
}

/**
 * @param {FileReport} file
 * @param {string} folder
 */
function inFolder(file, folder) {
  return relative(root, file.name).startsWith(`tests${sep}${folder}${sep}`);
}

/**
 * @param {FileReport} file
 * @returns {string[]}
 */
function failuresIn(file) {
  const path = relative(root, file.name).replaceAll(sep, '/');
  const failed = file.assertionResults.filter(({ status }) => status === 'failed');
  if (file.status === 'failed' && failed.length === 0) return [`${path}\n${firstLines(file.message)}`];
  return failed.map(
    ({ fullName, failureMessages }) =>
      `${path}: ${fullName}\n${firstLines((failureMessages ?? []).join('\n'))}`,
  );
}

/** @param {string} message */
function firstLines(message) {
  return message
    .split('\n')
    .slice(0, 12)
    .map((line) => `    ${line.slice(0, 400)}`)
    .join('\n');
}
