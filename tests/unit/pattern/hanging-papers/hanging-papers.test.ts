import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { newDesign } from '../../../../shared/design/new-design.ts';
import type { Materials } from '../../../../shared/materials/materials.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { backingOf } from '../../../../shared/pattern/hanging-papers/backing.ts';
import {
  type HangingPaper,
  hangingPapers,
} from '../../../../shared/pattern/hanging-papers/hanging-papers.ts';
import { layOutHangingPapers } from '../../../../shared/pattern/hanging-papers/lay-out-hanging-papers.ts';
import { emptyImprint } from '../../../../shared/pattern/imprint.ts';
import type { Page, PatternDocument } from '../../../../shared/pattern/page/page.ts';
import { plainItems } from '../../../../shared/pattern/page/plain-items.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { formatMass } from '../../../../shared/units/mass.ts';

const lamp = newDesign({ title: 'Lamp', columns: 60, rows: 70, designer: 'Ines Marlow' });
const imprint = {
  ...emptyImprint,
  accent: '#1f3f7a',
  workshop: 'Workshop at the Weir',
  contact: ['hello@weir.example'],
};

function papersOf(
  design: Design,
  ...which: HangingPaper[]
): { document: PatternDocument; materials: Materials; words: string } {
  const chart = flatten(design);
  const plan = planStrands(design, chart, { effort: 'quick' });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  const input = { design, chart, plan: plan.value, materials, imprint } as const;
  const document = layOutHangingPapers({ ...input, paper: 'a4', units: 'metric' }, which);
  return { document, materials, words: document.pages.map(wordsOf).join(' ') };
}

function wordsOf({ items }: Page): string {
  return plainItems(items)
    .map((item) => (item.kind === 'text' ? item.text : ''))
    .join(' ');
}

describe('the papers of a finished hanging', () => {
  it('stand in their usual order, each once, whatever order was asked for', () => {
    const { document } = papersOf(lamp, 'packing-note', 'care-card', 'packing-note', 'price-tag');
    expect(document.pages.map(({ title }) => title)).toEqual(['Care card', 'Price tag', 'Packing note']);
  });

  it('are in the language of the copy', () => {
    const german = { ...lamp, pattern: { copy: { language: 'de' as const } } };
    const { document } = papersOf(german, ...hangingPapers);
    expect(document.language).toBe('de');
    expect(document.pages[0]!.title).toBe('Pflegekarte');
  });
});

describe('the care card', () => {
  it('warns of fire and of cords that strangle, on each of four cards', () => {
    const { words } = papersOf(lamp, 'care-card');
    expect(words.match(/Natural fibre burns/g)).toHaveLength(4);
    expect(words.match(/Cords can strangle/g)).toHaveLength(4);
    expect(words.match(/made by Workshop at the Weir/g)).toHaveLength(4);
  });

  it('has room for all of it in German on a quarter of a Letter sheet, under the longest title', () => {
    const title = 'Der lange Strand bei Harrow Point '.repeat(6).slice(0, 200).trim();
    const design = { ...lamp, title, pattern: { copy: { language: 'de' as const } } };
    const chart = flatten(design);
    const plan = planStrands(design, chart, { effort: 'quick' });
    if (!plan.ok) throw new Error(plan.problem.sentence);
    const materials = materialsOf(design, chart, plan.value);
    const contact = Array.from({ length: 8 }, (_, i) => `Zeile ${i + 1}`);
    const document = layOutHangingPapers(
      {
        design,
        chart,
        plan: plan.value,
        materials,
        paper: 'letter',
        units: 'both',
        imprint: { ...imprint, contact },
      },
      ['care-card'],
    );
    const words = wordsOf(document.pages[0]!);
    expect(words.match(/strangulieren/g)).toHaveLength(4);
    expect(words.match(/Zeile 8/g)).toHaveLength(4);
  });
});

describe('the care card of a designer who has written on care', () => {
  it('warns first of what the designer warns of, and then of what holds for every hanging', () => {
    const { words } = papersOf(
      { ...lamp, pattern: { texts: { cautions: 'Bees: They love it.' } } },
      'care-card',
    );
    expect(words).toContain('Bees They love it.');
    expect(words.indexOf('Bees')).toBeLessThan(words.indexOf('Dust'));
    expect(words).toContain('Natural fibre burns');
  });

  const written = (care: string) => papersOf({ ...lamp, pattern: { texts: { care } } }, 'care-card');

  it('tells it in the designer’s words, and warns of fire and cords all the same', () => {
    const { words, document } = written('Moths: Air it in spring.\nIt likes cool and dry rooms.');
    expect(words.match(/Moths Air it in spring\. +It likes cool and dry rooms\./g)).toHaveLength(4);
    expect(words).not.toContain('Shake it outdoors');
    expect(words.match(/Natural fibre burns/g)).toHaveLength(4);
    expect(words.match(/made by Workshop at the Weir/g)).toHaveLength(4);
    expect(document.notices).toEqual([]);
  });

  it('has nothing on keeping it where the designer has left that out', () => {
    const { words, document } = written('');
    expect(words).not.toContain('Dust');
    expect(words).toContain('Natural fibre burns');
    expect(document.notices).toEqual([]);
  });

  it('ends at a whole sentence where there is no room for more, and says so', () => {
    const sentences = Array.from({ length: 60 }, (_, i) => `Air it well in week ${i + 1} of each year.`);
    const { words, document } = written(`Moths: ${sentences.join(' ')}\nDust: Shake it.`);
    const kept = words.match(/Air it well in week \d+ of each year\./g)!.length / 4;
    expect(kept).toBeGreaterThan(5);
    expect(kept).toBeLessThan(60);
    expect(words).not.toContain('Shake it');
    expect(words).not.toContain('…');
    expect(words.match(/Cords can strangle/g)).toHaveLength(4);
    expect(words.match(/hello@weir\.example/g)).toHaveLength(4);
    expect(document.notices).toEqual([
      `The care card has no room for all of the text on care: it goes as far as “Air it well in week ${kept} of each year.”. Put what matters most first, in short sentences.`,
    ]);
  });

  it('leaves out a single sentence that is longer than the card', () => {
    const { words, document } = written(`Moths: ${'air it well and often '.repeat(80)}`);
    expect(words).not.toContain('Moths');
    expect(document.notices.at(-1)).toContain('none of it stands there');
  });
});

