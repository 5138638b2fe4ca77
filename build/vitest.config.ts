/** The tests of the craft, the services and the studio, by the folders they stand in. */
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** How long one test of a folder may take, in ms. Machines of our own are slow where several things run at once. */
const timeoutsMs = { unit: 20_000, reference: 20_000, property: 120_000, contract: 60_000, e2e: 120_000 };

/**
 * Left out of the fast run: what starts many programs, waits for clocks, or tries thousands of cases. Each of these
 * takes more than some seconds by itself, and together they take most of the time.
 */
const slowTests = [
  'tests/unit/{faces,symbols}.test.ts',
  'tests/unit/cli/**',
  'tests/unit/design/{limits,hostile-files}.test.ts',
  'tests/unit/renderer/planning/pattern-maker.test.ts',
  'tests/unit/services/{pattern-pdf,pattern-standards,pattern-read-aloud,printed-letters}.test.ts',
  'tests/unit/services/safekeeping/kills.test.ts',
  'tests/unit/workshop/{set-up,run-tests,electron-runtime}.test.ts',
  'tests/property/{damaged-files,damaged-patterns,design-edits,undo-redo}.test.ts',
  'tests/property/{pattern-pages,printed-charts,written-rows,layers,steps,cost,touching,swatches,knot-drawings}.test.ts',
  'tests/property/tying-{plan,planner,pins,tied-rows,repair}.test.ts',
  'tests/reference/{tying-pieces,tying-cover,text-widths}.test.ts',
  'tests/contract/{browser-host,designs,papers,parcel,kept}.test.ts',
];
const isFast = process.env.LARKROW_TESTS === 'fast';

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
        exclude: isFast ? slowTests : [],
        testTimeout: timeoutMs,
        hookTimeout: timeoutMs,
        // A file of tests of pure functions needs no program of its own: to load the sources again for each takes longer
        // than most of them do.
        isolate: name === 'e2e',
        setupFiles: ['build/workshop/as-if-alone.mjs'],
        // One browser at a time: several on two cores make one another slow.
        fileParallelism: name !== 'e2e',
      },
    })),
  },
});
