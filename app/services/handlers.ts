/** What a host answers with: a function for each verb of the bridge. */
import type { z } from 'zod';
import type { Answer, bridge, CancelSignal, Progress, Verb } from '../../shared/bridge.ts';
import type { Result } from '../../shared/result.ts';

/** What one call brings along. */
export interface Call {
  readonly signal: CancelSignal;
  readonly onProgress: (progress: Progress) => void;
}

/** The arguments after the bridge's schema has read them. */
export type Parsed<V extends Verb> = z.output<(typeof bridge)[V]['args']>;

type Awaitable<T> = T | Promise<T>;

export type Handlers = {
  readonly [V in Verb]: (args: Parsed<V>, call: Call) => Awaitable<Result<Answer<V>>>;
};
