/** What the host tells unasked, passed on to whoever listens; what comes before anybody does is kept for the first. */
import type { Bridge, HostEvent } from '../../shared/bridge.ts';

export interface HostEvents {
  tell(event: HostEvent): void;
  readonly listen: Bridge['listen'];
}

export function hostEvents(): HostEvents {
  const listeners = new Set<(event: HostEvent) => void>();
  let early: HostEvent[] = [];
  return {
    tell(event) {
      if (listeners.size === 0) early.push(event);
      for (const listener of listeners) listener(event);
    },
    listen(listener) {
      listeners.add(listener);
      for (const event of early) listener(event);
      early = [];
      return () => listeners.delete(listener);
    },
  };
}
