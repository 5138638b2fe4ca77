/**
 * A stand-in for Electron's two ends of IPC. THIS IS NOT ELECTRON: no process, no sandbox, no frame of a browser is
 * behind it. It shows that our two ends fit each other and check what they are sent; it can't show that Electron
 * itself does as its documentation says. Every value that crosses is copied by `structuredClone`, as Electron does it,
 * so what can't be copied fails here as there. Its types are held to Electron's own by the main process and the
 * preload script, which pass the real ones to the same functions.
 */
import type { IpcEvent, IpcMainPart } from '../../app/electron/electron-handlers.ts';
import type { PreloadPart } from '../../app/electron/expose-bridge.ts';
import type { DesktopDoor } from '../../renderer/bridge/desktop-door.ts';

type Listener = (event: never, ...args: unknown[]) => unknown;

export interface Frame {
  readonly url: string;
  readonly parent: Frame | null;
}

export interface ElectronStandIn {
  readonly ipcMain: IpcMainPart;
  /** The page's process, whose messages come from `frame`. */
  pageIn(
    frame: Frame | null,
    contentsId?: number,
  ): PreloadPart & { readonly world: { larkrow?: DesktopDoor } };
  /** What the main process sends to the page of this number. */
  send(contentsId: number, channel: string, ...args: unknown[]): void;
}

export function electronStandIn(): ElectronStandIn {
  const handlers = new Map<string, (event: IpcEvent, ...args: unknown[]) => Promise<unknown>>();
  const mainListeners = new Map<string, ((event: IpcEvent, ...args: unknown[]) => void)[]>();
  const pageListeners = new Map<string, Listener[]>();
  const send = (contentsId: number, channel: string, ...args: unknown[]) => {
    const copies = structuredClone(args);
    queueMicrotask(() => {
      for (const listener of pageListeners.get(`${contentsId} ${channel}`) ?? []) {
        listener({} as never, ...copies);
      }
    });
  };
  return {
    ipcMain: {
      handle: (channel, listener) => void handlers.set(channel, listener),
      on: (channel, listener) => {
        mainListeners.set(channel, [...(mainListeners.get(channel) ?? []), listener]);
      },
    },
    pageIn(frame, contentsId = 1) {
      const event: IpcEvent = {
        senderFrame: frame,
        sender: {
          id: contentsId,
          isDestroyed: () => false,
          send: (channel, ...args) => send(contentsId, channel, ...args),
        },
      };
      const world: { larkrow?: DesktopDoor } = {};
      return {
        world,
        contextBridge: {
          exposeInMainWorld: (name, api) => {
            Object.assign(world, { [name]: api });
          },
        },
        ipcRenderer: {
          async invoke(channel, ...args) {
            const handler = handlers.get(channel);
            if (!handler) throw new Error(`nobody handles ${channel}`);
            return structuredClone(await handler(event, ...structuredClone(args)));
          },
          send(channel, ...args) {
            const copies = structuredClone(args);
            queueMicrotask(() => {
              for (const listener of mainListeners.get(channel) ?? []) listener(event, ...copies);
            });
          },
          on(channel, listener) {
            const key = `${contentsId} ${channel}`;
            pageListeners.set(key, [...(pageListeners.get(key) ?? []), listener as Listener]);
          },
        },
      };
    },
    send,
  };
}
