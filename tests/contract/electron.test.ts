/**
 * The desktop's own parts, as far as they can be tried without Electron: what they would tell it, and what they answer
 * when they are called as it calls them. None of this is Electron running.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { createClosing } from '../../app/electron/closing.ts';
import { filesInWords } from '../../app/electron/files-in-words.ts';
import { type ContentsPart, lockContents, lockSession } from '../../app/electron/lock-down.ts';
import { acceleratorOf, menuTemplate } from '../../app/electron/menu-template.ts';
import { isPageAddress, PAGE_ADDRESS } from '../../app/electron/page-address.ts';
import { servePage } from '../../app/electron/serve-page.ts';
import { windowOptions } from '../../app/electron/window-options.ts';
import type { HostEvent } from '../../shared/bridge.ts';
import { type Command, commands } from '../../shared/commands.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import { temporaryFolder } from '../temporary-folder.ts';
import { testPage } from './start-browser-test-host.ts';
import { startElectronStandIn } from './start-electron-stand-in.ts';
import { givenFolder, refusal, value } from './test-host.ts';

const text = writeDesign(newDesign({ title: 'Fox', columns: 4, rows: 3 }));
const ours = { url: PAGE_ADDRESS, parent: null };

describe('a message to the main process', () => {
  it.each([
    ['a page of the web', { url: 'https://evil.example/', parent: null }],
    ['a page whose address only begins like ours', { url: 'larkrow://studio.evil.example/', parent: null }],
    ['a file', { url: 'file:///home/larkrow://studio/index.html', parent: null }],
    ['an empty page', { url: 'about:blank', parent: null }],
    ['a frame within our page', { url: PAGE_ADDRESS, parent: ours }],
    ['a frame that is gone', null],
  ])('from %s is refused', async (_who, frame) => {
    const host = await startElectronStandIn();
    const door = host.doorIn(frame);
    expect(await door.call(1, 'host.about', {})).toMatchObject({ ok: false, problem: { code: 'refused' } });
    expect(host.logged.join()).toContain('was refused');
  });

  it('without a number of its own is refused', async () => {
    const door = (await startElectronStandIn()).doorIn(ours);
    for (const number of ['1', null, undefined, {}]) {
      expect(await door.call(number as never, 'host.about', {})).toMatchObject({
        problem: { code: 'bad-arguments' },
      });
    }
  });

  it('can’t cancel the call of another frame', async () => {
    let stopped = false;
    let release = () => {};
    const host = await startElectronStandIn({
      makers: {
        pictureToChart: (_source, _request, options) =>
          new Promise((resolve) => {
            options?.signal?.addEventListener('abort', () => {
              stopped = true;
            });
            release = () => resolve({ ok: false, problem: { code: 'done', sentence: 'It is done.' } });
          }),
      },
    });
    const { handle } = await value(host, 'picture.take', { name: 'a', bytes: new Uint8Array(1) });
    const request = { picture: handle, columns: 4, pitchMm: 5, rowHeightMm: 5, yarns: { count: 2 } };
    const call = host.doorIn(ours).call(77, 'picture.chart', request);
    host.doorIn({ url: 'https://evil.example/', parent: null }).cancel(77);
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(stopped).toBe(false);
    release();
    expect(await call).toMatchObject({ problem: { code: 'done' } });
  });
});

describe('the desktop’s window', () => {
  it('tells its page what was chosen in the menu, and what came before it listened', async () => {
    const host = await startElectronStandIn();
    const events: HostEvent[] = [{ kind: 'command', id: 'save' }, { kind: 'close-asked' }];
    host.tell(events[0]!);
    await new Promise((resolve) => setTimeout(resolve, 5));
    const heard: HostEvent[] = [];
    const unlisten = host.bridge.listen((event) => heard.push(event));
    host.tell(events[1]!);
    await expect.poll(() => heard).toEqual(events);
    unlisten();
  });

  it('describes itself to the host, and closes when its page says so', async () => {
    const host = await startElectronStandIn();
    await value(host, 'window.describe', { title: 'Fox', unsaved: true });
    expect(host.described).toEqual([{ title: 'Fox', unsaved: true }]);
    expect(host.closed()).toBe(false);
    await value(host, 'window.close', {});
    expect(host.closed()).toBe(true);
  });

  it('is asked about unsaved work, and about nothing else', () => {
    let asked = 0;
    const closing = createClosing(() => {
      asked++;
    });
    expect(closing.mayClose()).toBe(true);
    closing.describe(true);
    expect(closing.mayClose()).toBe(false);
    expect(closing.mayClose()).toBe(false);
    expect(asked).toBe(2);
    closing.pageAnswers(false);
    expect(closing.mayClose()).toBe(true);
    closing.pageAnswers(true);
    expect(closing.mayClose()).toBe(false);
    closing.allow();
    expect(closing.mayClose()).toBe(true);
  });

  it('has a page without Node, in a sandbox, in a world of its own', () => {
    expect(windowOptions('/preload.cjs').webPreferences).toEqual({
      preload: '/preload.cjs',
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    });
  });

  it('can’t go elsewhere, open windows, hold other pages, or ask for camera, place or files', () => {
    const prevented: string[] = [];
    let opened: unknown;
    const contents: ContentsPart = {
      on: (name, listener) => listener({ preventDefault: () => prevented.push(name) }),
      setWindowOpenHandler: (handler) => {
        opened = handler();
      },
    };
    lockContents(contents);
    expect(prevented.sort()).toEqual([
      'will-attach-webview',
      'will-frame-navigate',
      'will-navigate',
      'will-redirect',
    ]);
    expect(opened).toEqual({ action: 'deny' });
    const granted: boolean[] = [];
    lockSession({
      setPermissionRequestHandler: (handler) => handler(null, 'media', (answer) => granted.push(answer)),
      setPermissionCheckHandler: (handler) => granted.push(handler()),
      setDevicePermissionHandler: (handler) => granted.push(handler()),
    });
    expect(granted).toEqual([false, false, false]);
  });
});

describe('the desktop’s dialogs', () => {
  it('give a place anywhere, since the person pointed at it', async () => {
    const chosen = join(temporaryFolder(), 'Fox');
    const host = await startElectronStandIn({ chosen });
    const place = await value(host, 'dialog.saveAs', { kind: 'design', suggestedName: 'Fox' });
    expect(place?.name).toBe('Fox.larkrow');
    await value(host, 'design.save', { target: place?.handle ?? '', text, stamp: null });
    expect(readFileSync(`${chosen}.larkrow`, 'utf8')).toBe(text);
    // It may be opened again from the recent list, at the next start too.
    const again = await startElectronStandIn({ home: host.home });
    const { entries } = await value(again, 'recent.list', {});
    expect(await value(again, 'design.open', { design: entries[0]?.handle ?? '' })).toMatchObject({ text });
  });

  it('give files and folders, each of its kind', async () => {
    const chosen = join(temporaryFolder(), 'Fox.larkrow');
    writeFileSync(chosen, text);
    const host = await startElectronStandIn({ chosen });
    const place = await value(host, 'dialog.open', { kind: 'design' });
    expect(await value(host, 'design.open', { design: place?.handle ?? '' })).toMatchObject({ text });
    const folder = await value(host, 'dialog.folder', {});
    expect(await refusal(host, 'design.open', { design: folder?.handle ?? '' })).toBe('wrong-kind');
  });

  it('never replace a file that the person was not asked about', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'Fox.larkrow'), 'was not in the question, which was about “Fox”');
    const host = await startElectronStandIn({ chosen: join(folder, 'Fox') });
    expect(await refusal(host, 'dialog.saveAs', { kind: 'design', suggestedName: 'Fox' })).toBe('exists');
  });

  it('may be dismissed', async () => {
    const host = await startElectronStandIn({ chosen: null });
    expect(await value(host, 'dialog.open', { kind: 'picture' })).toBeNull();
    expect(await value(host, 'dialog.saveAs', { kind: 'png', suggestedName: 'x' })).toBeNull();
    expect(await value(host, 'dialog.folder', {})).toBeNull();
  });

  it('leave the bin to the system', async () => {
    const host = await startElectronStandIn();
    const { entries } = await value(host, 'shelf.list', {});
    await value(host, 'shelf.bin', { design: entries[0]?.design ?? '' });
    expect(host.binned).toEqual([join(host.home.shelf, entries[0]?.fileName ?? '')]);
    expect(readdirSync(host.home.shelf)).not.toContain(entries[0]?.fileName);
  });

  it('may choose the shelf’s folder anywhere', async () => {
    const chosen = join(temporaryFolder(), 'elsewhere');
    mkdirSync(chosen);
    writeFileSync(join(chosen, 'Fox.larkrow'), text);
    const host = await startElectronStandIn({ chosen });
    await value(host, 'shelf.useFolder', { folder: (await value(host, 'dialog.folder', {}))?.handle ?? '' });
    expect(await value(host, 'shelf.list', {})).toMatchObject({
      folder: { name: 'elsewhere' },
      entries: [{ title: 'Fox' }],
    });
    expect((await givenFolder(host)).name).toBe('given');
  });
});

describe('the page’s own scheme', () => {
  const serve = servePage(testPage);

  it('serves the page with its policy, which allows no network', async () => {
    const response = serve(new Request(PAGE_ADDRESS));
    expect(response.status).toBe(200);
    expect(await response.text()).toContain('<!doctype html>');
    expect(response.headers.get('content-type')).toMatch(/^text\/html/);
    expect(response.headers.get('content-security-policy')).toBe(
      "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self' blob:; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
    );
    expect(response.headers.get('x-content-type-options')).toBe('nosniff');
  });

  it.each([
    'larkrow://studio/package.json',
    'larkrow://studio/%2e%2e/package.json',
    'larkrow://studio/assets/..%2f..%2fpackage.json',
    'larkrow://other/index.html',
    'https://studio/index.html',
  ])('serves nothing at %s', (address) => {
    expect(serve(new Request(address)).status).toBe(404);
  });

  it('is told from what only looks like it', () => {
    expect(isPageAddress(PAGE_ADDRESS)).toBe(true);
    expect(isPageAddress('larkrow://studio')).toBe(false);
    expect(isPageAddress('larkrow://studio@evil.example/')).toBe(false);
  });
});

describe('the system’s menu', () => {
  const itemsOf = (platform: NodeJS.Platform) =>
    menuTemplate(platform, () => {}).flatMap(({ submenu }) => (Array.isArray(submenu) ? submenu : []));
  /** The system's own items, by the label of the command that each stands for. */
  const roles: Record<string, string> = {
    Cut: 'cut',
    Copy: 'copy',
    Paste: 'paste',
    'Choose all cells': 'selectAll',
  };

  it.each(['darwin', 'win32', 'linux'] as const)(
    'on %s holds every command of the table once',
    (platform) => {
      const items = itemsOf(platform);
      const [native, ours] = [true, false].map((isNative) =>
        commands.filter((each: Command) => (each.isNative ?? false) === isNative),
      );
      expect(items.flatMap(({ id }) => id ?? []).sort()).toEqual(ours!.map(({ id }) => id).sort());
      for (const { label } of native!)
        expect(items.filter(({ role }) => role === roles[label])).toHaveLength(1);
    },
  );

  it('runs the command that was chosen', () => {
    const chosen: string[] = [];
    const [file] = menuTemplate('linux', (id) => chosen.push(id));
    const item = Array.isArray(file?.submenu) ? file.submenu.find(({ id }) => id === 'save') : undefined;
    item?.click?.({} as never, undefined, {} as never);
    expect(chosen).toEqual(['save']);
    expect(item).toMatchObject({ label: 'Save', accelerator: 'CmdOrCtrl+S', registerAccelerator: false });
  });

  it('writes keys as Electron does', () => {
    expect(['Mod+Shift+S', 'Mod+,', 'Mod++', 'F1'].map(acceleratorOf)).toEqual([
      'CmdOrCtrl+Shift+S',
      'CmdOrCtrl+,',
      'CmdOrCtrl+Plus',
      'F1',
    ]);
  });

  it('follows each platform’s conventions', () => {
    expect(menuTemplate('darwin', () => {})[0]).toEqual({ role: 'appMenu' });
    const [file] = menuTemplate('win32', () => {});
    expect(Array.isArray(file?.submenu) && file.submenu.at(-1)).toEqual({ role: 'quit' });
  });
});

describe('a start with designs named', () => {
  it('finds them among the words', () => {
    const words = ['--no-sandbox', 'Fox.larkrow', '/a/Owl.LARKROW', 'notes.txt', '--x.larkrow'];
    expect(filesInWords(words, '/here')).toEqual(['/here/Fox.larkrow', '/a/Owl.LARKROW']);
  });
});

describe('the main process', () => {
  const source = readFileSync(fileURLToPath(new URL('../../app/electron/main.ts', import.meta.url)), 'utf8');

  it('locks every page down, asks for the sandbox, and runs once', () => {
    for (const call of [
      'app.enableSandbox()',
      'app.requestSingleInstanceLock()',
      "app.on('web-contents-created', (_event, contents) => lockContents(contents))",
      'lockSession(session.defaultSession)',
      'privileges: { standard: true, secure: true }',
    ]) {
      expect(source).toContain(call);
    }
  });
});
