/** The browser host, really over HTTP, with a page's headers as a browser sends them. */
import { onTestFinished } from 'vitest';
import { type BrowserHost, startBrowserHost } from '../../app/browser-host/start-browser-host.ts';
import type { PageFiles } from '../../app/services/page/page-files.ts';
import { browserBridge } from '../../renderer/bridge/browser-bridge.ts';
import { surroundings, type TestHost, type TestHostOptions } from './test-host.ts';

const html = { type: 'text/html; charset=utf-8', bytes: Buffer.from('<!doctype html><title>Page</title>') };

export const testPage: PageFiles = new Map([
  ['/', html],
  ['/index.html', html],
  ['/assets/main.js', { type: 'text/javascript; charset=utf-8', bytes: Buffer.from('export {};') }],
]);

export interface BrowserTestHostOptions extends TestHostOptions {
  readonly graceMs?: number | null;
  readonly open?: readonly string[];
  /** False: the bridge of the tests holds no stream of events open. */
  readonly listens?: boolean;
}

export interface BrowserTestHost extends TestHost {
  readonly host: BrowserHost;
  /** 'larkrow-40123=…' */
  readonly cookie: string;
  /** The header that set it. */
  readonly setCookie: string;
  /** As the page's own requests go out. */
  readonly pageFetch: typeof fetch;
}

/** Enters by the start address, as a browser does, and gives the header that sets the cookie; '' where there is none. */
export async function enter(host: BrowserHost): Promise<string> {
  const response = await fetch(host.url, { redirect: 'manual', headers: { 'sec-fetch-site': 'none' } });
  return response.headers.getSetCookie()[0] ?? '';
}

export async function startBrowserTestHost(options: BrowserTestHostOptions = {}): Promise<BrowserTestHost> {
  const { given, ...rest } = surroundings(options);
  const host = await startBrowserHost({
    ...rest,
    page: testPage,
    version: '1.2.3',
    folders: [given],
    graceMs: options.graceMs ?? null,
    ...(options.files && { files: options.files }),
    ...(options.open && { open: options.open }),
  });
  const setCookie = await enter(host);
  const cookie = setCookie.split(';')[0] ?? '';
  const pageFetch: typeof fetch = (input, init = {}) => {
    const headers = new Headers(init.headers);
    headers.set('cookie', cookie);
    headers.set('sec-fetch-site', 'same-origin');
    if (init.method === 'POST') headers.set('origin', host.origin);
    return fetch(input, { ...init, headers });
  };
  const deaf: typeof fetch = (input, init) =>
    String(input).endsWith('/events') ? Promise.reject(new TypeError('deaf')) : pageFetch(input, init);
  onTestFinished(() => host.close());
  return {
    host,
    cookie,
    setCookie,
    pageFetch,
    bridge: browserBridge({ fetch: options.listens === false ? deaf : pageFetch, origin: host.origin }),
    home: rest.home,
    given,
    logged: rest.logged,
    async raw(verb, args) {
      const response = await pageFetch(`${host.origin}/bridge/${encodeURIComponent(verb)}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(args) ?? '',
      });
      const lines = (await response.text()).trim().split('\n');
      return (JSON.parse(lines.at(-1) ?? '') as { result: unknown }).result;
    },
  };
}
