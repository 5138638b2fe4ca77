/** What each verb of the command line is made of. */
import type { ParseArgsConfig } from 'node:util';
import { good, type Problem, problem, type Result } from '../../shared/result.ts';

/** Where a verb reads from and writes to. */
export interface Terminal {
  /** A full path for one that the person gave, from where they stand. */
  path(given: string): string;
  /** Standard output. */
  print(text: string): void;
  /** Standard error. */
  remark(text: string): void;
}

/** The words of one call, read by `node:util`. */
export interface Words {
  readonly values: Readonly<Record<string, string | boolean | undefined>>;
  readonly positionals: readonly string[];
}

export interface CliVerb {
  /** What follows the verb: 'FILE.larkrow --json'. */
  readonly use: string;
  /** Lines of the verb's own help, below its use. */
  readonly details: readonly string[];
  /** What stands without an option's name, such as 'FILE.larkrow'; each is needed. */
  readonly needs: readonly string[];
  readonly options: NonNullable<ParseArgsConfig['options']>;
  run(words: Words, terminal: Terminal): Promise<Result<null>>;
}

export const done: Result<null> = good(null);

/** The call itself is wrong: exit code 2. */
export const USAGE = 'usage';

export function usage(sentence: string): { readonly ok: false; readonly problem: Problem } {
  return problem(USAGE, sentence);
}
