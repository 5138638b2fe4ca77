import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { demoDesigns } from '../../../shared/demos/demo-designs.ts';
import { readDesign } from '../../../shared/design/read-design.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { designFromLetters } from '../../notation.ts';
import { temporaryFolder } from '../../temporary-folder.ts';
import { blackAndWhite, folderWithFox, larkrow } from './command-line.ts';

describe('what the verbs write', () => {
  it('is a design from a picture', async () => {
    const folder = temporaryFolder();
    await blackAndWhite(join(folder, 'fox.png'));
    const words = [
      'picture',
      'fox.png',
      '--cords',
      '4',
      '--rows',
      '3',
      '--yarns',
      '2',
      '--out',
      'My fox.larkrow',
    ];
    const { code, out, err } = await larkrow(folder, ...words);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('My fox.larkrow: 4 cords, 3 rows, 2 yarns');
    const read = readDesign(readFileSync(join(folder, 'My fox.larkrow'), 'utf8'));
    expect(read).toMatchObject({ ok: true, value: { title: 'My fox', columns: 4, rows: 3 } });
    expect(read.ok && read.value.yarns.map(({ color }) => color).sort()).toEqual(['#000000', '#ffffff']);
    const rows = await larkrow(folder, 'rows', 'My fox.larkrow');
    expect(rows.out.match(/2 \S+ \(1-2\), 2 \S+ \(3-4\)/g)).toHaveLength(2);
  });

  it('is a design from a picture with another design’s yarns, and the picture’s proportions', async () => {
    const folder = folderWithFox();
    await blackAndWhite(join(folder, 'fox.png'));
    const words = ['picture', 'fox.png', '--cords', '8', '--from', 'Fox.larkrow', '--out', 'new/Owl.larkrow'];
    expect((await larkrow(folder, ...words)).code).toBe(0);
    const read = readDesign(readFileSync(join(folder, 'new', 'Owl.larkrow'), 'utf8'));
    expect(read.ok && read.value.yarns).toEqual(designFromLetters(['a']).yarns);
    // 8 cords of 5 mm are 40 mm; a picture of 8 x 6 is then 30 mm high; a row is 4.8 mm: 6.25 rows.
    expect(read.ok && read.value.rows).toBe(6);
  });

  it('is a pattern for the paper that was asked for, and the chart as PNG', async () => {
    const folder = folderWithFox();
    const { code, out } = await larkrow(
      folder,
      'pattern',
      'Fox.larkrow',
      '--out',
      'a/b',
      '--paper',
      'letter',
    );
    expect(code).toBe(0);
    expect(readdirSync(join(folder, 'a', 'b')).sort()).toEqual(['Fox Letter.pdf', 'Fox chart.png']);
    expect(
      readFileSync(join(folder, 'a', 'b', 'Fox Letter.pdf'))
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-');
    expect(out.split('\n')).toHaveLength(3);
    expect((await larkrow(folder, 'pattern', 'Fox.larkrow', '--out', 'a/b')).code).toBe(0);
    expect(existsSync(join(folder, 'a', 'b', 'Fox A4.pdf'))).toBe(true);
  });

  it('are the papers that go with a finished hanging', async () => {
    const folder = folderWithFox();
    const made = await larkrow(folder, 'papers', 'Fox.larkrow', '--out', 'out', '--language', 'de');
    expect([made.code, made.err]).toEqual([0, '']);
    expect(readdirSync(join(folder, 'out'))).toEqual(['Fox papers A4.pdf']);
    const two = ['--which', 'care-card, packing-note'];
    const some = await larkrow(folder, 'papers', 'Fox.larkrow', '--out', 'out', ...two);
    expect(some.out).toContain('2 pages');
  });

  it('are labels for the bundles, where anything is cut', async () => {
    const folder = folderWithFox();
    const made = await larkrow(folder, 'bundles', 'Fox.larkrow', '--fitted', '--labels', 'labels.pdf');
    expect([made.code, made.err]).toEqual([0, '']);
    expect(readFileSync(join(folder, 'labels.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
    // As with every verb that writes, folders that are missing are made.
    const deep = await larkrow(folder, 'bundles', 'Fox.larkrow', '--labels', 'cut/today/labels.pdf');
    expect([deep.code, existsSync(join(folder, 'cut', 'today', 'labels.pdf'))]).toEqual([0, true]);
    expect((await larkrow(folder, 'bundles', '--help')).out).toContain(
      'its folder is made where it is missing',
    );
    writeFileSync(join(folder, 'Bare.larkrow'), writeDesign(designFromLetters(['--'])));
    const none = await larkrow(folder, 'bundles', 'Bare.larkrow', '--labels', 'none.pdf');
    expect([none.code, existsSync(join(folder, 'none.pdf'))]).toEqual([1, false]);
    expect(none.err).toContain('nothing to cut');
  });

  it('are the demos with their patterns and pictures', async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'demos'));
    expect(await larkrow(folder, 'demo', '--out', 'demos')).toMatchObject({ code: 0, err: '' });
    const stems = demoDesigns.map(({ fileName }) => fileName.replace('.larkrow', ''));
    const files = stems.flatMap((stem) => [`${stem}.larkrow`, `${stem} A4.pdf`, `${stem} chart.png`]);
    expect(readdirSync(join(folder, 'demos')).sort()).toEqual(files.sort());
    for (const { fileName } of demoDesigns) {
      expect((await larkrow(join(folder, 'demos'), 'check', fileName)).code).toBe(0);
    }
  });

  it('replaces a file that was named, whole', async () => {
    const folder = folderWithFox();
    await blackAndWhite(join(folder, 'fox.png'));
    const words = ['picture', 'fox.png', '--cords', '4', '--out', 'Torn.larkrow'];
    expect((await larkrow(folder, ...words)).code).toBe(0);
    expect((await larkrow(folder, 'check', 'Torn.larkrow')).code).toBe(0);
    expect(readdirSync(folder).sort()).toEqual(['Fox.larkrow', 'Torn.larkrow', 'fox.png']);
  });
});
