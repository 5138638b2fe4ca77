import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { apply } from '../../../../shared/design/edits.ts';
import type { PatternPart } from '../../../../shared/design/pattern-schema.ts';
import { withToldGauge } from '../../../../shared/gauge/told-gauge.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { chosenParts } from '../../../../shared/pattern/chosen-parts.ts';
import { copyOf } from '../../../../shared/pattern/copy.ts';
import { publishEdition } from '../../../../shared/pattern/editions/edition.ts';
import { emptyImprint, type Imprint } from '../../../../shared/pattern/imprint.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import { label } from '../../../../shared/pattern/page/label.ts';
import type { Item, PatternDocument } from '../../../../shared/pattern/page/page.ts';
import type { PatternInput } from '../../../../shared/pattern/pattern-input.ts';
import type { Finding, FindingKind } from '../../../../shared/pattern/preflight/finding.ts';
import { preflight } from '../../../../shared/pattern/preflight/preflight.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../../notation.ts';

const imprint: Imprint = { ...emptyImprint, name: 'Ada Fenn', contact: ['Mill Lane 3, Harrow Point'] };

/** Black and white on measured swatches, with a designer: nothing is to be found. */
const sound: Design = withColors(
  {
    ...designFromLetters(['aabb', 'abba', 'bbaa']),
    designer: 'Ada Fenn',
    swatches: [
      {
        widthMm: 100,
        cords: 20,
        heightMm: 100,
        rows: 21,
        yarnMm: 4000,
        knots: 100,
        cordBeforeMm: 103,
        cordAfterMm: 100,
      },
    ],
  },
  ['#101010', '#fafafa'],
);

function withColors(design: Design, colors: readonly string[]): Design {
  return { ...design, yarns: design.yarns.map((yarn, i) => ({ ...yarn, color: colors[i] ?? yarn.color })) };
}

const same = (document: PatternDocument) => document;

function found(
  design: Design,
  by: Imprint = imprint,
  change: (document: PatternDocument) => PatternDocument = same,
  more: Partial<Pick<PatternInput, 'copy' | 'units' | 'edition'>> = {},
): Finding[] {
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  const input = {
    design,
    chart,
    plan: plan.value,
    materials,
    paper: 'a4',
    units: 'metric',
    imprint: by,
    ...more,
  } as const;
  return preflight(input, change(layOutPattern(input)));
}

function kinds(findings: readonly Finding[]): FindingKind[] {
  return findings.map(({ kind }) => kind);
}

function withItem(item: Item) {
  return (document: PatternDocument): PatternDocument => ({
    ...document,
    pages: document.pages.map((page, i) => (i === 1 ? { ...page, items: [...page.items, item] } : page)),
  });
}

describe('preflight', () => {
  it('finds nothing in a sound pattern', () => {
    expect(found(sound)).toEqual([]);
  });

  it('says of each finding how it is mended, and puts what is weightiest first', () => {
    const bad = withColors({ ...sound, designer: '', swatches: [], pattern: { parts: ['cover'] } }, [
      '#101010',
      '#111111',
    ]);
    const findings = found(bad, emptyImprint);
    for (const { sentence, mend, place } of findings) {
      expect(sentence).toMatch(/\.$/);
      expect(mend).toMatch(/\.$/);
      expect(place).toBeDefined();
    }
    const order = ['fault', 'doubt', 'note'];
    const places = findings.map(({ weight }) => order.indexOf(weight));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places[0]).toBe(0);
  });
});

describe('preflight of the colours', () => {
  it('finds yarns that look alike where they touch, and where that is', () => {
    const [finding] = found(withColors(sound, ['#5b7f4f', '#5c804f']));
    expect(finding).toMatchObject({ kind: 'alike', place: { on: 'cell', row: 1, cord: 2 } });
  });

  it('finds yarns of another hue that print as the same grey', () => {
    expect(kinds(found(withColors(sound, ['#b04a3a', '#4a7a3a'])))).toContain('alike-in-print');
  });

  it('passes over yarns that look alike and never touch', () => {
    const apart = designFromLetters(['aaccbb', 'aaccbb']);
    const looks = withColors({ ...sound, ...apart, swatches: sound.swatches, designer: 'Ada Fenn' }, [
      '#fafafa',
      '#f9f9f9',
      '#101010',
    ]);
    expect(kinds(found(looks))).toEqual([]);
  });
});

