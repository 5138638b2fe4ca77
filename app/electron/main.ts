/** The desktop studio: one program, one window, the page of `dist/renderer` in it. */
import { join } from 'node:path';
import { app, BrowserWindow, ipcMain, Menu, protocol, session, shell } from 'electron';
import ElectronStore from 'electron-store';
import type { HostEvent } from '../../shared/bridge.ts';
import { nodeFiles } from '../services/files/file-layer.ts';
import { homeHere } from '../services/home/home.ts';
import { logFile } from '../services/log-file.ts';
import { ourMakers } from '../services/makers.ts';
import { packageRoot, packageVersion } from '../services/package-root.ts';
import { readPageFiles } from '../services/page/page-files.ts';
import { CONFIG_NAME, setDamagedAside } from '../services/state/config-file.ts';
import type { KeyValueStore } from '../services/state/key-value-store.ts';
import { studioState } from '../services/state/studio-state.ts';
import { type Studio, startStudio } from '../services/studio.ts';
import { studioHandlers } from '../services/verbs/studio-handlers.ts';
import { channels } from './channels.ts';
import { createClosing } from './closing.ts';
import { electronHandlers } from './electron-handlers.ts';
import { filesInWords } from './files-in-words.ts';
import { lockContents, lockSession } from './lock-down.ts';
import { menuTemplate } from './menu-template.ts';
import { PAGE_ADDRESS, PAGE_SCHEME } from './page-address.ts';
import { servePage } from './serve-page.ts';
import { systemDialogs } from './system-dialogs.ts';
import { windowOptions } from './window-options.ts';

const now = () => new Date();
const home = homeHere();
const log = logFile(home.config, now);

/** Designs that the system asked for before there was a window to open them in. */
const wanted = filesInWords(process.argv.slice(app.isPackaged ? 1 : 2), process.cwd());
let open = (path: string): void => {
  wanted.push(path);
};

app.setName('Larkrow');
app.setPath('userData', home.config);
app.enableSandbox();
protocol.registerSchemesAsPrivileged([{ scheme: PAGE_SCHEME, privileges: { standard: true, secure: true } }]);
app.on('web-contents-created', (_event, contents) => lockContents(contents));
app.on('window-all-closed', () => app.quit());
app.on('open-file', (event, path) => {
  event.preventDefault();
  open(path);
});

if (app.requestSingleInstanceLock()) {
  app.whenReady().then(start).catch(fail);
} else {
  app.quit();
}

async function start(): Promise<void> {
  lockSession(session.defaultSession);
  const root = packageRoot();
  protocol.handle(PAGE_SCHEME, servePage(readPageFiles(join(root, 'dist', 'renderer'))));
  const window = new BrowserWindow(windowOptions(join(root, 'dist', 'app', 'electron', 'preload.cjs')));
  const tell = (event: HostEvent) => window.webContents.send(channels.event, event);
  const studio = await studioOf(window, tell);
  electronHandlers(ipcMain, { handlers: studioHandlers(studio), log });
  Menu.setApplicationMenu(
    Menu.buildFromTemplate(menuTemplate(process.platform, (id) => tell({ kind: 'command', id }))),
  );
  app.on('second-instance', (_event, words, folder) => {
    if (window.isMinimized()) window.restore();
    window.focus();
    for (const path of filesInWords(words.slice(1), folder)) open(path);
  });
  window.once('ready-to-show', () => {
    window.show();
    console.log('Larkrow is ready, in a window of its own.');
  });
  await window.loadURL(PAGE_ADDRESS);
  open = (path) => {
    const { handle } = studio.handles.give('design', path, { pointedAt: true });
    tell({ kind: 'open', design: handle });
  };
  for (const path of wanted.splice(0)) open(path);
}

async function studioOf(window: BrowserWindow, tell: (event: HostEvent) => void): Promise<Studio> {
  const closing = createClosing(() => tell({ kind: 'close-asked' }));
  window.on('close', (event) => {
    if (!closing.mayClose()) event.preventDefault();
  });
  window.on('unresponsive', () => closing.pageAnswers(false));
  window.on('responsive', () => closing.pageAnswers(true));
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    log(`The page ended: ${reason}`);
    closing.pageAnswers(false);
  });
  return startStudio({
    files: nodeFiles,
    home,
    state: studioState(openElectronStore(home.config)),
    host: {
      name: 'electron',
      nativeMenu: true,
      dialogs: systemDialogs(window),
      window: {
        describe(title, unsaved) {
          window.setTitle(title ? `${title} · Larkrow` : 'Larkrow');
          window.setDocumentEdited(unsaved);
          closing.describe(unsaved);
        },
        close() {
          closing.allow();
          window.close();
        },
      },
      moveToBin: (path) => shell.trashItem(path),
    },
    makers: ourMakers,
    version: packageVersion(),
    platform: process.platform,
    now,
    log,
    folders: home.folders,
  });
}

function openElectronStore(folder: string): KeyValueStore {
  setDamagedAside(folder);
  const store = new ElectronStore<Record<string, unknown>>({
    cwd: folder,
    name: CONFIG_NAME,
    accessPropertiesByDotNotation: false,
  });
  return { get: (key) => store.get(key), set: (key, value) => store.set(key, value) };
}

function fail(error: unknown): void {
  log(`Larkrow could not start: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
  app.exit(1);
}
