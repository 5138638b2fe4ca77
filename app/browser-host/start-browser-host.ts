/**
 * The studio over loopback, for machines without Electron's runtime: one HTTP server on 127.0.0.1 that serves the page
 * and answers the bridge. It ends some seconds after its last window.
 */
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Log } from '../services/answer.ts';
import { type FileLayer, nodeFiles } from '../services/files/file-layer.ts';
import { type Home, homeHere } from '../services/home/home.ts';
import { type Makers, ourMakers } from '../services/makers.ts';
import type { PageFiles } from '../services/page/page-files.ts';
import { openConfig } from '../services/state/config-file.ts';
import { studioState } from '../services/state/studio-state.ts';
import { startStudio } from '../services/studio.ts';
import { studioHandlers } from '../services/verbs/studio-handlers.ts';
import { createGate } from './gate.ts';
import { refuse, serveStudio } from './serve-studio.ts';
import { createWindows } from './windows.ts';

export interface BrowserHostOptions {
  readonly page: PageFiles;
  readonly version: string;
  readonly log: Log;
  /** 0 or absent: any that is free. */
  readonly port?: number;
  /** Folders that the person granted, beside the shelf's and their own Documents, Desktop, Downloads and Pictures. */
  readonly folders?: readonly string[];
  /** Designs to open in the first window. */
  readonly open?: readonly string[];
  /** How long the host lives after its last window; null: until it is closed. */
  readonly graceMs?: number | null;
  readonly home?: Home;
  readonly makers?: Makers;
  readonly files?: FileLayer;
  readonly now?: () => Date;
}

export interface BrowserHost {
  /** 'http://127.0.0.1:40123' */
  readonly origin: string;
  /** The address that opens the studio, once. */
  readonly url: string;
  /** When it has ended, by itself or by `close`. */
  readonly ended: Promise<void>;
  close(): Promise<void>;
}

const GRACE_MS = 5000;

export async function startBrowserHost(options: BrowserHostOptions): Promise<BrowserHost> {
  const { page, version, log, folders = [], open = [], graceMs = GRACE_MS, home = homeHere() } = options;
  const windows = createWindows({ graceMs, onAlone: () => void close() });
  const studio = await startStudio({
    files: options.files ?? nodeFiles,
    home,
    state: studioState(openConfig(home.config)),
    host: {
      name: 'browser',
      nativeMenu: false,
      dialogs: null,
      // The page closes its own window, and asks before it does; the host only hears the stream end.
      window: { describe: () => {}, close: () => {} },
    },
    makers: options.makers ?? ourMakers,
    version,
    platform: process.platform,
    now: options.now ?? (() => new Date()),
    log,
    folders: [...home.folders, ...folders],
  });
  for (const path of open) {
    const { handle } = studio.handles.give('design', path, { pointedAt: true });
    windows.tell({ kind: 'open', design: handle });
  }
  const answers = { handlers: studioHandlers(studio), log };
  const server = createServer();
  const port = await listen(server, options.port ?? 0);
  const gate = createGate(port);
  let answering = 0;
  let closing = false;
  server.on('request', (request: IncomingMessage, response: ServerResponse) => {
    answering++;
    response.on('close', () => {
      answering--;
      endIfDone();
    });
    serveStudio({ gate, page, windows, answers }, request, response).catch((error: unknown) => {
      log(`${request.method} ${request.url?.split('?')[0]}: ${String(error)}`);
      refuse(response, 500, 'Something went wrong inside Larkrow.');
    });
  });
  const ended = new Promise<void>((resolve) => server.on('close', resolve));
  /** Browsers hold connections open for requests that may come. */
  function endIfDone(): void {
    if (closing && answering === 0) server.closeAllConnections();
  }
  /** What is being answered is answered to its end: a save must not break off. */
  function close(): Promise<void> {
    closing = true;
    windows.close();
    server.close();
    endIfDone();
    return ended;
  }
  const origin = `http://127.0.0.1:${port}`;
  return { origin, url: `${origin}/start?word=${gate.startWord}`, ended, close };
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      server.off('error', reject);
      resolve((server.address() as AddressInfo).port);
    });
  });
}