describe('preflight of a copy’s inks', () => {
  const inCopy = (design: Design, ink: 'grey' | 'symbols') =>
    found(design, imprint, same, { copy: { ...copyOf(design), ink } });

  it('says nothing of the colours’ greys where greys are chosen, or no colours are printed', () => {
    const alike = withColors(sound, ['#b04a3a', '#4a7a3a']);
    expect(kinds(found(alike))).toEqual(['alike-in-print']);
    expect(kinds(inCopy(alike, 'symbols'))).not.toContain('alike-in-print');
    expect(kinds(inCopy(alike, 'grey'))).not.toContain('alike-in-print');
  });

  it('finds yarns that touch and must share a grey, as there are only seven', () => {
    // Nine yarns, each beside every other one: some must share a grey.
    const letters = 'abcdefghi';
    const pairs = [...letters].flatMap((a) => [...letters].map((b) => `${a}${b}`));
    const crowded = { ...sound, ...designFromLetters([pairs.join('')]), swatches: sound.swatches };
    const findings = inCopy({ ...crowded, designer: 'Ada Fenn' }, 'grey').filter(
      ({ kind }) => kind === 'same-grey',
    );
    expect(findings.length).toBeGreaterThan(0);
    expect(findings[0]).toMatchObject({ weight: 'note', place: { on: 'cell', row: 1 } });
    expect(inCopy(sound, 'grey')).toEqual([]);
  });

  it('cuts long names short, tells alike ones apart by their symbols, and tells many of a kind in few', () => {
    const letters = 'abcdefgh';
    const rows = [...letters].map((a) => [...letters].map((b) => `${a}${b}`).join(''));
    const many = { ...sound, ...designFromLetters(rows), swatches: sound.swatches };
    const yarns = many.yarns.map((yarn) => ({ ...yarn, color: '#808080', name: `${'Long '.repeat(30)}` }));
    const alike = found({ ...many, yarns }).filter(({ kind }) => kind === 'alike');
    expect(alike).toHaveLength(5);
    for (const { sentence } of alike) {
      expect(sentence.length).toBeLessThan(260);
      expect(sentence).toMatch(/^“[^”]{1,40}…” \(symbol .\) and “[^”]{1,40}…” \(symbol .\) look alike\./);
    }
    expect(alike.at(-1)!.mend).toMatch(/\. 23 more findings are like this one\.$/);
  });
});

describe('preflight of the knots', () => {
  it('finds carries that hang down behind bare cells', () => {
    const through = {
      ...designFromLetters(['ab', '.b', 'ab']),
      swatches: sound.swatches,
      designer: 'Ada Fenn',
    };
    const finding = found(through).find(({ kind }) => kind === 'carry-behind-bare');
    expect(finding).toMatchObject({ weight: 'note', place: { on: 'cell', row: 2, cord: 1 } });
    expect(finding!.sentence).toMatch(/^1 carry hangs down behind bare cells/);
    expect(kinds(found({ ...through, ...designFromLetters(['ab', 'ab', 'ab']) }))).not.toContain(
      'carry-behind-bare',
    );
  });

  it('finds knots that may slide, with nothing tied below them', () => {
    const loose = {
      ...designFromLetters(['aaaa', 'a..a', 'aaaa']),
      swatches: sound.swatches,
      designer: 'Ada Fenn',
    };
    const finding = found(loose).find(({ kind }) => kind === 'knots-may-slide');
    expect(finding).toMatchObject({ place: { on: 'cell', row: 1, cord: 2 } });
    expect(finding!.sentence).toContain('2 knots');
  });

  it('finds a chart that is all bare', () => {
    expect(kinds(found({ ...sound, ...designFromLetters(['..', '..']) }))[0]).toBe('nothing-to-tie');
  });

  it('finds a gauge that was not measured, and one measured in part', () => {
    expect(kinds(found({ ...sound, swatches: [] }))).toContain('gauge-not-measured');
    const told = found({ ...sound, swatches: withToldGauge(sound.swatches, 20, 21) });
    expect(told.find(({ kind }) => kind === 'gauge-not-measured')?.sentence).toContain('as you wrote it');
    const sizeOnly = [{ widthMm: 100, cords: 20, heightMm: 100, rows: 21 }];
    expect(kinds(found({ ...sound, swatches: sizeOnly }))).toEqual(['swatch-of-another-thickness']);
  });

  it('finds pieces without a reserve where a hand 3 % looser runs out of them, and not where there is one', () => {
    // 40 knots of 40 mm and two tails of 65 mm fill 1730 mm: by a hand 3 % looser the last knots have no yarn.
    const full = (reserveShare: number) => ({
      ...designFromLetters(['a'.repeat(40)]),
      designer: sound.designer,
      swatches: sound.swatches,
      tying: { ...sound.tying, workingLengthMm: 1730, reserveShare },
    });
    const [finding] = found(full(0)).filter(({ kind }) => kind === 'no-reserve');
    expect(finding?.sentence).toContain('3 % looser takes 1 piece more');
    expect(kinds(found(full(0.03)))).not.toContain('no-reserve');
    expect(kinds(found(sound))).not.toContain('no-reserve');
  });

  it('finds a pin that is not obeyed', () => {
    const pins = [{ kind: 'carry', row: 1, cord: 1, toRow: 1, toCord: 4 } as const];
    expect(kinds(found({ ...sound, pins }))).toContain('pin-not-obeyed');
  });
});

