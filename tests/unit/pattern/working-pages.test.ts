/** The pages that lie beside the work: tick sheet, cut list and strands. Their figures are the plan's. */
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import type { Language, PatternPart } from '../../../shared/design/pattern-schema.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { copyOf } from '../../../shared/pattern/copy.ts';
import { layOutPattern } from '../../../shared/pattern/lay-out-pattern.ts';
import type { Item, PlainItem } from '../../../shared/pattern/page/page.ts';
import { plainItems } from '../../../shared/pattern/page/plain-items.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { formatTime } from '../../../shared/units/time.ts';
import { designFromLetters } from '../../notation.ts';

function printed(design: Design, part: PatternPart, language: Language = 'en') {
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  const { pages } = layOutPattern({
    design: { ...design, pattern: { parts: [part] } },
    chart,
    plan: plan.value,
    materials,
    paper: 'a4',
    units: 'metric',
    copy: { ...copyOf(design), language },
  });
  const items = pages.map((page) => page.items);
  return { items, texts: textsOf(items.flat()), plan: plan.value, materials };
}

function textsOf(items: readonly Item[]): string[] {
  return plainItems(items).flatMap((item) => (item.kind === 'text' ? [item.text] : []));
}

function boxesIn(items: readonly Item[]): PlainItem[] {
  return plainItems(items).filter(({ kind }) => kind === 'box');
}

/** Cells of the tables of a page, row by row, each cell's texts as one. */
function tableRows(items: readonly Item[]): string[][] {
  return items.flatMap((item) => {
    if (item.kind !== 'group') return [];
    if (item.structure !== 'row') return tableRows(item.items);
    return [item.items.map((cell) => textsOf([cell]).join(' '))];
  });
}

/** '1–3, 5' as 1, 2, 3, 5. */
function numbersIn(list: string): number[] {
  return list.split(', ').flatMap((each) => {
    const [from, to = from] = each.split('–').map(Number) as [number, number?];
    return Array.from({ length: to - from + 1 }, (_, i) => from + i);
  });
}

describe('the tick sheet', () => {
  it('has a box for each row that is tied, and none for a bare one', () => {
    const { items, texts } = printed(designFromLetters(['aa', '--', 'bb']), 'ticks');
    expect(boxesIn(items.flat())).toHaveLength(2);
    expect(texts).toEqual(expect.arrayContaining(['1', '2', '3']));
    expect(texts.join(' ')).toContain('A row without a box has no knot.');
    const tied = printed(designFromLetters(['aa', 'bb']), 'ticks');
    expect(tied.texts.join(' ')).not.toContain('without a box');
  });

  it('tells after each ten rows what is tied', () => {
    const rows = Array.from({ length: 25 }, () => 'aaaa');
    const { items } = printed(designFromLetters(rows), 'ticks');
    const lines = tableRows(items.flat()).slice(1);
    expect(lines.map(([numbers]) => numbers!.split(' ').length)).toEqual([10, 10, 5]);
    expect(lines.map(([, knots, share]) => [knots, share])).toEqual([
      ['40', '40 %'],
      ['80', '80 %'],
      ['100', '100 %'],
    ]);
  });

  it('never says that all is tied before it is', () => {
    const rows = [...Array.from({ length: 10 }, () => 'a'.repeat(100)), `${'-'.repeat(99)}a`];
    const { items } = printed(designFromLetters(rows), 'ticks');
    expect(tableRows(items.flat())[1]![2]).toBe('99 %');
  });

  it('counts times that add up to the time of the whole hanging', () => {
    // Rates that are whole minutes, so that nothing is rounded.
    const design = designFromLetters(['aabb', 'aabb'], {
      rates: {
        ...designFromLetters(['a']).rates,
        secondsPerKnot: 60,
        secondsPerPiece: 120,
        secondsPerRow: 180,
        secondsPerMount: 240,
        secondsPerLooseEnd: 300,
        secondsToFinish: 600,
      },
    });
    const { items, texts, plan, materials } = printed(design, 'ticks');
    // Two cut cords at 4 min; eight knots, two rows at 3 min, and 2 min for each piece.
    const tiedMinutes = 2 * 4 + 8 + 2 * 3 + plan.totals.pieces * 2;
    const afterMinutes = plan.totals.looseEnds * 5 + 10;
    expect(materials.totals.seconds).toBe((tiedMinutes + afterMinutes) * 60);
    expect(tableRows(items.flat())[1]![3]).toBe(formatTime(tiedMinutes * 60));
    expect(texts.join(' ')).toContain('cut and mount the cords, about 8 min');
    expect(texts.join(' ')).toContain(`fringe and finishing, about ${formatTime(afterMinutes * 60)}.`);
  });

  it('goes on with its heads on the next page', () => {
    const { items } = printed(designFromLetters(Array.from({ length: 400 }, () => 'a')), 'ticks');
    expect(items.length).toBeGreaterThan(1);
    for (const page of items) expect(textsOf(page)).toContain('knots tied');
    expect(boxesIn(items.flat())).toHaveLength(400);
  });
});

