import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it, vi } from 'vitest';
import { run } from '../../../app/cli/run.ts';
import { readDesign } from '../../../shared/design/read-design.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { readPdf } from '../../e2e/read-pdf.ts';
import { designFromLetters } from '../../notation.ts';
import { temporaryFolder } from '../../temporary-folder.ts';

const reeds = designFromLetters(['aabb', 'abba', 'bbaa'], { title: 'Reeds', designer: 'Ada Fenn' });

/** A folder with one design in it, and an empty home. */
function atHome() {
  const folder = temporaryFolder();
  vi.stubEnv('LARKROW_HOME', join(folder, 'home'));
  writeFileSync(join(folder, 'reeds.larkrow'), writeDesign(reeds));
  return async (...words: string[]) => {
    let [out, err] = ['', ''];
    const code = await run(words, {
      path: (given) => resolve(folder, given),
      print: (text) => {
        out += text;
      },
      remark: (text) => {
        err += text;
      },
    });
    return { code, out, err, folder };
  };
}

describe('selling from the command line', () => {
  it('prints a copy as it is asked for', async () => {
    const larkrow = atHome();
    const { code, folder } = await larkrow(
      ...[
        'pattern',
        'reeds.larkrow',
        '--out',
        'out',
        '--language',
        'de',
        '--ink',
        'grey',
        '--cells',
        'large',
      ],
      ...['--left-handed', '--prepared-for', 'Wanda Reet'],
    );
    expect(code).toBe(0);
    const { pages } = await readPdf(readFileSync(join(folder, 'out', 'reeds A4.pdf')));
    const text = pages.join(' ');
    expect(text).toContain('angefertigt für Wanda Reet');
    expect(text).toContain('Reihe 1 geht von rechts nach links');
  });

  it('says what a copy can be asked for, where it can’t be made so', async () => {
    const larkrow = atHome();
    const asked = ['pattern', 'reeds.larkrow', '--out', 'out'];
    for (const [option, value, sentence] of [
      ['--language', 'fr', '--language takes en or de'],
      ['--ink', 'red', '--ink takes colour or symbols or grey'],
      ['--cells', '3', '--cells takes standard or large'],
    ] as const) {
      const { code, err } = await larkrow(...asked, option, value);
      expect(code).toBe(2);
      expect(err).toContain(sentence);
    }
    const { err } = await larkrow(...asked, '--left-handed', '--right-handed');
    expect(err).toContain('contradict');
  });

  it('makes no pattern and no parcel of nothing, and says what to do', async () => {
    const larkrow = atHome();
    const { folder } = await larkrow('check', 'reeds.larkrow');
    writeFileSync(join(folder, 'empty.larkrow'), writeDesign({ ...reeds, pattern: { parts: [] } }));
    for (const verb of ['pattern', 'parcel']) {
      const { code, err, out } = await larkrow(verb, 'empty.larkrow', '--out', 'none');
      expect([code, out]).toEqual([1, '']);
      expect(err).toContain('The pattern has no page');
      expect(existsSync(join(folder, 'none'))).toBe(false);
    }
  });

  it('prints figures in the units that are asked for, in both where none are', async () => {
    const larkrow = atHome();
    const { folder } = await larkrow('check', 'reeds.larkrow');
    // How thick the dowel is, which both tell.
    const ways = {
      metric: /dowel,? [\d.]+ mm thick/,
      us: /dowel,? [\d /]+ in thick/,
      both: /dowel,? [\d.]+ mm \([\d /]+ in\) thick/,
    };
    for (const [units, way] of Object.entries(ways)) {
      const asked = units === 'both' ? [] : ['--units', units];
      await larkrow('pattern', 'reeds.larkrow', '--out', units, ...asked);
      await larkrow('papers', 'reeds.larkrow', '--out', units, ...asked);
      for (const file of ['reeds A4.pdf', 'reeds papers A4.pdf']) {
        const { pages } = await readPdf(readFileSync(join(folder, units, file)));
        expect(pages.join(' ').replaceAll('\u00a0', ' '), `${units} ${file}`).toMatch(way);
      }
    }
    const wrong = await larkrow('parcel', 'reeds.larkrow', '--out', 'x', '--units', 'ells');
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain('--units takes metric or us or both, not “ells”.');
  });

  it('lists what would disappoint a buyer, as text and as JSON', async () => {
    const larkrow = atHome();
    expect((await larkrow('preflight', 'reeds.larkrow')).out).toContain('doubt: The gauge is an estimate');
    const grey = (await larkrow('preflight', 'reeds.larkrow', '--language', 'de', '--units', 'us')).out;
    expect(grey).toContain('doubt: The gauge is an estimate');
    const { findings } = JSON.parse((await larkrow('preflight', 'reeds.larkrow', '--json')).out);
    expect(findings[0]).toMatchObject({ kind: 'gauge-not-measured', weight: 'doubt' });
  });

  it('publishes editions into the file, and lists them with what changed since', async () => {
    const larkrow = atHome();
    expect((await larkrow('editions', 'reeds.larkrow')).out).toContain('No edition was published yet.');
    const { code, folder } = await larkrow('editions', 'reeds.larkrow', '--publish', 'The first.');
    expect(code).toBe(0);
    const path = join(folder, 'reeds.larkrow');
    const read = readDesign(readFileSync(path, 'utf8'));
    if (!read.ok) throw new Error(read.problem.sentence);
    expect(read.value.editions).toMatchObject([{ number: 1, note: 'The first.' }]);
    expect((await larkrow('editions', 'reeds.larkrow')).out).toContain('Nothing has changed.');
    writeFileSync(path, writeDesign({ ...read.value, title: 'Rushes' }));
    const { changes } = JSON.parse((await larkrow('editions', 'reeds.larkrow', '--json')).out);
    expect(changes).toEqual([{ kind: 'title', from: 'Reeds', to: 'Rushes' }]);
  });

  it('prints an edition again as it was, and says which ones there are not', async () => {
    const larkrow = atHome();
    const { folder } = await larkrow('editions', 'reeds.larkrow', '--publish', 'The first.');
    const print = async (out: string, ...words: string[]) => {
      const { err } = await larkrow('pattern', 'reeds.larkrow', '--out', out, ...words);
      expect(err).toBe('');
      return (await readPdf(readFileSync(join(folder, out, 'reeds A4.pdf')))).pages;
    };
    const first = await print('first');
    const path = join(folder, 'reeds.larkrow');
    const read = readDesign(readFileSync(path, 'utf8'));
    if (!read.ok) throw new Error(read.problem.sentence);
    const texts = { welcome: 'All new words.' };
    writeFileSync(path, writeDesign({ ...read.value, title: 'Rushes', pattern: { texts } }));
    const now = (await print('now')).join(' ');
    expect(now).toContain('All new words.');
    expect(now).not.toContain('Edition 1');
    expect(await print('again', '--edition', '1')).toEqual(first);
    const none = await larkrow('pattern', 'reeds.larkrow', '--out', 'none', '--edition', '2');
    expect([none.code, none.err]).toEqual([1, 'There is no edition 2 of this pattern.\n']);
    expect((await larkrow('pattern', 'reeds.larkrow', '--out', 'none', '--edition', 'two')).code).toBe(2);
    expect((await larkrow('parcel', 'reeds.larkrow', '--out', 'none', '--edition', '2')).code).toBe(1);
  });

  it('makes everything for selling, as a folder in one language', async () => {
    const larkrow = atHome();
    const made = await larkrow('parcel', 'reeds.larkrow', '--out', 'shop', '--languages', 'de');
    expect(made.code).toBe(0);
    const [name] = readdirSync(join(made.folder, 'shop'));
    expect(name).toBe('Reeds, zum Verkauf');
    expect(readdirSync(join(made.folder, 'shop', name!))).toHaveLength(14);
  });

  it('makes everything for selling as an archive', async () => {
    const larkrow = atHome();
    const { folder } = await larkrow('check', 'reeds.larkrow');
    const us = ['--zip', '--units', 'us'];
    expect((await larkrow('parcel', 'reeds.larkrow', '--out', 'zip', ...us)).code).toBe(0);
    const zip = readFileSync(join(folder, 'zip', 'Reeds, for sale.zip'));
    const files = unzipSync(new Uint8Array(zip));
    expect(Object.keys(files)).toHaveLength(14);
    const listing = Object.entries(files).find(([name]) => name.endsWith('.txt'))![1];
    expect(strFromU8(listing)).toMatch(/\d in\b/);
    expect(strFromU8(listing)).not.toMatch(/\d cm\b/);
    expect((await larkrow('parcel', 'reeds.larkrow', '--out', 'x', '--languages', 'en,fr')).code).toBe(2);
  });
});