describe('preflight of the pages', () => {
  it('finds a text beyond the edge', () => {
    const wide = label(150, 250, 'A line that is much too long for what is left of this sheet of paper');
    expect(kinds(found(sound, imprint, withItem(wide)))).toEqual(['beyond-the-edge']);
  });

  it('finds texts that lie over one another, and not those that only stand close', () => {
    const below = 260;
    const first = withItem(label(20, below, 'A first line'));
    const over = (y: number) => (document: PatternDocument) =>
      withItem(label(22, y, 'A second line'))(first(document));
    expect(kinds(found(sound, imprint, over(below + 1)))).toEqual(['texts-overlap']);
    expect(kinds(found(sound, imprint, over(below + 4)))).toEqual([]);
    const centred = label(90, below, '8', { align: 'center' });
    const number = (document: PatternDocument) => withItem(centred)(withItem(centred)(document));
    expect(kinds(found(sound, imprint, number))).toEqual(['texts-overlap']);
  });

  it('finds text that is too small to be read', () => {
    const tiny = label(20, 260, 'tiny', { sizeMm: 1.6 });
    expect(kinds(found(sound, imprint, withItem(tiny)))).toEqual(['text-small']);
    const aside = label(20, 260, '7', { sizeMm: 1.6, role: 'aside' });
    expect(kinds(found(sound, imprint, withItem(aside)))).toEqual([]);
  });

  it('finds a pattern of very many pages, which parts they are, and what helps', () => {
    const many =
      (part: PatternPart) =>
      (document: PatternDocument): PatternDocument => {
        const page = document.pages.find((each) => each.part === part)!;
        return { ...document, pages: [...document.pages, ...Array<typeof page>(70).fill(page)] };
      };
    const of = (part: PatternPart, more = {}) =>
      found(sound, imprint, many(part), more).find(({ kind }) => kind === 'many-pages')!;
    expect(of('rows').sentence).toContain('Written rows 71');
    expect(of('rows').mend).toContain('Leave out ‘Written rows’');
    expect(of('chart').mend).toBe('Say in the listing how many pages it has.');
    const large = of('chart', { copy: { ...copyOf(sound), cells: 'large' } });
    expect(large.mend).toContain('cells of the standard size');
  });

  it('finds texts that were cut short for want of room, and not those that end in three dots themselves', () => {
    const cut = label(20, 260, 'A very long name that has no roo…');
    const [finding] = found(sound, imprint, withItem(cut));
    expect(finding).toMatchObject({ kind: 'text-shortened', place: { on: 'page', page: 2 } });
    const dotted = { ...sound, title: 'To be continued…' };
    expect(kinds(found(dotted, imprint, withItem(label(20, 260, 'To be continued…'))))).toEqual([]);
  });

  it('finds cells that are too low to be read', () => {
    const lower = (heightMm: number) => (document: PatternDocument) => ({
      ...document,
      pages: document.pages.map((page) => ({
        ...page,
        items: page.items.map((item) =>
          item.kind === 'cells' && page.part === 'chart' ? { ...item, cellHeight: heightMm } : item,
        ),
      })),
    });
    expect(kinds(found(sound, imprint, lower(2.4)))).toContain('cells-small');
    expect(kinds(found(sound, imprint, lower(2.5)))).not.toContain('cells-small');
    expect(kinds(found(sound))).not.toContain('cells-small');
  });

  it('finds changes of yarn without a lift mark', () => {
    // In 'aabb', 'abba' and 'bbaa' a yarn begins within a row once, twice and once.
    const unmarked = (document: PatternDocument) => ({
      ...document,
      pages: document.pages.map((page) => ({
        ...page,
        items: page.items.filter((item) => item.kind !== 'cells' || item.inks[255] !== undefined),
      })),
    });
    const finding = found(sound, imprint, unmarked).find(({ kind }) => kind === 'lift-marks-missing');
    expect(finding).toMatchObject({ weight: 'fault', place: { on: 'page' } });
    expect(finding!.sentence).toBe('4 changes of yarn on the chart have no lift mark.');
  });

  it('finds a gauge whose proportions no page can show', () => {
    const slip = { ...sound, swatches: [{ ...sound.swatches[0]!, heightMm: 20, rows: 21 }] };
    const finding = found(slip).find(({ kind }) => kind === 'proportions-lost');
    expect(finding).toMatchObject({ place: { on: 'setting', setting: 'gauge' } });
  });

  it('finds a dowel longer than those of the shops: 2 m, or 48 in', () => {
    const wide = { ...sound, ...designFromLetters(['ab'.repeat(110)]), swatches: sound.swatches };
    // 220 cords at 5 mm and the overhangs are 1.2 m; as 110 heads of 12 mm they are 1.422 m.
    const us = found(wide, imprint, same, { units: 'us' }).find(({ kind }) => kind === 'dowel-long');
    expect(us?.sentence).toContain('56 in');
    expect(kinds(found(wide))).not.toContain('dowel-long');
  });
});

