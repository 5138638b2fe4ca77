import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { verbs } from '../../../app/cli/verbs.ts';
import { newDesign } from '../../../shared/design/new-design.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import type { Materials } from '../../../shared/materials/materials.ts';
import { emptyStash } from '../../../shared/yarn/stash.ts';
import { designFromLetters } from '../../notation.ts';
import { temporaryFolder } from '../../temporary-folder.ts';
import { folderWithFox, larkrow, script, spawned } from './command-line.ts';

describe('the help of the command line', () => {
  it('lists every verb, and ends well', async () => {
    const { code, out, err } = await spawned(temporaryFolder(), '--help');
    expect([code, err]).toEqual([0, '']);
    for (const name of Object.keys(verbs)) expect(out).toMatch(new RegExp(`^  ${name} +\\w`, 'm'));
    expect(out).toContain('Exit codes: 0 done, 1 the input is at fault, 2 wrong usage.');
  });

  it.each(Object.keys(verbs))('tells how %s is used', async (name) => {
    const { code, out, err } = await larkrow(temporaryFolder(), name, '--help');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(new RegExp(`^Use: npm run -s larkrow -- ${name} `));
  });
});

describe('wrong usage', () => {
  it.each([
    [[], 'A verb is missing.'],
    [['knit'], 'There is no verb “knit”.'],
    [['constructor'], 'There is no verb “constructor”.'],
    [['--verbose'], 'There is no verb “--verbose”.'],
    [['chart'], 'FILE.larkrow is missing.'],
    [['chart', 'Fox.larkrow'], 'This verb prints JSON: add --json.'],
    [['chart', 'Fox.larkrow', 'Owl.larkrow', '--json'], '“Owl.larkrow” is one word too many.'],
    [['rows', 'Fox.larkrow', '--json'], "Unknown option '--json'."],
    [['pattern', 'Fox.larkrow'], '--out is missing.'],
    [['pattern', 'Fox.larkrow', '--out', 'x', '--paper', 'a5'], '--paper takes a4 or letter, not “a5”.'],
    [['papers', 'Fox.larkrow'], '--out is missing.'],
    [
      ['papers', 'Fox.larkrow', '--out', 'x', '--which', 'care-card,poster'],
      '--which takes care-card, fibre-label, price-tag, backing, backing-tiles, packing-note, not “poster”.',
    ],
    [['papers', 'Fox.larkrow', '--out', 'x', '--language', 'fr'], '--language takes en or de, not “fr”.'],
    [['picture', 'fox.png', '--out', 'x.larkrow'], '--cords is missing.'],
    [
      ['picture', 'fox.png', '--cords', '0', '--out', 'x.larkrow'],
      '--cords takes a whole number from 1 to 1000, not “0”.',
    ],
    [
      ['picture', 'fox.png', '--cords', '1001', '--out', 'x.larkrow'],
      '--cords takes a whole number from 1 to 1000, not “1001”.',
    ],
    [
      ['picture', 'fox.png', '--cords', '4.5', '--out', 'x.larkrow'],
      '--cords takes a whole number from 1 to 1000, not “4.5”.',
    ],
    [
      ['picture', 'fox.png', '--cords', '4', '--yarns', '65', '--out', 'x.larkrow'],
      '--yarns takes a whole number from 1 to 64, not “65”.',
    ],
    [
      ['picture', 'fox.png', '--cords', '4', '--yarns', '2', '--from', 'Fox.larkrow', '--out', 'x.larkrow'],
      '--yarns and --from exclude each other',
    ],
    [['picture', 'fox.png', '--cords', '4', '--out', 'fox.png'], '--out takes the name of a .larkrow file.'],
    [['bundles', 'Fox.larkrow'], 'Add either --json, or --labels with the name of a PDF file.'],
    [['bundles', 'Fox.larkrow', '--json', '--labels', 'x.pdf'], 'Add either --json, or --labels'],
    [['bundles', 'Fox.larkrow', '--labels', 'labels.txt'], '--labels takes the name of a PDF file.'],
    [['demo'], '--out is missing.'],
  ])('%j ends with 2, one sentence and a hint', async (words, sentence) => {
    const { code, out, err } = await larkrow(folderWithFox(), ...words);
    expect([code, out]).toEqual([2, '']);
    const [first, second, ...rest] = err.split('\n');
    expect(first).toContain(sentence);
    expect(second).toMatch(/^(Use: npm run -s larkrow -- |The verbs are )/);
    expect(rest).toEqual(['']);
  });
});