describe('the fibre label', () => {
  it('tells the fibres that the design tells', () => {
    const labels = { cordFibre: '100 % cotton', yarnFibre: '80 % wool, 20 % linen' };
    const { words } = papersOf({ ...lamp, pattern: { labels } }, 'fibre-label');
    expect(words).toContain('Cord 100 % cotton Yarn 80 % wool, 20 % linen');
    expect(words).toContain('ruled by law where you sell');
  });

  it('leaves a line to write on where nothing is told', () => {
    const rules = (design: Design) =>
      papersOf(design, 'fibre-label').document.pages.flatMap(({ items }) =>
        plainItems(items).filter((item) => item.kind === 'rule'),
      ).length;
    const labels = { cordFibre: '100 % cotton', yarnFibre: '100 % wool' };
    // Two lines on each of nine labels.
    expect(rules(lamp) - rules({ ...lamp, pattern: { labels } })).toBe(18);
  });
});

describe('the price tag', () => {
  const prices = {
    currency: 'EUR',
    cordPricePerM: 0.2,
    dowelPrice: 4,
    backingPrice: 3,
    patternFees: 0,
    hourlyRate: 10,
    overheadShare: 0.1,
  };

  it('has the retail price of the materials', () => {
    const priced = { ...lamp, money: prices, yarns: lamp.yarns.map((yarn) => ({ ...yarn, price: 3.5 })) };
    const { words, materials } = papersOf(priced, 'price-tag');
    expect(materials.cost.retail.whole).toBe(true);
    expect(words).toContain(`${materials.cost.retail.amount.toFixed(2)} EUR`);
  });

  it('has none that rests on something untold', () => {
    const { words, materials } = papersOf({ ...lamp, money: prices }, 'price-tag');
    expect(materials.cost.retail.whole).toBe(false);
    expect(words).not.toContain('EUR');
  });
});

describe('the backing', () => {
  it('is smaller than the picture on all sides, with marks from corner to corner', () => {
    const backing = backingOf({ widthMm: 300, knottedHeightMm: 336 })!;
    expect([backing.widthMm, backing.heightMm]).toEqual([288, 324]);
    const { marks, top, side } = backing;
    expect(marks).toHaveLength(top.count + 2 * (side.count - 1));
    for (const corner of [
      [0, 0],
      [288, 0],
      [0, 324],
      [288, 324],
    ]) {
      expect(
        marks.some(({ x, y }) => Math.abs(x - corner[0]!) < 1e-9 && Math.abs(y - corner[1]!) < 1e-9),
      ).toBe(true);
    }
    expect(top.apartMm * (top.count - 1)).toBeCloseTo(288, 9);
    expect(side.apartMm).toBeLessThan(90);
  });

  it('is none for a picture that it would not cover', () => {
    expect(backingOf({ widthMm: 20, knottedHeightMm: 400 })).toBeNull();
  });

  it('in true size has an outline whose pieces on all sheets add up to its own', () => {
    const { document, materials } = papersOf(lamp, 'backing-tiles');
    const backing = backingOf(materials.finished)!;
    const outlineMm = document.pages
      .flatMap(({ items }) => plainItems(items))
      .filter((item) => item.kind === 'path' && item.strokeMm === 0.4 && item.stroke === '#26231f')
      .flatMap((item) => (item.kind === 'path' ? item.steps : []))
      .reduce(
        ({ sum, at }, step) => {
          if (step[0] !== 'M' && step[0] !== 'L') return { sum, at };
          const length = step[0] === 'L' ? Math.hypot(step[1] - at[0]!, step[2] - at[1]!) : 0;
          return { sum: sum + length, at: [step[1], step[2]] };
        },
        { sum: 0, at: [0, 0] },
      ).sum;
    expect(document.pages.length).toBeGreaterThan(1);
    expect(outlineMm).toBeCloseTo(2 * (backing.widthMm + backing.heightMm), 3);
  });

  it('is not printed in true size on more sheets than anybody tapes together, and says so', () => {
    const large = newDesign({ title: 'Large', columns: 400, rows: 300 });
    const { document } = papersOf(large, 'backing-tiles');
    expect(document.pages).toEqual([]);
    expect(document.notices.at(-1)).toMatch(/would take \d+ sheets/);
  });
});

describe('the packing note', () => {
  it('tells the mass and the size of the materials, never less than they are', () => {
    const { words, materials } = papersOf(lamp, 'packing-note');
    expect(words).toContain(formatMass(materials.totals.massG, 'metric', { enough: true }));
    expect(words).toContain('several times as much');
    expect(words).toContain('hello@weir.example');
  });

  it('tells all of what the designer has written on care', () => {
    const care = Array.from({ length: 30 }, (_, i) => `Week ${i + 1}: Air it well.`).join('\n');
    const { words } = papersOf({ ...lamp, pattern: { texts: { care } } }, 'packing-note');
    expect(words).toContain('Week 30: Air it well.');
    expect(words).toContain('Cords can strangle');
    expect(words).not.toContain('Shake it outdoors');
  });
});
