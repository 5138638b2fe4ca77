// npm run build: makes the page and the hosts' bundles from their sources, where these changed.
import './need-node.cjs';

Promise.all([import('./stop.mjs'), import('./set-up.mjs'), import('./workshop/make.mjs')]).then(
  ([{ run }, { setUp }, { make }]) =>
    run(async () => {
      await setUp();
      await make();
      console.log('Everything is made: dist/renderer holds the page, dist/app the hosts.');
    }),
);