describe('the program', () => {
  it.each<[number, string, ...string[]]>([
    [2, 'knit'],
    [2, 'chart', 'Fox.larkrow'],
    [1, 'chart', 'Torn.larkrow', '--json'],
    [1, 'check', 'Gone.larkrow'],
    [0, 'chart', 'Fox.larkrow', '--json'],
    [0, 'check', 'Fox.larkrow'],
    [0, 'pattern', 'Fox.larkrow', '--out', 'out'],
  ])('ends with %i after %s %s, and says what it says within', async (code, ...words) => {
    const [folder, other] = [folderWithFox(), folderWithFox()];
    const ran = await spawned(folder, ...words);
    expect(ran.code).toBe(code);
    const within = await larkrow(other, ...words);
    expect({ ...ran, out: ran.out.replaceAll(folder, '') }).toEqual({
      ...within,
      out: within.out.replaceAll(other, ''),
    });
  });
});

describe('an input at fault', () => {
  it.each([
    ['chart', 'Torn.larkrow', '--json'],
    ['plan', 'Torn.larkrow', '--json'],
    ['materials', 'Torn.larkrow', '--json'],
    ['rows', 'Torn.larkrow'],
    ['check', 'Torn.larkrow'],
    ['check', 'Gone.larkrow'],
    ['check', '.'],
    ['pattern', 'Torn.larkrow', '--out', 'out'],
    ['picture', 'Fox.larkrow', '--cords', '4', '--out', 'x.larkrow'],
    ['picture', 'gone.png', '--cords', '4', '--out', 'x.larkrow'],
    ['picture', 'Fox.larkrow', '--cords', '4', '--from', 'Torn.larkrow', '--out', 'x.larkrow'],
    ['pattern', 'Fox.larkrow', '--out', 'Torn.larkrow'],
    ['demo', '--out', 'Torn.larkrow'],
  ])('%s %s %s ends with 1 and one line, and writes nothing', async (...words) => {
    const folder = folderWithFox();
    const { code, out, err } = await larkrow(folder, ...words);
    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(/^[^\n]+\.\n$/);
    expect(err).not.toMatch(/ {4}at |Error:/);
    expect(readdirSync(folder).sort()).toEqual(['Fox.larkrow', 'Torn.larkrow']);
  });

  it('is a design whose pieces are too short to tie with', async () => {
    const folder = temporaryFolder();
    const design = newDesign({ title: 'Short', columns: 4, rows: 3 });
    const tying = { ...design.tying, workingLengthMm: 100 };
    writeFileSync(join(folder, 'Short.larkrow'), writeDesign({ ...design, tying }));
    for (const words of [['check'], ['plan', '--json'], ['materials', '--json']]) {
      const { code, out, err } = await larkrow(folder, words[0]!, 'Short.larkrow', ...words.slice(1));
      expect([code, out]).toEqual([1, '']);
      expect(err).toMatch(/working length/i);
    }
  });
});

