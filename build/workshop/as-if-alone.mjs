/**
 * Runs before each file of tests. Many files run in one program, one after another, so what one of them has set for all
 * its random cases must not reach the next.
 */
import fc from 'fast-check';

fc.resetConfigureGlobal();
