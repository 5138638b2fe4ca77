import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { BARE } from '../../../shared/design/codes.ts';
import { defaults } from '../../../shared/design/defaults.ts';
import type { Design } from '../../../shared/design/design.ts';
import { newDesign } from '../../../shared/design/new-design.ts';
import type { PatternPart } from '../../../shared/design/pattern-schema.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { layOutPattern } from '../../../shared/pattern/lay-out-pattern.ts';
import type { Page, PatternDocument } from '../../../shared/pattern/page/page.ts';
import { plainItems } from '../../../shared/pattern/page/plain-items.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { englishRows, writtenRowPieces, writtenRows } from '../../../shared/tying/rows/written-rows.ts';
import type { Units } from '../../../shared/units/units.ts';
import { alphabet } from '../../../shared/yarn/symbols.ts';
import { designFromLetters } from '../../notation.ts';

function laidOut(design: Design, units: Units = 'metric'): PatternDocument {
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  return layOutPattern({ design, chart, plan: plan.value, materials, paper: 'a4', units });
}

function pagesNamed(document: PatternDocument, title: string): Page[] {
  return document.pages.filter((page) => page.title.startsWith(title));
}

function texts(pages: readonly Page[]): string[] {
  return pages.flatMap(({ items }) =>
    plainItems(items).flatMap((item) => (item.kind === 'text' ? [item.text] : [])),
  );
}

/** All text of the pages as one line, for what may be broken over lines. */
function running(pages: readonly Page[]): string {
  return texts(pages).join(' ');
}

function manyYarns(count: number, name: (i: number) => string): Design {
  const yarns = Array.from({ length: count }, (_, i) => ({
    ...defaults.yarns[0]!,
    id: `y${i + 1}` as const,
    name: name(i),
    symbol: alphabet[i]!.text,
  }));
  const design = newDesign({ title: 'Many', columns: count, rows: 30, yarns });
  const row = Uint8Array.from({ length: count }, (_, c) => c + 1);
  return { ...design, layers: [{ ...design.layers[1]!, rows: Array.from({ length: 30 }, () => row) }] };
}

describe('the cover', () => {
  it('tells title, designer, size, cords and rows, yarns and time', () => {
    const design = designFromLetters(['aab', 'baa'], { title: 'Two terns', designer: 'Ines Marlow' });
    const all = texts(pagesNamed(laidOut(design), 'Cover'));
    expect(all).toEqual(
      expect.arrayContaining(['Two terns', 'designed by Ines Marlow', '1.5 cm × 9.6 mm', '3 × 2', '2']),
    );
    expect(all.some((text) => /^about \d+ /.test(text))).toBe(true);
  });

  it('names one unit once where it is the same', () => {
    const all = texts(pagesNamed(laidOut(newDesign({ title: 'x', columns: 40, rows: 48 })), 'Cover'));
    expect(all).toContain('20 × 23 cm');
  });

  it('leaves the designer out where there is none', () => {
    expect(running(pagesNamed(laidOut(designFromLetters(['ab'])), 'Cover'))).not.toContain('designed by');
  });
});

describe('the materials page', () => {
  it('says that an estimate is one, and with which tails and margin it was reckoned', () => {
    const all = running(pagesNamed(laidOut(designFromLetters(['aab', 'baa'])), 'Materials'));
    expect(all).toContain('an estimate from the thickness of cord and yarn (± 20 %)');
    expect(all).toContain('a tail of 6.5 cm at each end');
    expect(all).toContain('a margin of 10 %');
    expect(all).toContain('All yarns: 2 mm thick, 100 m to a skein.');
  });

  it('tells the ± of the materials, and each kind of yarn by itself', () => {
    const design = designFromLetters(['aab', 'bac']);
    const [first, second, third, ...others] = design.yarns;
    const of: Design = { ...design, yarns: [first!, { ...second!, diameterMm: 3 }, third!, ...others] };
    const chart = flatten(of);
    const plan = planStrands(of, chart);
    if (!plan.ok) throw new Error(plan.problem.sentence);
    const { finished, totals } = materialsOf(of, chart, plan.value);
    const all = running(pagesNamed(laidOut(of), 'Materials'));
    const percent = (share: number) => `(± ${Math.ceil(share * 100)} %)`;
    expect(all).toContain(`cord and yarn ${percent(finished.uncertain.widthMm.share)}`);
    expect(all).toContain(`an estimate ${percent(totals.uncertain.yarnUsedMm.share)}, not yet measured`);
    expect(all).toContain(`${first!.name}, ${third!.name}: 2 mm thick, 100 m to a skein.`);
    expect(all).toContain(`${second!.name}: 3 mm thick, 100 m to a skein.`);
  });

  it('says that a gauge was measured where it was', () => {
    const swatches = [{ widthMm: 100, cords: 20, heightMm: 100, rows: 21 }];
    const all = running(pagesNamed(laidOut(designFromLetters(['aab'], { swatches })), 'Materials'));
    expect(all).toContain('Gauge, measured on a swatch: 20 cords across and 21 rows down to 10 cm.');
  });

  it('tells what to do with the spare leg of an odd number of cords', () => {
    expect(running(pagesNamed(laidOut(designFromLetters(['aab'])), 'Materials'))).toContain(
      'one leg too many',
    );
    expect(running(pagesNamed(laidOut(designFromLetters(['aabb'])), 'Materials'))).not.toContain('one leg');
  });

  it('shows both units where both are asked for', () => {
    const all = running(pagesNamed(laidOut(designFromLetters(['aabb']), 'both'), 'Materials'));
    expect(all).toMatch(/dowel 12 mm \(1\/2 in\) thick/);
  });

  it('goes on over pages with the heads of its table on each, and tells the longest names in full', () => {
    const name = (i: number) => `Πράσινο της ελιάς ${'στον ήλιο '.repeat(16)}${i}`;
    const pages = pagesNamed(laidOut(manyYarns(64, name)), 'Materials');
    expect(pages.length).toBeGreaterThan(2);
    expect(pages.length).toBeLessThan(8);
    const withYarns = pages.filter((page) => plainItems(page.items).some((item) => item.kind === 'cells'));
    for (const page of withYarns) expect(texts([page])).toContain('strands');
    const words = running(pages);
    for (let i = 0; i < 64; i++) expect(words).toContain(`${name(i)} 30`);
    expect(words).not.toContain('…');
  });
});

