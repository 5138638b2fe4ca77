import { describe, expect, it } from 'vitest';
import { type Args, bridge, type Verb } from '../../shared/bridge.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import { bothHosts } from './both-hosts.ts';
import { givenFolder, givenPlace, refusal, type TestHost, value } from './test-host.ts';

const text = writeDesign(newDesign({ title: 'Fox', columns: 4, rows: 3 }));
const stamp = { size: 1, modifiedMs: 1, sha256: 'x' };
const chart = { columns: 4, pitchMm: 5, rowHeightMm: 5, yarns: { count: 2 } };

/** Each verb that takes a handle, with everything else as it should be. */
const takers: { [V in Verb]?: (handle: string) => Args<V> } = {
  'shelf.useFolder': (folder) => ({ folder }),
  'shelf.duplicate': (design) => ({ design }),
  'shelf.rename': (design) => ({ design, title: 'Fox' }),
  'shelf.bin': (design) => ({ design }),
  'design.open': (design) => ({ design }),
  'design.ofPattern': (pattern) => ({ pattern }),
  'design.save': (target) => ({ target, text, stamp }),
  'folders.list': (folder) => ({ folder, kind: 'design' }),
  'folders.place': (folder) => ({ folder, name: 'Fox', kind: 'design' }),
  'picture.look': (picture) => ({ picture }),
  'picture.chart': (picture) => ({ picture, ...chart }),
  'reference.take': (picture) => ({ picture }),
  'pattern.save': (target) => ({ text, paper: 'a4', units: 'metric', target }),
  'labels.save': (target) => ({ text, paper: 'a4', units: 'metric', fitted: true, target }),
  'papers.save': (target) => ({ text, paper: 'a4', units: 'metric', which: ['care-card'], target }),
  'png.save': (target) => ({ text, target }),
};
const verbs = Object.keys(bridge) as Verb[];
const takerEntries = Object.entries(takers) as [Verb, (handle: string) => object][];
const badArguments = { ok: false, problem: { code: 'bad-arguments' } };

/** A handle of a kind that the verb does not take. */
async function wrongHandle(host: TestHost, verb: Verb): Promise<string> {
  const takesFolder = verb.startsWith('folders.') || verb === 'shelf.useFolder';
  return (takesFolder ? await givenPlace(host, 'design', 'Fox') : await givenFolder(host)).handle;
}

describe.each(bothHosts)('$name', ({ start }) => {
  it('says what it is', async () => {
    const about = await value(await start(), 'host.about', {});
    expect(about).toMatchObject({ version: '1.2.3', platform: 'linux' });
    expect(about.nativeDialogs).toBe(about.host === 'electron');
  });

  it('does not know verbs that the contract does not name', async () => {
    const host = await start();
    for (const verb of ['no.such', '', '__proto__', 'constructor', 'toString', 'hasOwnProperty']) {
      expect(await host.raw(verb, {}), verb).toMatchObject({ ok: false, problem: { code: 'unknown-verb' } });
    }
  });

  it('refuses arguments that are none, for every verb', async () => {
    const host = await start();
    for (const verb of verbs) {
      for (const args of [null, 7, 'x', [], [{}]]) {
        expect(await host.raw(verb, args), verb).toMatchObject({ problem: { code: 'bad-arguments' } });
      }
    }
    expect(host.logged).toEqual([]);
  });

  it('refuses keys that a verb does not know, and calls without those that it needs', async () => {
    const host = await start();
    for (const [verb, argsFor] of takerEntries) {
      const args = argsFor('x');
      const poisoned = JSON.parse(JSON.stringify(args).replace('{', '{"__proto__":{"ok":true},'));
      expect(await host.raw(verb, { ...args, path: '/etc/passwd' }), verb).toMatchObject(badArguments);
      expect(await host.raw(verb, {}), verb).toMatchObject(badArguments);
      expect(await host.raw(verb, poisoned), verb).toMatchObject({ ok: false });
    }
  });

  it('gives nothing for a handle that it never gave out', async () => {
    const host = await start();
    for (const [verb, argsFor] of takerEntries) {
      for (const made of ['x', '../../etc/passwd', host.given, '__proto__']) {
        const answer = await host.raw(verb, argsFor(made));
        expect(answer, `${verb} of ${made}`).toMatchObject({ problem: { code: 'unknown-handle' } });
      }
    }
  });

  it('gives nothing for a handle of another kind', async () => {
    const host = await start();
    for (const [verb, argsFor] of takerEntries) {
      const answer = await host.raw(verb, argsFor(await wrongHandle(host, verb)));
      expect(answer, verb).toMatchObject({ problem: { code: 'wrong-kind' } });
    }
  });

  it('gives each session handles of its own', async () => {
    const [one, other] = [await start(), await start()];
    const { handle } = await givenPlace(one, 'design', 'Fox');
    expect(await refusal(other, 'design.open', { design: handle })).toBe('unknown-handle');
  });

  it('keeps settings, and refuses those that make no sense', async () => {
    const host = await start();
    expect(await value(host, 'settings.read', {})).toMatchObject({ units: 'metric', paper: 'a4' });
    expect(await value(host, 'settings.write', { paper: 'letter' })).toMatchObject({ paper: 'letter' });
    expect(await host.raw('settings.write', { paper: 'a5' })).toMatchObject({
      problem: { code: 'bad-arguments' },
    });
    expect(await value(host, 'settings.write', { currency: 'kr' })).toMatchObject({ currency: 'kr' });
    const again = await start({ home: host.home });
    const kept = await value(again, 'settings.read', {});
    expect(kept).toMatchObject({ units: 'metric', paper: 'letter', currency: 'kr' });
  });

  it('says a sentence, keeps its insides to itself and its log, and works on, where it goes wrong', async () => {
    const host = await start({
      makers: {
        makeChartPng: async () => {
          throw new TypeError('secret of the inside');
        },
      },
    });
    const { handle } = await givenPlace(host, 'png', 'Fox');
    const result = await host.bridge.call('png.save', { text, target: handle });
    expect(result).toMatchObject({ ok: false, problem: { code: 'unexpected' } });
    expect(JSON.stringify(result)).not.toContain('secret');
    expect(host.logged.join()).toContain('secret of the inside');
    expect(await value(host, 'settings.read', {})).toMatchObject({ paper: 'a4' });
  });

  it('refuses to answer what the contract does not say', async () => {
    const host = await start({
      makers: { lookAtPicture: async () => ({ ok: true, value: { widthPx: 'wide' } as never }) },
    });
    const { handle } = await value(host, 'picture.take', { name: 'a.png', bytes: new Uint8Array(3) });
    expect(await refusal(host, 'picture.look', { picture: handle })).toBe('unexpected');
    expect(host.logged).toHaveLength(1);
  });

  it('takes what its window holds, and lets it close', async () => {
    const host = await start();
    expect(await value(host, 'window.describe', { title: 'Fox', unsaved: true })).toEqual({});
    expect(await value(host, 'window.close', {})).toEqual({});
  });
});