describe('preflight of the parts', () => {
  const partsOf = (...parts: PatternPart[]) => kinds(found({ ...sound, pattern: { parts } }));
  const all = [...chosenParts(sound)];
  const without = (...left: PatternPart[]) => partsOf(...all.filter((part) => !left.includes(part)));

  it('finds that there is no page at all, and nothing besides', () => {
    expect(partsOf()).toEqual(['no-pages']);
  });

  it('finds that chart, rows, materials, cautions, reading or knots are not printed', () => {
    expect(partsOf('cover')).toEqual(['no-chart', 'no-materials', 'no-cautions', 'no-reading', 'no-knots']);
    expect(without('chart')).toEqual(['rows-only']);
    expect(without('rows')).toEqual(['no-rows']);
    expect(without('materials')).toEqual(['no-materials']);
    expect(without('care')).toEqual(['no-cautions']);
    expect(without('reading')).toEqual(['no-reading']);
    expect(without('knots')).toEqual(['no-knots']);
    expect(without('designer', 'fringe', 'finishing', 'welcome', 'cover')).toEqual([]);
  });

  it('finds that the map is left out where the chart takes several pages, and only there', () => {
    const wide = designFromLetters(Array.from({ length: 60 }, () => `${'a'.repeat(70)}b`));
    const large = withColors({ ...sound, ...wide, swatches: sound.swatches, designer: 'Ada Fenn' }, [
      '#101010',
      '#fafafa',
    ]);
    const parts = all.filter((part) => part !== 'map');
    expect(kinds(found({ ...large, pattern: { parts } }))).toContain('no-map');
    expect(kinds(found(large))).not.toContain('no-map');
    expect(kinds(found({ ...sound, pattern: { parts } }))).toEqual([]);
  });

  it('finds pieces that are cut to measure where no cut list tells their lengths', () => {
    const bundles = { fitted: true };
    expect(kinds(found({ ...sound, bundles, pattern: { parts: all } }))).toEqual(['lengths-not-told']);
    // A cut list is among the usual parts where it is needed.
    expect(kinds(found({ ...sound, bundles }))).toEqual([]);
    expect(kinds(found({ ...sound, bundles, pattern: { parts: [...all, 'cut-list'] } }))).toEqual([]);
    expect(kinds(found({ ...sound, bundles: { fitted: false } }))).toEqual([]);
  });
});

