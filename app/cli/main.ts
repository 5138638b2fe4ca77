/** The command line as a program. */
import { resolve } from 'node:path';
import { run } from './run.ts';

/** npm changes into the project's folder; paths are meant from where the person stands. */
const standing = process.env.INIT_CWD ?? process.cwd();

// A reader that has seen enough, such as `head`, closes the pipe: the rest is not wanted, and that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

process.exitCode = await run(process.argv.slice(2), {
  path: (given) => resolve(standing, given),
  print: (text) => process.stdout.write(text),
  remark: (text) => process.stderr.write(text),
});
