import { mkdirSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { bodyLimit } from '../../app/browser-host/read-body.ts';
import { readPageFiles } from '../../app/services/page/page-files.ts';
import type { HostEvent } from '../../shared/bridge.ts';
import { limits } from '../../shared/design/limits.ts';
import { temporaryFolder } from '../temporary-folder.ts';
import { type BrowserTestHost, enter, startBrowserTestHost } from './start-browser-test-host.ts';
import { value } from './test-host.ts';

interface Sent {
  readonly method?: string;
  readonly path?: string;
  readonly headers?: Record<string, string>;
  readonly body?: string;
}

interface Got {
  readonly status: number;
  readonly headers: Record<string, string | string[] | undefined>;
  readonly text: string;
}

/** A request with exactly these headers: no browser in between that would forbid some. */
function send(
  { host }: BrowserTestHost,
  { method = 'GET', path = '/', headers = {}, body }: Sent,
): Promise<Got> {
  const { hostname, port } = new URL(host.origin);
  return new Promise((resolve, reject) => {
    const sent = request({ hostname, port, path, method, headers }, (response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (part: string) => {
        text += part;
      });
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, text }),
      );
    });
    sent.on('error', reject);
    sent.end(body);
  });
}

/** The headers of a call as the page’s browser sends them. */
function own({ host, cookie }: BrowserTestHost): Record<string, string> {
  return {
    host: new URL(host.origin).host,
    origin: host.origin,
    cookie,
    'sec-fetch-site': 'same-origin',
    'content-type': 'application/json',
  };
}

const call = { method: 'POST', path: '/bridge/host.about', body: '{}' };

