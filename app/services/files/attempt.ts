/** Does something with a file; where the file system refuses, the answer is a sentence. */
import { good, type Result } from '../../../shared/result.ts';
import { fileProblem } from './file-problem.ts';

/** `done` says what was not done, in the past tense, as in `fileProblem`. */
export async function attempt<T>(path: string, done: string, deed: () => Promise<T>): Promise<Result<T>> {
  try {
    return good(await deed());
  } catch (error) {
    return { ok: false, problem: fileProblem(error, path, done) };
  }
}
