/** One chart in the copies that it is sold in: languages, inks, sizes of print, hands. */
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { lampAtHarrowPoint } from '../../../shared/demos/lamp-at-harrow-point.ts';
import type { Design } from '../../../shared/design/design.ts';
import type { PatternPart } from '../../../shared/design/pattern-schema.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { type Copy, copyOf, designForCopy } from '../../../shared/pattern/copy.ts';
import { layOutPattern } from '../../../shared/pattern/lay-out-pattern.ts';
import type { CellsItem, Page, TextItem } from '../../../shared/pattern/page/page.ts';
import { plainItems } from '../../../shared/pattern/page/plain-items.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../notation.ts';

const lamp = lampAtHarrowPoint();

function pagesOf(
  base: Design,
  wished: Partial<Copy>,
  parts: PatternPart[] = ['map', 'chart', 'chart-symbols'],
): Page[] {
  const drawn = { ...base, pattern: { parts } };
  const copy = { ...copyOf(drawn), ...wished };
  const design = designForCopy(drawn, copy);
  const chart = flatten(design);
  const plan = planStrands(design, chart, { effort: 'quick' });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  return layOutPattern({ design, chart, plan: plan.value, materials, paper: 'a4', units: 'metric', copy })
    .pages;
}

function textsOn(page: Page): TextItem[] {
  return plainItems(page.items).filter((item): item is TextItem => item.kind === 'text');
}

function blockOn(page: Page): CellsItem {
  return plainItems(page.items).find(
    (item): item is CellsItem => item.kind === 'cells' && Boolean(item.alt),
  )!;
}

function figure(text: string): number {
  return Number(text.replace(/^· (.+) here$/, '$1').replaceAll(',', ''));
}

const ofPart = (pages: readonly Page[], part: PatternPart) => pages.filter((page) => page.part === part);