describe('what the verbs print', () => {
  it('is the flat chart', async () => {
    const { code, out, err } = await larkrow(folderWithFox(), 'chart', 'Fox.larkrow', '--json');
    expect([code, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toMatchObject({
      format: 'larkrow-chart',
      version: 1,
      columns: 4,
      rows: 2,
      startCorner: 'top-left',
      cells: [
        [
          ['y1', 2],
          ['y2', 2],
        ],
        [
          ['y2', 1],
          [null, 1],
          ['y2', 1],
          ['y1', 1],
        ],
      ],
    });
  });

  it('is the plan, and the materials that follow from it', async () => {
    const folder = folderWithFox();
    const plan = await larkrow(folder, 'plan', 'Fox.larkrow', '--json');
    const materials = await larkrow(folder, 'materials', 'Fox.larkrow', '--json');
    expect([plan.code, plan.err, materials.code, materials.err]).toEqual([0, '', 0, '']);
    const { format, totals } = JSON.parse(plan.out);
    expect([format, totals.knots]).toEqual(['larkrow-plan', 7]);
    expect(JSON.parse(materials.out)).toMatchObject({
      format: 'larkrow-materials',
      totals: { knots: 7, bareCells: 1, pieces: totals.pieces, looseEnds: totals.looseEnds },
    });
  });

  it('counts what the stash holds as owned where that is asked for, and keeps what the design tells', async () => {
    const folder = folderWithFox();
    const fox = designFromLetters(['aabb', 'b-ba']);
    const [linen, dusk, ...others] = fox.yarns;
    const told = { ...fox, yarns: [{ ...linen!, ownedSkeins: 2 }, dusk!, ...others] };
    writeFileSync(join(folder, 'Told.larkrow'), writeDesign(told));
    const home = temporaryFolder();
    mkdirSync(join(home, 'config'));
    const { id: _id, symbol: _symbol, ...look } = dusk!;
    const stash = { ...emptyStash, yarns: [{ ...look, ownedSkeins: 3 }] };
    writeFileSync(join(home, 'config', 'stash.json'), JSON.stringify(stash));
    vi.stubEnv('LARKROW_HOME', home);
    const ownedBy = async (...options: string[]) => {
      const { code, out, err } = await larkrow(folder, 'materials', 'Told.larkrow', '--json', ...options);
      expect([code, err]).toEqual([0, '']);
      const { yarns } = JSON.parse(out) as Materials;
      return yarns.map(({ name, ownedSkeins, toBuySkeins }) => [name, ownedSkeins, toBuySkeins]);
    };
    try {
      expect(await ownedBy()).toEqual([
        ['Linen', 2, 0],
        ['Dusk', null, 1],
      ]);
      expect(await ownedBy('--stash')).toEqual([
        ['Linen', 2, 0],
        ['Dusk', 3, 0],
      ]);
    } finally {
      vi.unstubAllEnvs();
    }
  });

  it('keeps to the wish for few hanging strands everywhere, and says what it takes', async () => {
    const folder = temporaryFolder();
    const stripes = designFromLetters(['abc', 'abc', 'abc', 'abc']);
    const wishing = { ...stripes, tying: { ...stripes.tying, liveWish: 2 } };
    writeFileSync(join(folder, 'Stripes.larkrow'), writeDesign(wishing));
    const json = async (verb: string) =>
      JSON.parse((await larkrow(folder, verb, 'Stripes.larkrow', '--json')).out);
    const plan = await json('plan');
    expect(plan.totals).toMatchObject({ liveMax: 2, pieces: 6 });
    expect(plan.settings.liveWish).toBe(2);
    expect((await json('materials')).totals).toMatchObject({ liveMax: 2, pieces: 6 });
    expect((await json('bundles')).pieces).toBe(6);
    const steps = (await larkrow(folder, 'steps', 'Stripes.larkrow')).out;
    expect(steps.match(/^attach /gm)).toHaveLength(6);
    expect((await larkrow(folder, 'check', 'Stripes.larkrow')).out).toContain(
      'At most 2 strands hang at once, as you wish; else 3 would. It takes 3 more pieces, so 6 more loose ends and 4.6 m more yarn.',
    );
  });

  it('is the written rows, one a line', async () => {
    const { out } = await larkrow(folderWithFox(), 'rows', 'Fox.larkrow');
    expect(out).toBe(
      'Row 1, left to right: 2 Linen (1-2), 2 Dusk (3-4); lift 3\n' +
        'Row 2, right to left: 1 Linen (4), 1 Dusk (3), 1 bare (2), 1 Dusk (1); lift 3, 1\n',
    );
  });

  it('is the written rows in German, and as short as they can be below a key', async () => {
    const folder = folderWithFox();
    const german = await larkrow(folder, 'rows', 'Fox.larkrow', '--language', 'de');
    expect(german.out.split('\n')[0]).toBe(
      'Reihe 1, von links nach rechts: 2 Linen (1-2), 2 Dusk (3-4); anheben 3',
    );
    const { out } = await larkrow(folder, 'rows', 'Fox.larkrow', '--form', 'compact');
    expect(out.split('\n').slice(1)).toEqual([
      'a  Linen',
      'b  Dusk',
      '',
      '1 → 2×a 2×b; 3',
      '2 ← 1×a 1×b 1×– 1×b; 3 1',
      '',
    ]);
    const wrong = await larkrow(folder, 'rows', 'Fox.larkrow', '--form', 'short');
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain('--form takes long or compact, not “short”.');
  });

  it('is what to do, step by step', async () => {
    const { code, out, err } = await larkrow(folderWithFox(), 'steps', 'Fox.larkrow');
    expect([code, err]).toEqual([0, '']);
    expect(out.split('\n').slice(0, 3)).toEqual([
      'Row 1, left to right; lift 3',
      'attach Linen, piece 1, at 1',
      '2 Linen (1-2)',
    ]);
    const long = await larkrow(folderWithFox(), 'steps', 'Fox.larkrow', '--long');
    expect(long.out).toContain('Let a tail of 6.5 cm (2 3/4 in) point back to the left');
    expect(long.out.split('\n')).toHaveLength(out.split('\n').length);
  });

  it('is which pieces to cut, fitted where that is asked for', async () => {
    const folder = folderWithFox();
    const whole = JSON.parse((await larkrow(folder, 'bundles', 'Fox.larkrow', '--json')).out);
    const fitted = JSON.parse((await larkrow(folder, 'bundles', 'Fox.larkrow', '--json', '--fitted')).out);
    const plan = JSON.parse((await larkrow(folder, 'plan', 'Fox.larkrow', '--json')).out);
    expect(whole).toMatchObject({
      format: 'larkrow-bundles',
      fitting: null,
      pieces: plan.totals.pieces,
      totalMm: plan.totals.cutMm,
      savedMm: 0,
    });
    expect(fitted).toMatchObject({ fitting: { roundUpMm: 50, reserve: 0.1 }, pieces: plan.totals.pieces });
    expect(fitted.totalMm + fitted.savedMm).toBe(whole.totalMm);
    expect(fitted.savedMm).toBeGreaterThan(0);
  });

  it('counts pieces as the design cuts them: bundles, plan and materials agree', async () => {
    const folder = temporaryFolder();
    const design = designFromLetters(['aabb', 'b-ba'], { title: 'Fox', bundles: { fitted: true } });
    writeFileSync(join(folder, 'Fox.larkrow'), writeDesign(design));
    const json = async (...words: string[]) => JSON.parse((await larkrow(folder, ...words, '--json')).out);
    const bundles = await json('bundles', 'Fox.larkrow');
    const plan = await json('plan', 'Fox.larkrow');
    const materials = await json('materials', 'Fox.larkrow');
    expect(bundles.fitting).not.toBeNull();
    expect(plan.totals.cutMm).toBe(bundles.totalMm);
    expect(materials.totals.yarnCutMm).toBe(bundles.totalMm);
    const whole = await json('bundles', 'Fox.larkrow', '--whole');
    expect([whole.fitting, whole.totalMm]).toEqual([null, bundles.totalMm + bundles.savedMm]);
    expect((await larkrow(folder, 'bundles', 'Fox.larkrow', '--fitted', '--whole', '--json')).code).toBe(2);
  });

  it('is that a design is sound', async () => {
    const { code, out } = await larkrow(folderWithFox(), 'check', 'Fox.larkrow');
    expect(code).toBe(0);
    expect(out).toMatch(/^“Fox” is sound: a design of version 2\.\nChart: 4 cords, 2 rows, 7 knots; /);
  });

  it('is which pins a plan obeys, and why it does not obey the others', async () => {
    const folder = folderWithFox();
    const pins = [
      { kind: 'no-carry' as const, row: 1, cord: 2 },
      { kind: 'cut' as const, row: 9, cord: 1 },
    ];
    writeFileSync(join(folder, 'Pinned.larkrow'), writeDesign({ ...designFromLetters(['aba']), pins }));
    const plan = JSON.parse((await larkrow(folder, 'plan', 'Pinned.larkrow', '--json')).out);
    expect(plan.pins).toEqual([pins[0]]);
    expect((await larkrow(folder, 'check', 'Pinned.larkrow')).out).toContain(
      '\nPin not obeyed. Row 9, cord 1: no run ends there now, so nothing can be cut. Remove the pin, or set it anew.\n',
    );
  });

  it('may be cut off by a reader that has seen enough', async () => {
    const folder = temporaryFolder();
    const large = newDesign({ title: 'Large', columns: 1000, rows: 2000 });
    writeFileSync(join(folder, 'Large.larkrow'), writeDesign(large));
    const child = spawn(process.execPath, [script, 'rows', 'Large.larkrow'], {
      env: { ...process.env, INIT_CWD: folder },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let err = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      err += text;
    });
    await once(child.stdout, 'data');
    child.stdout.destroy();
    const [code] = (await once(child, 'close')) as [number | null];
    expect([code, err]).toEqual([0, '']);
  });
});
