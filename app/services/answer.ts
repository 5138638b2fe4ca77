/**
 * The one way in for every call of a page, in both hosts: the verb must exist, what it sends must be what the contract
 * says, and so must the answer. Expected errors come back as they are; an unexpected one is logged and comes back as
 * a sentence, never as a stack of ours.
 */
import { type Answer, bridge, type Verb } from '../../shared/bridge.ts';
import { good, type Problem, problem, type Result } from '../../shared/result.ts';
import type { Call, Handlers, Parsed } from './handlers.ts';

export type Log = (line: string) => void;

export interface AnswerOptions {
  readonly handlers: Handlers;
  readonly log: Log;
}

/** Problems of its own: `unknown-verb`, `bad-arguments`, `cancelled`, `unexpected`. */
export async function answer(
  { handlers, log }: AnswerOptions,
  verb: unknown,
  args: unknown,
  call: Call,
): Promise<Result<unknown>> {
  if (!isVerb(verb)) return problem('unknown-verb', 'Larkrow does not know this request. Start it again.');
  if (call.signal.aborted) return cancelled;
  try {
    return await answerVerb(handlers, verb, args, call);
  } catch (error) {
    log(`${verb}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
    return unexpected;
  }
}

export const cancelled = problem('cancelled', 'This was stopped.');

const unexpected = problem(
  'unexpected',
  'Something went wrong inside Larkrow, and it was written to its log. Try again; your work is still open.',
);

function isVerb(verb: unknown): verb is Verb {
  return typeof verb === 'string' && Object.hasOwn(bridge, verb);
}

async function answerVerb<V extends Verb>(
  handlers: Handlers,
  verb: V,
  args: unknown,
  call: Call,
): Promise<Result<Answer<V>>> {
  const contract = bridge[verb];
  const parsed = contract.args.safeParse(args);
  if (!parsed.success) return badArguments(parsed.error.issues[0]?.path ?? []);
  const result = await handlers[verb](parsed.data as Parsed<V>, call);
  if (!result.ok) return plain(result.problem);
  return good(contract.result.parse(result.value) as Answer<V>);
}

function badArguments(path: readonly PropertyKey[]): { readonly ok: false; readonly problem: Problem } {
  const where = path.length > 0 ? ` (${path.map(String).join('.')})` : '';
  return problem(
    'bad-arguments',
    `Larkrow can’t take this request as it is${where}. Check what was entered.`,
  );
}

/** Only what the contract knows of a problem goes to the page. */
function plain({ code, sentence }: Problem): { readonly ok: false; readonly problem: Problem } {
  return problem(code, sentence);
}
