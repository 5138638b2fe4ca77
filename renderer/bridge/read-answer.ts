/** What comes from a host is read to its type once, here, for both hosts. */
import { z } from 'zod';
import {
  type Answer,
  bridge,
  type HostEvent,
  hostEventSchema,
  type Progress,
  type Verb,
} from '../../shared/bridge.ts';
import { good, type Problem, problem, type Result } from '../../shared/result.ts';

const resultSchema = z.discriminatedUnion('ok', [
  z.object({ ok: z.literal(true), value: z.unknown() }),
  z.object({ ok: z.literal(false), problem: z.object({ code: z.string(), sentence: z.string() }) }),
]);

const progressSchema = z.object({ done: z.number(), what: z.string() });

/** Throws where the host does not keep to the contract: that is a mistake of ours. */
export function readAnswer<V extends Verb>(verb: V, answer: unknown): Result<Answer<V>> {
  const result = resultSchema.parse(answer);
  if (!result.ok) return result;
  return good(bridge[verb].result.parse(result.value) as Answer<V>);
}

export function readProgress(progress: unknown): Progress {
  return progressSchema.parse(progress);
}

export function readEvent(event: unknown): HostEvent {
  return hostEventSchema.parse(event);
}

export const stopped: { readonly ok: false; readonly problem: Problem } = problem(
  'cancelled',
  'This was stopped.',
);
