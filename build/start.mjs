// npm start: opens the studio. Options after `--`: --browser (even where Electron's runtime is there),
// --retry-electron (try again to fetch the runtime), and those of the host: --folder PATH, FILE.larkrow.
import './need-node.cjs';

Promise.all([import('./stop.mjs'), import('./workshop/open-studio.mjs')]).then(([{ run }, { openStudio }]) =>
  run(() => openStudio(process.argv.slice(2))),
);
