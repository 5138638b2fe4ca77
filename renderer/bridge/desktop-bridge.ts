/** The bridge over the desktop's preload script. */
import type { Args, Bridge, CallOptions, Progress, Verb } from '../../shared/bridge.ts';
import type { DesktopDoor } from './desktop-door.ts';
import { hostEvents } from './host-events.ts';
import { readAnswer, readEvent, readProgress, stopped } from './read-answer.ts';

export function desktopBridge(door: DesktopDoor): Bridge {
  const events = hostEvents();
  const reporters = new Map<number, (progress: Progress) => void>();
  let lastId = 0;
  door.onEvent((event) => events.tell(readEvent(event)));
  door.onProgress((callId, progress) => reporters.get(callId)?.(readProgress(progress)));
  return {
    async call<V extends Verb>(verb: V, args: Args<V>, { signal, onProgress }: CallOptions = {}) {
      if (signal?.aborted) return stopped;
      const id = ++lastId;
      if (onProgress) reporters.set(id, onProgress);
      const cancel = () => door.cancel(id);
      signal?.addEventListener('abort', cancel);
      try {
        return readAnswer(verb, await door.call(id, verb, args));
      } finally {
        signal?.removeEventListener('abort', cancel);
        reporters.delete(id);
      }
    },
    listen: events.listen,
  };
}
