/**
 * The windows that listen to this host. Each holds a stream of events open, which is also its sign of life: some
 * seconds after the last one has closed, the host has nobody to work for.
 */
import type { ServerResponse } from 'node:http';
import type { HostEvent } from '../../shared/bridge.ts';
import type { EventLine } from '../../shared/wire.ts';

export interface Windows {
  /** Takes over the response until its window closes. */
  join(response: ServerResponse): void;
  /** Tells the window that joined last; while there is none, the next one. */
  tell(event: HostEvent): void;
  close(): void;
}

export interface WindowsOptions {
  /** How long a page may take to load again; null: never alone. */
  readonly graceMs: number | null;
  readonly onAlone: () => void;
}

/** So that a window which went without a word is noticed. */
const BEAT_MS = 15_000;

export function createWindows({ graceMs, onAlone }: WindowsOptions): Windows {
  const streams = new Set<ServerResponse>();
  const waiting: HostEvent[] = [];
  let timer: NodeJS.Timeout | undefined;
  let closed = false;
  const beat = setInterval(() => {
    for (const stream of streams) send(stream, { alive: true });
  }, BEAT_MS);
  beat.unref();
  return {
    join(response) {
      if (closed) {
        response.end();
        return;
      }
      clearTimeout(timer);
      streams.add(response);
      response.on('close', () => {
        streams.delete(response);
        if (closed || streams.size > 0 || graceMs === null) return;
        clearTimeout(timer);
        timer = setTimeout(onAlone, graceMs);
      });
      send(response, { alive: true });
      for (const event of waiting.splice(0)) send(response, { event });
    },
    tell(event) {
      const last = [...streams].at(-1);
      if (last) send(last, { event });
      else waiting.push(event);
    },
    close() {
      closed = true;
      clearInterval(beat);
      clearTimeout(timer);
      for (const stream of streams) stream.end();
    },
  };
}

function send(stream: ServerResponse, line: EventLine): void {
  stream.write(`${JSON.stringify(line)}\n`);
}
