/**
 * Runs before each file of tests. Many files run in one program, one after another, so what one of them has set for all
 * its random cases must not reach the next. Cases are the same in every run, so that a run tells of what was changed and
 * of nothing else; LARKROW_SEED asks for others, of the files that set no seed of their own.
 */
import fc from 'fast-check';

fc.resetConfigureGlobal();
fc.configureGlobal({ seed: Number(process.env.LARKROW_SEED ?? 1) });
