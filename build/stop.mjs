/** An end that a person can do something about: `message` is one whole sentence that says what. */
export class Stop extends Error {}

/**
 * Runs the main part of a script. A Stop prints its sentence and ends with exit code 1; anything else is a mistake
 * of ours and stays loud.
 *
 * @param {() => Promise<void>} main
 */
export async function run(main) {
  try {
    await main();
  } catch (error) {
    if (!(error instanceof Stop)) throw error;
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  }
}
