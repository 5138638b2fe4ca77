/**
 * A copy in large print is large in all that is read, not in its cells alone. 16 points and more is called large print, and 14 the
 * least within drawings (common practice, no source).
 */
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { lampAtHarrowPoint } from '../../../shared/demos/lamp-at-harrow-point.ts';
import { BARE, yarnIdOf } from '../../../shared/design/codes.ts';
import type { Design } from '../../../shared/design/design.ts';
import type { PatternPart } from '../../../shared/design/pattern-schema.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { type Copy, copyOf } from '../../../shared/pattern/copy.ts';
import { textWidthMm } from '../../../shared/pattern/faces/measure-text.ts';
import { layOutPattern } from '../../../shared/pattern/lay-out-pattern.ts';
import type { Page, TextItem } from '../../../shared/pattern/page/page.ts';
import { bodyOf, type Paper } from '../../../shared/pattern/page/papers.ts';
import { plainItems } from '../../../shared/pattern/page/plain-items.ts';
import { aboutPages } from '../../../shared/pattern/preflight/about-pages.ts';
import { chartWords } from '../../../shared/pattern/words/chart-words.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { alphabet } from '../../../shared/yarn/symbols.ts';
import { designFromLetters } from '../../notation.ts';

const MM_PER_POINT = 25.4 / 72;

function pagesOf(base: Design, parts: PatternPart[], copy: Partial<Copy> = {}, paper: Paper = 'a4'): Page[] {
  const design = { ...base, pattern: { parts } };
  const chart = flatten(design);
  const plan = planStrands(design, chart, { effort: 'quick' });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  return layOutPattern({
    ...{ design, chart, plan: plan.value, materials, units: 'metric' as const },
    paper,
    copy: { ...copyOf(design), cells: 'large', ...copy },
  }).pages;
}

/** But for the foot, which tells nothing that is tied from. */
function textsOn(page: Page): TextItem[] {
  return plainItems(page.items).filter(
    (item): item is TextItem => item.kind === 'text' && item.role !== 'foot',
  );
}

/** A design of many yarns with long names, each in the chart, and of bare cords to the right of them. */
function manyYarns(bareCords = 0): Design {
  const columns = 8 + bareCords;
  const base = designFromLetters(Array.from({ length: 8 }, () => `abcdefgh${'-'.repeat(bareCords)}`));
  const yarns = Array.from({ length: 64 }, (_, i) => ({
    ...base.yarns[0]!,
    id: yarnIdOf(i + 1),
    symbol: alphabet[i]!.text,
    name: `${'Harbour slate with a thread of kelp green, '.repeat(5).slice(0, 190)}${i + 1}`,
  }));
  const rows = Array.from({ length: 8 }, (_, r) =>
    Uint8Array.from({ length: columns }, (_, c) => (c < 8 ? 1 + r * 8 + c : BARE)),
  );
  return { ...base, yarns, layers: [{ ...base.layers[0]!, rows }] };
}

describe('large print', () => {
  const parts: PatternPart[] = ['map', 'chart', 'rows', 'ticks', 'strands'];

  it.each([
    ['en', 'long'],
    ['de', 'compact'],
  ] as const)(
    'has 14 points at least in chart, key, map, rows, ticks and strands (%s)',
    (language, rowsForm) => {
      const pages = pagesOf(lampAtHarrowPoint(), parts, { language, rowsForm });
      expect(new Set(pages.map(({ part }) => part))).toEqual(new Set(parts));
      const small = pages.flatMap((page) =>
        textsOn(page)
          .filter(({ sizeMm }) => sizeMm / MM_PER_POINT < 14)
          .map(({ text, sizeMm }) => `${page.part}: ${text} in ${(sizeMm / MM_PER_POINT).toFixed(1)} points`),
      );
      expect(small).toEqual([]);
    },
  );

  it('has a large key on pages of its own where the pages of cells have room for a small one only', () => {
    const pages = pagesOf(manyYarns(), ['map', 'chart']);
    const [first] = pages;
    expect(first!.title).toBe('Key');
    const keys = pages.filter(({ title }) => title === 'Key').flatMap(textsOn);
    const symbols = pages
      .filter(({ title }) => title === 'Key')
      .flatMap(({ items }) => plainItems(items))
      .flatMap((item) => (item.kind === 'cells' ? Object.values(item.inks).map(({ symbol }) => symbol) : []));
    expect(new Set(symbols).size).toBeGreaterThanOrEqual(64);
    expect(keys.filter(({ text }) => text === '1')).toHaveLength(64);
    for (const { sizeMm } of keys) expect(sizeMm / MM_PER_POINT).toBeGreaterThan(16);
  });
});