describe('the chart of a copy', () => {
  it('has cells of 4 mm at least, in large print of 6 mm, with larger numbers and key, on more pages', () => {
    const standard = pagesOf(lamp, {}, ['chart']);
    const large = pagesOf(lamp, { cells: 'large' }, ['chart']);
    for (const page of standard) expect(blockOn(page).cellWidth).toBeGreaterThanOrEqual(4 - 1e-9);
    for (const page of large) expect(blockOn(page).cellWidth).toBeGreaterThanOrEqual(6 - 1e-9);
    expect(large.length).toBeGreaterThan(standard.length);
    const sizeOf = (pages: Page[], text: string) =>
      textsOn(pages[0]!).find((item) => item.text === text)!.sizeMm;
    for (const text of ['10', 'Madder'])
      expect(sizeOf(large, text) / sizeOf(standard, text)).toBeGreaterThan(1.35);
  });

  it('has its key on every page, with the knots that the page adds beside those of the whole chart', () => {
    const sums = new Map<string, number>();
    const totals = new Map<string, number>();
    for (const page of ofPart(pagesOf(lamp, {}), 'chart')) {
      const texts = textsOn(page);
      expect(texts.map(({ text }) => text)).toContain('Lift mark: a new yarn');
      for (const { name } of lamp.yarns) {
        const named = texts.find(({ text }) => text === name)!;
        const [count, here] = texts
          .filter(({ x, y }) => y === named.y && x > named.x && x < named.x + 40)
          .map(({ text }) => figure(text));
        totals.set(name, count!);
        sums.set(name, (sums.get(name) ?? 0) + (here ?? 0));
      }
    }
    // What two pages show is counted once.
    expect(sums).toEqual(totals);
    expect(totals.get('Linen')).toBe(2171);
  });

  it('leaves the count of the page out of the key where the page adds no knot of a yarn', () => {
    const rows = Array.from({ length: 90 }, (_, row) => (row === 0 ? 'b' : 'a').repeat(20));
    const [first, second] = ofPart(pagesOf(designFromLetters(rows), {}), 'chart');
    const counts = (page: Page) => textsOn(page).filter(({ text }) => / here$/.test(text));
    expect(counts(first!)).toHaveLength(2);
    expect(counts(second!)).toHaveLength(1);
  });

  it('is read aloud with its key once, and passed over after that', () => {
    const [first, second] = ofPart(pagesOf(lamp, {}), 'chart');
    const roleOf = (page: Page) => textsOn(page).find(({ text }) => text === 'Linen')?.role;
    expect(roleOf(first!)).toBeUndefined();
    expect(roleOf(second!)).toBe('again');
  });

  it('speaks German in a German copy', () => {
    const [map, page] = pagesOf(lamp, { language: 'de' });
    expect(textsOn(map!)[0]!.text).toBe('Übersicht des Zählmusters');
    const texts = textsOn(page!).map(({ text }) => text);
    expect(texts).toEqual(
      expect.arrayContaining(['Zählmuster', 'Legende', 'Seiten', 'Hebemarke: neues Garn', '2.171']),
    );
    expect(blockOn(page!).alt).toContain('Reihen 1 bis ');
  });

  it('is white in symbols, with the yarns’ colours in the key and greys on the map', () => {
    const pages = pagesOf(lamp, { ink: 'symbols' });
    expect(ofPart(pages, 'chart-symbols')).toEqual([]);
    const [page] = ofPart(pages, 'chart');
    expect(new Set(Object.values(blockOn(page!).inks).map(({ fill }) => fill))).toEqual(new Set(['#ffffff']));
    const boxes = plainItems(page!.items).flatMap((item) => (item.kind === 'box' ? [item.fill] : []));
    expect(boxes).toEqual(expect.arrayContaining(lamp.yarns.map(({ color }) => color)));
    const small = plainItems(pages[0]!.items).find((item) => item.kind === 'cells')!;
    const greys = Object.values(small.inks).map(({ fill }) => fill);
    expect(new Set(greys).size).toBeGreaterThan(3);
    for (const grey of greys) expect(grey).toMatch(/^#(..)\1\1$/);
  });

  it('stands in symbols besides, where that is wished', () => {
    const pages = pagesOf(lamp, {});
    const [colour, symbols] = [ofPart(pages, 'chart'), ofPart(pages, 'chart-symbols')];
    expect(symbols).toHaveLength(colour.length);
    expect(symbols[0]!.title).toContain('Chart in symbols, rows 1–');
    expect(blockOn(symbols[0]!).codes).toEqual(blockOn(colour[0]!).codes);
  });

  it('has the rows written beside it where there is room, with counts that add up to the cords', () => {
    const design = designFromLetters(['aabba', 'aabb.', 'ccccc']);
    const [page] = pagesOf(design, { rowsBeside: true }, ['chart']);
    const block = blockOn(page!);
    const right = block.x + block.columns * block.cellWidth;
    const texts = textsOn(page!);
    const told = (row: number) => {
      const level = block.y + (row - 0.5) * block.cellHeight;
      return texts
        .filter(({ x, y, role }) => x > right && !role && Math.abs(y - level) < block.cellHeight / 2)
        .filter(({ face }) => face === 'sans')
        .map(({ text }) => text);
    };
    // Behind the semicolon are the cords to lift.
    expect(told(1)).toEqual(['2', '2', '1', '; 3', '5']);
    expect(told(2)).toEqual(['1 bare', '2', '2', '; 4', '2']);
    expect(told(3)).toEqual(['5']);
  });

  it.each([
    ['en', 'no room for rows beside the chart: written on page 2 and after'],
    ['de', 'kein Platz für Reihen daneben: ausgeschrieben ab Seite 2'],
  ] as const)('says where its rows stand where they have no room beside it (%s)', (language, said) => {
    const design = designFromLetters(['ab'.repeat(20)]);
    const [page] = pagesOf(design, { rowsBeside: true, language }, ['chart', 'rows']);
    const words = textsOn(page!)
      .map(({ text }) => text)
      .join(' ');
    expect(words).toContain(said);
    expect(
      textsOn(pagesOf(design, { language }, ['chart', 'rows'])[0]!)
        .map(({ text }) => text)
        .join(' '),
    ).not.toContain(said);
  });

  it('takes no more pages for the rows beside it', () => {
    const plain = pagesOf(lamp, {}, ['chart']);
    expect(pagesOf(lamp, { rowsBeside: true }, ['chart']).length).toBeLessThanOrEqual(plain.length);
  });
});

describe('the map of a chart', () => {
  it('shows every page by its number, which leads there, and the rows and cords it holds', () => {
    const pages = pagesOf(lamp, {});
    const [map] = ofPart(pages, 'map');
    const links = textsOn(map!).flatMap(({ text, link }) => (link ? [[text, link]] : []));
    const numbers = pages.flatMap((page, i) => (page.part === 'chart' ? [i + 1] : []));
    expect(links).toEqual(numbers.map((number) => [String(number), number]));
    expect(textsOn(map!).some(({ text }) => /^rows 1–\d+$/.test(text))).toBe(true);
    expect(textsOn(map!).some(({ text }) => /^cords 1–\d+$/.test(text))).toBe(true);
  });

  it('is left out where the chart stands on one page, or is not printed', () => {
    expect(ofPart(pagesOf(designFromLetters(['ab']), {}), 'map')).toEqual([]);
    expect(pagesOf(lamp, {}, ['map', 'care']).map(({ part }) => part)).toEqual(['care']);
  });

  it('is of the chart in symbols where only that is printed', () => {
    const pages = pagesOf(lamp, { ink: 'symbols' }, ['map', 'chart-symbols']);
    expect(ofPart(pages, 'map')).toHaveLength(1);
    expect(ofPart(pages, 'chart-symbols').length).toBeGreaterThan(1);
  });
});