describe('the cut list', () => {
  const design = designFromLetters(
    Array.from({ length: 12 }, () => 'aaaaaaabbaaaaaa'),
    { fringe: { shape: 'v', longMm: 400, shortMm: 100 } },
  );

  it('has a line with a box for each length of cord and each yarn', () => {
    const { items, materials } = printed(design, 'cut-list');
    const [cordHeads, ...lines] = tableRows(items.flat());
    const cords = lines.slice(0, materials.cords.groups.length);
    expect(cordHeads).toContain('for cords');
    expect(cords.length).toBeGreaterThan(1);
    expect(cords.map((line) => Number(line[2])).reduce((a, b) => a + b)).toBe(materials.cords.cutCords);
    const yarns = lines.slice(cords.length + 1);
    expect(yarns.map((line) => [line[2], Number(line[3])])).toEqual(
      materials.yarns.map(({ name, pieces }) => [name, pieces]),
    );
    // A swatch has a frame, which is a box too.
    expect(boxesIn(items.flat())).toHaveLength(cords.length + 2 * yarns.length);
  });

  it('cuts all pieces alike unless the designer cuts to measure, and then numbers them', () => {
    const alike = printed(design, 'cut-list').texts.join(' ');
    expect(alike).toContain('All pieces are cut alike, 152.4 cm');
    expect(alike).not.toContain('Which piece is which');
    const fitted = printed({ ...design, bundles: { fitted: true } }, 'cut-list');
    expect(fitted.texts.join(' ')).toContain('with 10 % to spare, up to the next 5 cm');
    const listed = fitted.texts.slice(fitted.texts.indexOf('Which piece is which'));
    // Each piece stands in one bundle, once.
    for (const { name, pieces } of fitted.materials.yarns) {
      const [first, ...rest] = listed.slice(listed.indexOf(name) + 1);
      const end = rest.findIndex((text) => !/^[0-9.]+ cm: /.test(text));
      const bundles = [first!, ...rest.slice(0, end === -1 ? rest.length : end)];
      const numbers = bundles.flatMap((text) => numbersIn(text.split(': ')[1]!));
      expect(numbers.sort((a, b) => a - b)).toEqual(Array.from({ length: pieces }, (_, i) => i + 1));
    }
  });

  it('has no yarn where nothing is tied', () => {
    const { texts } = printed(designFromLetters(['--', '--']), 'cut-list');
    expect(texts).not.toContain('Yarn');
    expect(texts).toContain('Cord');
  });
});

describe('the strands, row by row', () => {
  const rows = ['aabb', 'aabb', 'aaaa', 'aaaa', 'aaab'];

  it('tell attaching and ending, and leave out rows in which the yarn in hand goes on', () => {
    const { texts } = printed(designFromLetters(['aaaa', 'aaaa', 'aaaa', 'bbbb']), 'strands');
    const heads = texts.filter((text) => /^Row \d+:/.test(text));
    expect(heads).toEqual(['Row 1:', 'Row 3:', 'Row 4:']);
    expect(texts.join(' ')).toContain('Row 1: attach Linen, piece 1, at 1');
    expect(texts.join(' ')).toContain('Row 3: end Linen, piece 1, at 4');
  });

  it('tell each piece once as it is attached or joined', () => {
    const { texts, plan } = printed(designFromLetters(rows), 'strands');
    const begun = texts.join(' ').match(/(?:attach|join) \w+, piece \d+/g) ?? [];
    expect(begun).toHaveLength(plan.totals.pieces);
    expect(new Set(begun).size).toBe(plan.totals.pieces);
  });

  it('are told in German in a German pattern', () => {
    const words = printed(designFromLetters(rows), 'strands', 'de').texts.join(' ');
    expect(words).toContain('Reihe 1: Linen, Stück 1, an 1 ansetzen');
    expect(words).not.toMatch(/\b(Row|attach|piece|end)\b/);
  });

  it('have no page where nothing is tied', () => {
    expect(printed(designFromLetters(['--']), 'strands').items).toEqual([]);
  });
});