describe('preflight of the words', () => {
  it('finds that nobody is named, and that nobody can be reached', () => {
    expect(kinds(found({ ...sound, designer: '' }, emptyImprint))).toEqual(['no-designer', 'no-contact']);
  });

  it('finds terms that were emptied', () => {
    const [finding] = found({ ...sound, pattern: { texts: { terms: ' ' } } });
    expect(finding).toMatchObject({ kind: 'no-terms', place: { on: 'text', text: 'terms' } });
  });

  it('finds letters that can’t be printed, names them and says where they were written', () => {
    const yarns = sound.yarns.map((yarn, i) => (i === 0 ? { ...yarn, name: 'Reed 葦 and rush 藺' } : yarn));
    const texts = { welcome: 'Welcome 🦊' };
    const findings = found(
      { ...sound, title: 'Moth 蛾', yarns, pattern: { texts } },
      {
        ...imprint,
        workshop: '工房',
      },
    );
    expect(findings.map(({ kind, weight }) => [kind, weight])).toEqual(
      Array(4).fill(['letters-missing', 'fault']),
    );
    expect(findings.map(({ sentence, place }) => [sentence.split('. ')[0], place])).toEqual([
      ['The title “Moth 蛾” has a letter that can’t be printed: 蛾', { on: 'setting', setting: 'title' }],
      [
        'The yarn “Reed 葦 and rush 藺” has letters that can’t be printed: 葦 藺',
        { on: 'setting', setting: 'yarns' },
      ],
      ['The welcome “Welcome 🦊” has a letter that can’t be printed: 🦊', { on: 'text', text: 'welcome' }],
      [
        'In the imprint, “工房” has letters that can’t be printed: 工 房',
        { on: 'setting', setting: 'imprint' },
      ],
    ]);
  });

  it('finds a text in another language than its copy, by its small words', () => {
    const welcome =
      'Willkommen! Dies ist die Anleitung für den Wandbehang mit der Motte, und sie ist nicht schwer.';
    const own = { ...sound, pattern: { texts: { welcome } } };
    const [finding] = found(own);
    expect(finding).toMatchObject({ kind: 'language-mixed', place: { on: 'text', text: 'welcome' } });
    expect(finding!.sentence).toBe('The welcome seems to be in German, and this copy is in English.');
    expect(kinds(found(own, imprint, same, { copy: { ...copyOf(own), language: 'de' } }))).toEqual([]);
    expect(kinds(found({ ...sound, pattern: { texts: { welcome: 'Die Motte' } } }))).toEqual([]);
  });

  it('finds that the pattern has gone on since its edition, until the next is published', () => {
    const published = publish(sound);
    expect(kinds(found(published))).toEqual([]);
    const goneOn: Design = { ...published, title: 'Owl', pattern: { texts: { skill: 'Some.' } } };
    const [finding] = found(goneOn);
    expect(finding).toMatchObject({ kind: 'changed-since-edition', place: { setting: 'editions' } });
    expect(finding!.sentence).toContain('has changed since edition 1');
    expect(kinds(found(publish(goneOn)))).toEqual([]);
    // How a copy is printed is chosen for each copy.
    expect(kinds(found({ ...published, pattern: { copy: { ink: 'symbols' } } }))).toEqual([]);
    // A copy for the other hand is turned, and is of the edition all the same.
    const turned: Design = { ...published, startCorner: 'top-right' };
    const edition = published.editions![0]!;
    expect(kinds(found(turned, imprint, same, { edition }))).toEqual([]);
  });
});

describe('preflight of the cover', () => {
  it('finds a photograph that is too coarse for paper: below 150 pixels to an inch', () => {
    const cover = (widthPx: number, heightPx: number): Design => ({
      ...sound,
      pattern: {
        cover: { mediaType: 'image/png', widthPx, heightPx, picture: [pngHead(widthPx, heightPx)] },
      },
    });
    const [finding] = found(cover(400, 300));
    expect(finding).toMatchObject({ kind: 'photograph-coarse', weight: 'doubt' });
    expect(finding!.sentence).toContain('400 × 300 pixels');
    const wished = Number(/at least (\d+) pixels wide/.exec(finding!.mend)?.[1]);
    expect(kinds(found(cover(wished, Math.round(wished * 0.75))))).toEqual([]);
    expect(kinds(found(cover(wished - 30, Math.round((wished - 30) * 0.75))))).toEqual(['photograph-coarse']);
  });

  it('finds a photograph that can’t be read', () => {
    const cover = { mediaType: 'image/png', widthPx: 9, heightPx: 9, picture: ['AAAA'] } as const;
    const damaged: Design = { ...sound, pattern: { cover: { ...cover, picture: [...cover.picture] } } };
    expect(kinds(found(damaged))).toEqual(['photograph-unread']);
    expect(kinds(found({ ...damaged, pattern: { ...damaged.pattern, parts: ['chart'] } }))).not.toContain(
      'photograph-unread',
    );
  });
});

/** The beginning of a PNG file, in base64: W3C Portable Network Graphics, 5.2 and 11.2.1. */
function pngHead(widthPx: number, heightPx: number): string {
  const head = Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex');
  const size = Buffer.alloc(8);
  size.writeUInt32BE(widthPx, 0);
  size.writeUInt32BE(heightPx, 4);
  return Buffer.concat([head, size]).toString('base64');
}

function publish(design: Design): Design {
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const edit = publishEdition(design, chart, plan.value, { date: '2031-05-08', note: '' });
  if (!edit.ok) throw new Error(edit.problem.sentence);
  return apply(design, edit.value);
}
