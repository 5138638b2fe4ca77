// npm run bench -- NAME…: runs measurements of tests/bench by name; without a name, tells which there are.
import './need-node.cjs';

Promise.all([import('./stop.mjs'), import('./workshop/run-benches.mjs')]).then(([{ run }, { runBenches }]) =>
  run(() => runBenches(process.argv.slice(2))),
);
