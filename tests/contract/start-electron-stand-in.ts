/** The desktop's handlers, driven through the stand-in for Electron: see there what it is, and what it is not. */
import { channels } from '../../app/electron/channels.ts';
import { electronHandlers } from '../../app/electron/electron-handlers.ts';
import { exposeBridge } from '../../app/electron/expose-bridge.ts';
import { PAGE_ADDRESS } from '../../app/electron/page-address.ts';
import { nodeFiles } from '../../app/services/files/file-layer.ts';
import { openConfig } from '../../app/services/state/config-file.ts';
import { studioState } from '../../app/services/state/studio-state.ts';
import { startStudio } from '../../app/services/studio.ts';
import { studioHandlers } from '../../app/services/verbs/studio-handlers.ts';
import { desktopBridge } from '../../renderer/bridge/desktop-bridge.ts';
import type { DesktopDoor } from '../../renderer/bridge/desktop-door.ts';
import type { HostEvent } from '../../shared/bridge.ts';
import { electronStandIn, type Frame } from './electron-stand-in.ts';
import { surroundings, type TestHost, type TestHostOptions } from './test-host.ts';

const CONTENTS = 1;

export interface ElectronTestHost extends TestHost {
  /** The main process tells its page something. */
  tell(event: HostEvent): void;
  /** The door as a page in another frame would find it. */
  doorIn(frame: Frame | null): DesktopDoor;
  readonly described: { title: string; unsaved: boolean }[];
  readonly closed: () => boolean;
  readonly binned: string[];
}

export async function startElectronStandIn(options: TestHostOptions = {}): Promise<ElectronTestHost> {
  const { given, logged, home, makers, log, now } = surroundings(options);
  const described: { title: string; unsaved: boolean }[] = [];
  const binned: string[] = [];
  let closed = false;
  const chosen = async () => options.chosen ?? null;
  const studio = await startStudio({
    files: options.files ?? nodeFiles,
    home,
    state: studioState(openConfig(home.config)),
    host: {
      name: 'electron',
      nativeMenu: true,
      dialogs: { open: chosen, saveAs: chosen, folder: chosen },
      window: {
        describe: (title, unsaved) => void described.push({ title, unsaved }),
        close: () => {
          closed = true;
        },
      },
      moveToBin: async (path) => {
        await nodeFiles.rename(path, `${path}.binned`);
        binned.push(path);
      },
    },
    makers,
    version: '1.2.3',
    platform: 'linux',
    now,
    log,
    folders: [given],
  });
  const electron = electronStandIn();
  electronHandlers(electron.ipcMain, { handlers: studioHandlers(studio), log });
  const doorIn = (frame: Frame | null): DesktopDoor => {
    const page = electron.pageIn(frame, CONTENTS);
    exposeBridge(page);
    return page.world.larkrow!;
  };
  const door = doorIn({ url: PAGE_ADDRESS, parent: null });
  let rawCalls = 0;
  return {
    bridge: desktopBridge(door),
    home,
    given,
    logged,
    described,
    binned,
    doorIn,
    closed: () => closed,
    // Numbers of its own, beside those of the bridge.
    raw: (verb, args) => door.call(--rawCalls, verb, args),
    tell: (event) => electron.send(CONTENTS, channels.event, event),
  };
}