describe('the browser host', () => {
  it('answers its own page', async () => {
    const host = await startBrowserTestHost();
    const { status, text } = await send(host, { ...call, headers: own(host) });
    expect(status).toBe(200);
    expect(JSON.parse(text)).toMatchObject({ result: { ok: true, value: { host: 'browser' } } });
  });

  it('can only be reached from this machine', async () => {
    const { host } = await startBrowserTestHost();
    expect(new URL(host.origin).hostname).toBe('127.0.0.1');
    const port = Number(new URL(host.origin).port);
    // The whole of 127/8 is this machine; a server on all addresses would answer here.
    const answered = await new Promise((resolve) => {
      const socket = connect(port, '127.0.0.2');
      socket.on('connect', () => resolve(true)).on('error', () => resolve(false));
      socket.on('connect', () => socket.destroy());
    });
    expect(answered).toBe(false);
  });

  it.each<[string, Record<string, string | undefined>]>([
    ['without its cookie', { cookie: undefined }],
    ['with a made-up cookie', { cookie: 'larkrow=x' }],
    ['for another name of this machine', { host: 'localhost' }],
    ['for a name that another site gave this machine', { host: 'evil.example' }],
    ['from another site', { origin: 'https://evil.example' }],
    ['from another port of this machine', { origin: 'http://127.0.0.1:1' }],
    ['from a page without an origin', { origin: 'null' }],
    ['from nobody knows where', { origin: undefined }],
    ['that a browser says comes from another site', { 'sec-fetch-site': 'cross-site' }],
    ['that a browser says comes from another port', { 'sec-fetch-site': 'same-site' }],
    ['that a person typed as an address', { 'sec-fetch-site': 'none' }],
  ])('refuses a call %s', async (_what, changes) => {
    const host = await startBrowserTestHost();
    const headers = Object.fromEntries(
      Object.entries({ ...own(host), ...changes }).filter(
        (entry): entry is [string, string] => entry[1] !== undefined,
      ),
    );
    const got = await send(host, { ...call, headers });
    expect(got.status).toBe(403);
    expect(got.text).not.toContain('browser');
    expect(got.headers['access-control-allow-origin']).toBeUndefined();
  });

  it('refuses a cookie that is wrong by one letter', async () => {
    const host = await startBrowserTestHost();
    const last = host.cookie.at(-1) === 'A' ? 'B' : 'A';
    const headers = { ...own(host), cookie: host.cookie.slice(0, -1) + last };
    expect((await send(host, { ...call, headers })).status).toBe(403);
  });

  it('gives its cookie once, for the word of the start address', async () => {
    const host = await startBrowserTestHost();
    expect(host.cookie).toMatch(/^larkrow-\d+=[\w-]{32}$/);
    expect(await enter(host.host)).toBe('');
    const { host: name } = new URL(host.host.origin);
    for (const path of ['/start', '/start?word=', '/start?word=x']) {
      const { status, headers } = await send(host, { path, headers: { host: name } });
      expect([status, headers['set-cookie']]).toEqual([403, undefined]);
    }
  });

  it('keeps its cookie from scripts and other sites', async () => {
    const [host, other] = [await startBrowserTestHost(), await startBrowserTestHost()];
    expect(host.setCookie).toMatch(/^[^;]+; HttpOnly; SameSite=Strict; Path=\/$/);
    expect(other.cookie).not.toBe(host.cookie);
  });

  it('does not let another site take the start address’s word', async () => {
    const host = await startBrowserTestHost();
    const { host: name } = new URL(host.host.origin);
    const headers = { host: name, 'sec-fetch-site': 'cross-site' };
    expect((await send(host, { path: '/start?word=x', headers })).status).toBe(403);
  });

  it.each(['GET', 'PUT', 'DELETE', 'OPTIONS', 'PATCH', 'HEAD'])('takes no call by %s', async (method) => {
    const host = await startBrowserTestHost();
    const { status } = await send(host, { ...call, method, headers: own(host) });
    expect([404, 405]).toContain(status);
  });

  it.each(['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data', 'application/jsonx'])(
    'takes no body of the kind %s, as forms of other sites send them',
    async (type) => {
      const host = await startBrowserTestHost();
      const headers = { ...own(host), 'content-type': type };
      expect((await send(host, { ...call, headers })).status).toBe(415);
    },
  );

  it.each(['', '{', 'nonsense', '{"$bytes": "%%%"}', `${'['.repeat(200_000)}${']'.repeat(200_000)}`])(
    'is not upset by a body that is no JSON (%#)',
    async (body) => {
      const host = await startBrowserTestHost();
      const { status, text } = await send(host, { ...call, body, headers: own(host) });
      if (status === 200)
        expect(JSON.parse(text)).toMatchObject({ result: { problem: { code: 'bad-arguments' } } });
      else expect(status).toBe(400);
      expect(host.logged).toEqual([]);
      expect(await value(host, 'host.about', {})).toMatchObject({ host: 'browser' });
    },
  );

  it('takes no more than a call can need, whether or not its length is said', async () => {
    const host = await startBrowserTestHost();
    const limit = bodyLimit('host.about');
    const fits = await send(host, { ...call, headers: own(host), body: `{}${' '.repeat(limit - 2)}` });
    expect(fits.status).toBe(200);
    const body = `{}${' '.repeat(limit - 1)}`;
    const said = { ...own(host), 'content-length': `${limit + 1}` };
    const unsaid = { ...own(host), 'transfer-encoding': 'chunked' };
    for (const headers of [said, unsaid]) {
      const refused = await send(host, { ...call, headers, body }).catch(() => ({ status: 413 }));
      expect(refused.status).toBe(413);
    }
    expect(bodyLimit('design.save')).toBeGreaterThan(limits.fileBytes);
  });

  it('serves the files of the page and nothing else, whatever the address', async () => {
    const host = await startBrowserTestHost();
    const headers = { host: new URL(host.host.origin).host, cookie: host.cookie };
    const script = await send(host, { path: '/assets/main.js', headers });
    expect(script).toMatchObject({ status: 200, text: 'export {};' });
    expect(script.headers['content-type']).toMatch(/^text\/javascript/);
    for (const path of [
      '/package.json',
      '/../package.json',
      '/assets/../../package.json',
      '/%2e%2e/package.json',
      '/..%2fpackage.json',
      '/assets/main.js%00.html',
      '/assets//main.js',
      '/ASSETS/main.js',
      '/assets/main.js/',
      '//evil.example/x',
      '/bridge/events/',
      '/file:///etc/passwd',
      '/constructor',
      '/__proto__',
    ]) {
      expect((await send(host, { path, headers })).status, path).not.toBe(200);
    }
  });

  it('shows its page only to the browser that has its cookie', async () => {
    const host = await startBrowserTestHost();
    const name = new URL(host.host.origin).host;
    for (const path of ['/', '/index.html', '/assets/main.js', '/bridge/events']) {
      expect((await send(host, { path, headers: { host: name } })).status, path).toBe(403);
    }
  });

  it('tells the browser, with every answer, what the page may do', async () => {
    const host = await startBrowserTestHost();
    const headers = { host: new URL(host.host.origin).host, cookie: host.cookie };
    for (const path of ['/', '/assets/main.js', '/none', '/start?word=x']) {
      const got = await send(host, { path, headers });
      expect(got.headers['content-security-policy'], path).toBe(
        "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self' blob:; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; connect-src 'self'",
      );
      expect(got.headers).toMatchObject({
        'x-content-type-options': 'nosniff',
        'referrer-policy': 'no-referrer',
        'cache-control': 'no-store',
        'x-frame-options': 'DENY',
      });
    }
  });

  it('survives what is no HTTP at all', async () => {
    const host = await startBrowserTestHost();
    const port = Number(new URL(host.host.origin).port);
    await new Promise<void>((resolve) => {
      const socket = connect(port, '127.0.0.1', () => socket.end('\u0000\u0001 nonsense\r\n\r\n'));
      socket.on('close', () => resolve()).on('error', () => {});
      socket.resume();
    });
    expect(await value(host, 'host.about', {})).toMatchObject({ host: 'browser' });
  });

  it('has no dialogs of the system', async () => {
    const host = await startBrowserTestHost();
    const calls = [
      host.bridge.call('dialog.open', { kind: 'design' }),
      host.bridge.call('dialog.saveAs', { kind: 'design', suggestedName: 'x' }),
      host.bridge.call('dialog.folder', {}),
    ];
    for (const result of await Promise.all(calls))
      expect(result).toMatchObject({ problem: { code: 'no-dialogs' } });
  });
});

