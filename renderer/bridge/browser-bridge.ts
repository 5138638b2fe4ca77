/** The bridge to the browser host, over this page's own origin. */
import type { Args, Bridge, CallOptions, HostEvent, Verb } from '../../shared/bridge.ts';
import { problem } from '../../shared/result.ts';
import { packBytes, unpackBytes } from '../../shared/wire.ts';
import { fromBase64, toBase64 } from './base64.ts';
import { hostEvents } from './host-events.ts';
import { jsonLines } from './json-lines.ts';
import { readAnswer, readEvent, readProgress, stopped } from './read-answer.ts';

export interface BrowserBridgeOptions {
  readonly fetch: typeof globalThis.fetch;
  /** Where the host answers: '' for the page's own origin. */
  readonly origin: string;
}

const gone = problem(
  'host-gone',
  'Larkrow has ended behind this window. Your work is still here: start Larkrow again, and save it as a copy.',
);

export function browserBridge({ fetch, origin }: BrowserBridgeOptions): Bridge {
  const events = hostEvents();
  // Where the stream breaks off the host has ended, and every later call says so.
  hear(fetch, origin, events.tell).catch(() => {});
  return {
    call: async <V extends Verb>(verb: V, args: Args<V>, options: CallOptions = {}) => {
      if (options.signal?.aborted) return stopped;
      const stop = new AbortController();
      const abort = () => stop.abort();
      options.signal?.addEventListener('abort', abort);
      try {
        const response = await fetch(`${origin}/bridge/${verb}`, {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify(packBytes(args, toBase64)),
          signal: stop.signal,
        });
        if (!response.ok) return problem('refused', (await response.text()).trim());
        for await (const line of jsonLines(response)) {
          const { progress, result } = line as { progress?: unknown; result?: unknown };
          if (progress !== undefined) options.onProgress?.(readProgress(progress));
          else return readAnswer(verb, unpackBytes(result, fromBase64));
        }
        return gone;
      } catch (error) {
        if (stop.signal.aborted) return stopped;
        // This is what the platform rejects with where nobody answers.
        if (error instanceof TypeError) return gone;
        throw error;
      } finally {
        options.signal?.removeEventListener('abort', abort);
      }
    },
    listen: events.listen,
  };
}

/** Holds the stream of events open: it is this window's sign of life, too. Returns when the host has ended. */
async function hear(
  fetch: typeof globalThis.fetch,
  origin: string,
  tell: (event: HostEvent) => void,
): Promise<void> {
  const response = await fetch(`${origin}/bridge/events`);
  if (!response.ok) return;
  for await (const line of jsonLines(response)) {
    const { event } = line as { event?: unknown };
    if (event !== undefined) tell(readEvent(event));
  }
}
