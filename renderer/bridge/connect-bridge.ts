/** The host of this page: the desktop where its preload script has been, else the browser host that served it. */
import type { Args, Bridge, CallOptions, Verb } from '../../shared/bridge.ts';
import { browserBridge } from './browser-bridge.ts';
import { desktopBridge } from './desktop-bridge.ts';

export function connectBridge(): Bridge {
  if (window.larkrow) return desktopBridge(window.larkrow);
  const bridge = browserBridge({ fetch: (input, init) => window.fetch(input, init), origin: '' });
  return withOwnWindow(bridge);
}

/** A browser's window is closed by its page, and its page asks before unsaved work is left. */
function withOwnWindow(bridge: Bridge): Bridge {
  let unsaved = false;
  window.addEventListener('beforeunload', (event) => {
    if (unsaved) event.preventDefault();
  });
  return {
    listen: bridge.listen,
    async call<V extends Verb>(verb: V, args: Args<V>, options?: CallOptions) {
      if (verb === 'window.describe') unsaved = (args as Args<'window.describe'>).unsaved;
      if (verb === 'window.close') unsaved = false;
      const result = await bridge.call(verb, args, options);
      if (verb === 'window.close') window.close();
      return result;
    },
  };
}
