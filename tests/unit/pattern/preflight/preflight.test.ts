import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { emptyImprint, type Imprint } from '../../../../shared/pattern/imprint.ts';
import { label } from '../../../../shared/pattern/label.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import type { Item, PatternDocument } from '../../../../shared/pattern/page.ts';
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

function found(
  design: Design,
  by: Imprint = imprint,
  change = (document: PatternDocument) => document,
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
    for (const { sentence, mend } of findings) {
      expect(sentence).toMatch(/\.$/);
      expect(mend).toMatch(/\.$/);
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

describe('preflight of the knots', () => {
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
    const sizeOnly = [{ widthMm: 100, cords: 20, heightMm: 100, rows: 21 }];
    expect(kinds(found({ ...sound, swatches: sizeOnly }))).toEqual(['swatch-of-another-thickness']);
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
  });

  it('finds text that is too small to be read', () => {
    const tiny = label(20, 260, 'tiny', { sizeMm: 1.6 });
    expect(kinds(found(sound, imprint, withItem(tiny)))).toEqual(['text-small']);
    const aside = label(20, 260, '7', { sizeMm: 1.6, role: 'aside' });
    expect(kinds(found(sound, imprint, withItem(aside)))).toEqual([]);
  });

  it('finds a pattern of very many pages', () => {
    const many = (document: PatternDocument): PatternDocument => ({
      ...document,
      pages: Array.from({ length: 70 }, (_, i) => document.pages[i % document.pages.length]!),
    });
    expect(kinds(found(sound, imprint, many))).toContain('many-pages');
  });
});

describe('preflight of the words', () => {
  it('finds that nobody is named, and that nobody can be reached', () => {
    expect(kinds(found({ ...sound, designer: '' }, emptyImprint))).toEqual(['no-designer', 'no-contact']);
  });

  it('finds terms that were emptied', () => {
    expect(kinds(found({ ...sound, pattern: { texts: { terms: ' ' } } }))).toEqual(['no-terms']);
  });

  it('finds that chart, materials or cautions are not printed', () => {
    expect(kinds(found({ ...sound, pattern: { parts: ['cover'] } }))).toEqual([
      'no-chart',
      'no-materials',
      'no-cautions',
    ]);
    const rowsOnly = found({ ...sound, pattern: { parts: ['rows', 'materials', 'care'] } });
    expect(kinds(rowsOnly)).toEqual([]);
  });

  it('finds pieces that are cut to measure where no cut list tells their lengths', () => {
    const bundles = { fitted: true };
    expect(kinds(found({ ...sound, bundles }))).toEqual(['lengths-not-told']);
    const parts = ['chart', 'materials', 'cut-list', 'care'] as const;
    expect(kinds(found({ ...sound, bundles, pattern: { parts: [...parts] } }))).toEqual([]);
    expect(kinds(found({ ...sound, bundles: { fitted: false } }))).toEqual([]);
  });

  it('finds letters that can’t be printed', () => {
    expect(kinds(found({ ...sound, title: 'Moth 蛾' }))).toContain('letters-missing');
  });
});
