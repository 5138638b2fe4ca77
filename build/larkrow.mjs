// The command line: npm run -s larkrow -- VERB … Standard output belongs to the verb; what is said here goes to
// standard error.
import './need-node.cjs';

Promise.all([import('./stop.mjs'), import('./set-up.mjs')]).then(([{ run }, { setUp }]) =>
  run(async () => {
    await setUp({ say: (line) => process.stderr.write(`${line}\n`) });
    const { register } = await import('tsx/esm/api');
    register();
    await import('../app/cli/main.ts');
  }),
);