describe('the life of the browser host', () => {
  /** Whether it still runs after more than its grace. */
  async function goesOn(host: BrowserTestHost): Promise<boolean> {
    return Promise.race([host.host.ended.then(() => false), setTimeout(1_500, true)]);
  }

  /** A window’s stream of events; the bridge of the tests holds one as well, which is closed first. */
  async function openWindow(host: BrowserTestHost): Promise<() => void> {
    const stop = new AbortController();
    const response = await host.pageFetch(`${host.host.origin}/bridge/events`, { signal: stop.signal });
    expect(response.headers.get('content-type')).toBe('application/x-ndjson');
    response.text().catch(() => {});
    return () => stop.abort();
  }

  it('goes on while a window is open, also over a reload, and ends after the last one', async () => {
    const host = await startBrowserTestHost({ graceMs: 1_000, listens: false });
    const close = await openWindow(host);
    expect(await goesOn(host)).toBe(true);
    close();
    await setTimeout(50);
    const closeAgain = await openWindow(host);
    expect(await goesOn(host)).toBe(true);
    closeAgain();
    await host.host.ended;
  });

  it('goes on until the first window comes', async () => {
    expect(await goesOn(await startBrowserTestHost({ graceMs: 10, listens: false }))).toBe(true);
  });

  it('finishes what it was asked before it ends', async () => {
    let release: (() => void) | undefined;
    const host = await startBrowserTestHost({
      makers: {
        lookAtPicture: () =>
          new Promise((resolve) => {
            release = () =>
              resolve({ ok: false, problem: { code: 'answered', sentence: 'It was answered.' } });
          }),
      },
    });
    const { handle } = await value(host, 'picture.take', { name: 'a', bytes: new Uint8Array(1) });
    const call = host.bridge.call('picture.look', { picture: handle });
    await expect.poll(() => release).toBeDefined();
    const closed = host.host.close();
    release?.();
    expect(await call).toMatchObject({ problem: { code: 'answered' } });
    await closed;
    expect(await host.bridge.call('host.about', {})).toMatchObject({
      ok: false,
      problem: { code: 'host-gone' },
    });
  });

  it('opens the designs that it was started with in its first window', async () => {
    const path = join(temporaryFolder(), 'Fox.larkrow');
    writeFileSync(path, '{}');
    const host = await startBrowserTestHost({ open: [path] });
    const events: HostEvent[] = [];
    host.bridge.listen((event) => events.push(event));
    await expect.poll(() => events).toEqual([{ kind: 'open', design: expect.any(String) }]);
    const [event] = events;
    const design = event?.kind === 'open' ? event.design : '';
    // It was pointed at, so it need not lie in a granted folder; that it is no design is found when it is opened.
    expect(await host.bridge.call('design.open', { design })).toMatchObject({
      problem: { code: 'not-a-design' },
    });
  });
});

describe('the list of the page’s files', () => {
  it('holds what a browser can use, under its address', () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'assets'));
    for (const name of ['index.html', 'assets/a.js', 'assets/a.js.map', 'assets/b.css', 'assets/c.ttf']) {
      writeFileSync(join(folder, name), name);
    }
    const files = readPageFiles(folder);
    expect([...files.keys()].sort()).toEqual([
      '/',
      '/assets/a.js',
      '/assets/b.css',
      '/assets/c.ttf',
      '/index.html',
    ]);
    expect(files.get('/')).toBe(files.get('/index.html'));
  });

  it('says that the page was not built', () => {
    expect(() => readPageFiles(temporaryFolder())).toThrow('build the page first');
  });
});