describe('the written rows', () => {
  it('are every row, word for word, with a box to tick for each', () => {
    const design = designFromLetters([
      'aaaaaaaaaaaaaaaabbbbbbbbbbbbbbccccccccccccddddd',
      'abcdabcdabcdabcdabcdabcdabcdabcdabcdabcd--abcda',
      '-----------------------------------------------',
    ]);
    const pages = pagesNamed(laidOut(design), 'Written rows');
    const words = running(pages);
    const names = new Map(design.yarns.map((yarn) => [yarn.id, yarn]));
    for (const row of writtenRows(flatten(design), names))
      expect(words).toContain(writtenRowPieces(row, englishRows, '–').join(' '));
    const boxes = pages.flatMap(({ items }) => plainItems(items)).filter((item) => item.kind === 'box');
    expect(boxes).toHaveLength(3);
  });

  it('never part a count from its yarn at the end of a line', () => {
    const row = 'abcdefabcdefabcdefabcdefabcdefabcdefabcdefabcdefabcdef';
    const pages = pagesNamed(laidOut(designFromLetters([row, row])), 'Written rows');
    const goingOn = texts(pages).filter((text) => !text.startsWith('Row'));
    expect(goingOn.length).toBeGreaterThan(6);
    for (const text of goingOn) expect(text).not.toMatch(/^(Linen|Dusk|Tide|Apricot|Madder|Coal)\b|^\(/);
  });

  it('shorten long names, so that none are alike, and say so', () => {
    const pages = pagesNamed(
      laidOut(manyYarns(4, (i) => `${'Linen of the long shore '.repeat(4)}${i}`)),
      'Written rows',
    );
    const words = running(pages);
    expect(words).toContain('Long names of yarns are shortened here');
    for (const symbol of alphabet.slice(0, 4))
      expect(words).toContain(`Linen of the long shore… ${symbol.text} (`);
  });

  it('of 2,000 rows are all there', () => {
    const pages = pagesNamed(laidOut(newDesign({ title: 'Long', columns: 3, rows: 2000 })), 'Written rows');
    const heads = texts(pages).filter((text) => /^Row \d+, /.test(text));
    expect(heads).toHaveLength(2000);
    expect(heads.at(-1)).toBe('Row 2000, right to left:');
  });
});

describe('the page on reading the chart', () => {
  it('explains bare cells and joins only where there are any', () => {
    const small = running(pagesNamed(laidOut(designFromLetters(['aab'])), 'How to read'));
    expect(small).not.toContain('diamond');
    expect(small).not.toContain('hatched');
    const rows = Array.from({ length: 90 }, () => new Uint8Array(90).fill(BARE));
    const design = newDesign({ title: 'Bare', columns: 90, rows: 90 });
    const large = running(
      pagesNamed(laidOut({ ...design, layers: [{ ...design.layers[1]!, rows }] }), 'How to read'),
    );
    expect(large).toContain('diamond');
    expect(large).toContain('hatched');
  });

  it('starts row 1 at the start corner', () => {
    const design = designFromLetters(['aab'], { startCorner: 'top-right' });
    expect(running(pagesNamed(laidOut(design), 'How to read'))).toContain('Row 1 goes right to left');
  });
});

describe('a pattern', () => {
  it('names page and pages at the foot of every page but the cover', () => {
    const { pages } = laidOut(designFromLetters(['aab', 'baa']));
    pages.slice(1).forEach((page, i) => {
      expect(texts([page])).toContain(`page ${i + 2} of ${pages.length}`);
    });
  });

  it('notices a gauge too odd for paper', () => {
    const swatches = [{ widthMm: 1000, cords: 10, heightMm: 100, rows: 100 }];
    expect(laidOut(designFromLetters(['aab'], { swatches })).notices).toHaveLength(1);
    expect(laidOut(designFromLetters(['aab'])).notices).toEqual([]);
  });
});

describe('the order of work', () => {
  it('tells how far a yarn may hang to be picked up, as the plan has it, and where a page tells which', () => {
    const design = designFromLetters(['aab', 'baa']);
    const { carryMaxCords, carryMaxRows } = design.tying;
    const order = (parts?: PatternPart[]) =>
      running(pagesNamed(laidOut({ ...design, ...(parts && { pattern: { parts } }) }), 'How to read'));
    expect(order()).toContain(`if it hangs at most ${carryMaxCords} cords and ${carryMaxRows} rows away`);
    expect(order()).not.toContain('The page on strands');
    expect(order(['reading', 'strands'])).toContain('The page on strands says which to take');
  });
});
