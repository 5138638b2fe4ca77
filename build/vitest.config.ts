/** The tests of the craft, the services and the studio, by the folders they stand in. */
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** How long one test of a folder may take, in ms. Machines of our own are slow where several things run at once. */
const timeoutsMs = { unit: 20_000, reference: 20_000, property: 120_000, contract: 60_000, e2e: 120_000 };

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  cacheDir: fileURLToPath(new URL('../node_modules/.cache/vitest', import.meta.url)),
  test: {
    // Not one fewer, as is usual: nobody works at this machine while it waits for its tests.
    maxWorkers: availableParallelism(),
    projects: Object.entries(timeoutsMs).map(([name, timeoutMs]) => ({
      extends: true,
      test: {
        name,
        include: [`tests/${name}/**/*.test.{ts,tsx}`],
        testTimeout: timeoutMs,
        hookTimeout: timeoutMs,
        // One browser at a time: several on two cores make one another slow.
        fileParallelism: name !== 'e2e',
      },
    })),
  },
});
