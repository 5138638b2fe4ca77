// npm test: every check, closed by one line that sums them. `npm run test:fast` leaves out the browser;
// `npm test -- WORD` runs only the test files whose path holds the word.
import './need-node.cjs';

import('./workshop/run-tests.mjs').then(({ runTests }) => runTests(process.argv.slice(2)));