describe('the pages that a chart goes on over', () => {
  it.each([
    ['chart', ['reading', 'map', 'chart']],
    ['chart in symbols', ['reading', 'map', 'chart-symbols']],
  ] as const)('are those with cells on the reading page and on the map alike (%s)', (_, parts) => {
    const pages = pagesOf(manyYarns(100), [...parts]);
    const cells = pages.filter(({ part, title }) => part === parts[2] && title !== 'Key').length;
    expect(pages.filter(({ title }) => title === 'Key')).not.toEqual([]);
    const told = (part: PatternPart) =>
      textsOn(pages.find((page) => page.part === part)!)
        .map(({ text }) => text)
        .join(' ');
    expect(told('reading')).toContain(`The chart goes on over ${cells} pages`);
    expect(told('map')).toContain(`The chart stands on ${cells} pages`);
  });
});

describe('rows that are wished beside a chart in large print', () => {
  /** Texts that reach into the margins. */
  function beyond(pages: readonly Page[]): string[] {
    const hair = 0.01;
    return pages.flatMap((page) => {
      const body = bodyOf(page);
      return textsOn(page)
        .filter(({ x, y, text, face, sizeMm, align }) => {
          const width = textWidthMm(text, face, sizeMm);
          const left = x - { left: 0, center: width / 2, right: width }[align] - body.x;
          return left < -hair || left + width > body.width + hair || y - sizeMm * 0.72 < body.y - 2;
        })
        .map(({ text }) => `${page.part}: ${text}`);
    });
  }

  const wished = { rowsBeside: true, rowsForm: 'compact', ink: 'symbols' } as const;

  it.each([
    ['en', 'chart'],
    ['de', 'chart'],
    ['en', 'chart-symbols'],
    ['de', 'chart-symbols'],
  ] as const)(
    'keep the note that they have no room on the paper, apart from all else (%s, %s)',
    (language, part) => {
      const design = designFromLetters(Array.from({ length: 120 }, () => 'ab'.repeat(70)));
      const pages = pagesOf(design, [part, 'rows'], { ...wished, language }, 'letter');
      const charts = pages.filter((page) => page.part === part);
      const said = chartWords[language].notBeside(charts.length + 1);
      for (const page of charts) {
        const texts = textsOn(page);
        expect(texts.map(({ text }) => text).join(' ')).toContain(said);
      }
      expect(beyond(charts)).toEqual([]);
      const found = aboutPages({ pages: charts }, { copy: { cells: 'large' }, own: new Set() });
      expect(found.filter(({ weight }) => weight === 'fault')).toEqual([]);
    },
  );

  it.each(['en', 'de'] as const)(
    'point to their page within the paper where some are too long (%s)',
    (language) => {
      const rows = Array.from({ length: 40 }, (_, row) => (row % 5 === 4 ? 'abcdabcd' : 'aaaabbbb'));
      const design = designFromLetters(rows);
      const pages = pagesOf(design, ['chart', 'rows'], { ...wished, language }, 'letter');
      const charts = pages.filter((page) => page.part === 'chart');
      const forms = chartWords[language].writtenOn(charts.length + 1);
      const pointers = charts.flatMap(textsOn).filter(({ text }) => forms.includes(text));
      expect(pointers).toHaveLength(8);
      expect(beyond(charts)).toEqual([]);
    },
  );
});

describe('the key in large print of a chart with long names', () => {
  it.each([
    ['en', 'long', /^Bare( cord(, no knot)?)?$/],
    ['de', 'long', /^Frei(e Schnur(, kein Knoten)?)?$/],
    ['de', 'compact', /^Frei(e Schnur(, kein Knoten)?)?$/],
  ] as const)('names bare cords in whole words on every page (%s, rows %s)', (language, rowsForm, whole) => {
    const pages = pagesOf(manyYarns(292), ['chart', 'rows'], { language, rowsForm });
    const names = pages
      .filter(({ part }) => part === 'chart')
      .map((page) => textsOn(page).filter(({ text, role }) => /^(Bare|Frei)/.test(text) && role !== 'aside'));
    // Of the key's own pages the last has it, and every page of cells.
    const told = names.slice(names.findIndex((named) => named.length > 0));
    expect(told.length).toBeGreaterThan(2);
    for (const named of told) expect(named.map(({ text }) => text)).toEqual([expect.stringMatching(whole)]);
  });
});

describe('a key of 64 yarns with names of 200 letters', () => {
  it.each(['standard', 'large'] as const)(
    'shows each with its symbol and count, on every page (%s)',
    (cells) => {
      for (const page of pagesOf(manyYarns(), ['chart'], { cells })) {
        if (page.title === 'Key') continue;
        const texts = textsOn(page);
        expect(texts.filter(({ text }) => text.endsWith('…'))).toHaveLength(64);
        expect(texts.filter(({ text, role }) => text === '1' && role !== 'aside')).toHaveLength(64);
        const right = page.widthMm - 16;
        for (const { x, align } of texts) if (align === 'left') expect(x).toBeLessThan(right);
      }
    },
  );
});
