/**
 * Expected errors are values with one sentence for the person: what is wrong and what to do. Anything else throws.
 */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Problem };

export interface Problem {
  /** For code and tests, in kebab case: 'not-a-design', 'newer-version', 'changed-outside'. */
  readonly code: string;
  /** For the person: a whole sentence that says what to do. */
  readonly sentence: string;
}

export function good<T>(value: T): Result<T> {
  return { ok: true, value };
}

export function problem(code: string, sentence: string): { readonly ok: false; readonly problem: Problem } {
  return { ok: false, problem: { code, sentence } };
}
