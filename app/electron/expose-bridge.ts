/** What the preload script puts into the page: verbs to call, calls to cancel, and two things to listen to. */
import { channels } from './channels.ts';

/** What is used of Electron in the page's process, so that tests can drive this without it. */
export interface PreloadPart {
  readonly contextBridge: { exposeInMainWorld(name: string, api: object): void };
  readonly ipcRenderer: {
    invoke(channel: string, ...args: unknown[]): Promise<unknown>;
    send(channel: string, ...args: unknown[]): void;
    on(channel: string, listener: (event: unknown, ...args: unknown[]) => void): unknown;
  };
}

export function exposeBridge({ contextBridge, ipcRenderer }: PreloadPart): void {
  contextBridge.exposeInMainWorld('larkrow', {
    call: (callId: number, verb: string, args: unknown) =>
      ipcRenderer.invoke(channels.call, callId, verb, args),
    cancel: (callId: number) => ipcRenderer.send(channels.cancel, callId),
    // Electron's own event, which could send anything anywhere, never reaches the page.
    onProgress: (listener: (callId: unknown, progress: unknown) => void) => {
      ipcRenderer.on(channels.progress, (_event, callId, progress) => listener(callId, progress));
    },
    onEvent: (listener: (event: unknown) => void) => {
      ipcRenderer.on(channels.event, (_event, event) => listener(event));
    },
  });
}
