/** The template of the fringe is what the cords are cut by: it must be true. */
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { newDesign } from '../../../../shared/design/new-design.ts';
import { fringeMm } from '../../../../shared/gauge/fringe.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import type { Page, PathItem } from '../../../../shared/pattern/page/page.ts';
import { plainItems } from '../../../../shared/pattern/page/plain-items.ts';
import { drawTemplate, isTold } from '../../../../shared/pattern/part-pages/fringe-template.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { formatLength } from '../../../../shared/units/length.ts';

type FringeShape = Design['fringe'];

function fringePages(columns: number, fringe: FringeShape): Page[] {
  const design = {
    ...newDesign({ title: 'Fringe', columns, rows: 3 }),
    fringe,
    pattern: { parts: ['fringe' as const] },
  };
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  return layOutPattern({ design, chart, plan: plan.value, materials, paper: 'a4', units: 'metric' }).pages;
}

function paths(pages: readonly Page[]): PathItem[] {
  return pages.flatMap(({ items }) => plainItems(items)).filter((item) => item.kind === 'path');
}

interface Line {
  x: number;
  from: number;
  to: number;
}

/** The lines from top to bottom among the paths. */
function uprights(items: readonly PathItem[]): Line[] {
  return items.flatMap(({ steps }) =>
    steps.flatMap((step, i): Line[] => {
      const next = steps[i + 1];
      if (step[0] !== 'M' || next?.[0] !== 'L' || step[1] !== next[1] || step[2] === next[2]) return [];
      return [{ x: step[1], from: step[2], to: next[2] }];
    }),
  );
}

function textsOf(pages: readonly Page[]): string {
  return pages
    .flatMap(({ items }) => plainItems(items))
    .map((item) => (item.kind === 'text' ? item.text : ''))
    .join(' ');
}

/** Lengths of the lines with several ticks, in mm. */
function barsOf(page: Page): number[] {
  return paths([page]).flatMap(({ steps }) => {
    const [from, to] = steps;
    if (from?.[0] !== 'M' || to?.[0] !== 'L' || from[2] !== to[2] || steps.length < 12) return [];
    if (to[1] - from[1] < 50) return [];
    return [Math.round((to[1] - from[1]) * 100) / 100];
  });
}

const shapes: FringeShape[] = [
  { shape: 'v', longMm: 150, shortMm: 40 },
  { shape: 'inverted-v', longMm: 150, shortMm: 40 },
  { shape: 'curve', longMm: 133.3, shortMm: 21.7 },
  { shape: 'by-hand', longMm: 120, shortMm: 10, byHandMm: [10, 120, 33.3, 90] },
  { shape: 'straight', longMm: 150, shortMm: 150 },
];

describe('the template of a fringe that fits on one sheet', () => {
  it.each(shapes)('is drawn in true size: $shape', (fringe) => {
    const columns = 31;
    const pages = fringePages(columns, fringe);
    expect(textsOf(pages)).toContain('true size on A4');
    expect(pages).toHaveLength(1);
    expect(barsOf(pages[0]!)).toEqual([100, 4 * 25.4]);
    const cords = uprights(paths(pages))
      .filter(({ from, to }) => to - from > 5)
      .sort((a, b) => a.x - b.x);
    const lengths = fringeMm(columns, fringe);
    // The outer edges of the outline are as long as the outermost cords.
    const middles = cords.filter((cord, i) => i === 0 || cord.x - cords[i - 1]!.x > 0.01);
    expect(middles).toHaveLength(columns);
    middles.forEach(({ from, to }, column) => {
      expect(Math.abs(to - from - lengths[column]!)).toBeLessThan(0.1);
    });
    // Neighbours stand one pitch apart: 5 mm with cord of 3 mm and yarn of 2 mm.
    expect(middles[1]!.x - middles[0]!.x).toBeCloseTo(5, 6);
  });
});

describe('the template of a wider fringe', () => {
  const columns = 60;
  const fringe: FringeShape = { shape: 'curve', longMm: 300, shortMm: 120 };

  it('is in true size over sheets whose pieces of each cord add up to its length', () => {
    const pages = fringePages(columns, fringe);
    const [first, ...sheets] = pages;
    expect(textsOf([first!])).toContain(`follows on ${sheets.length} sheets`);
    const lengths = fringeMm(columns, fringe);
    const windows = sheets.map((page) => paths([page]));
    // The ticks of the bars and of the line at the foot are 2 mm long.
    const cords = windows.flatMap(uprights).filter(({ from, to }) => Math.abs(to - from - 2) > 1e-6);
    expect(cords.reduce((sum, { from, to }) => sum + to - from, 0)).toBeCloseTo(
      lengths.reduce((a, b) => a + b),
      3,
    );
    // A bar to measure stands on each sheet that has room for it, the others have a line of 50 mm; the smaller picture has none.
    expect(barsOf(first!)).toEqual([]);
    for (const page of sheets) {
      const hasBar = textsOf([page]).includes('On A4 without scaling');
      expect(barsOf(page)).toEqual(hasBar ? [100, 4 * 25.4] : []);
      expect(textsOf([page]).includes('50 mm when printed at full size')).toBe(!hasBar);
    }
    expect(new Set(sheets.map((page) => barsOf(page).length)).size).toBe(2);
  });

  it('has sheets of one width, whatever is left over', () => {
    // 43 cords of 5 mm are a little wider than one sheet.
    const [, ...sheets] = fringePages(43, { shape: 'curve', longMm: 150, shortMm: 90 });
    const cords = sheets.map((page) => new Set(uprights(paths([page])).map(({ x }) => x.toFixed(2))).size);
    expect(cords).toHaveLength(2);
    expect(Math.abs(cords[0]! - cords[1]!)).toBeLessThan(3);
  });

  it('has no sheet that is empty', () => {
    // The middle cords end on the first line of sheets, the outer ones on the second.
    const pages = fringePages(150, { shape: 'inverted-v', longMm: 260, shortMm: 100 });
    const [first, ...sheets] = pages;
    expect(textsOf([first!])).toContain(`follows on ${sheets.length} sheets`);
    expect(sheets.length).toBeLessThan(10);
    for (const page of sheets) {
      const cords = uprights(paths([page])).filter(({ from, to }) => Math.abs(to - from - 2) > 1e-6);
      expect(cords.length).toBeGreaterThan(0);
    }
    expect(sheets.map(({ title }) => title)).toEqual(
      sheets.map((_, i) => `Fringe template, sheet ${i + 1} of ${sheets.length}`),
    );
  });

  it('is drawn to scale where it would take too many sheets, with the length of every fifth cord', () => {
    const wide = 400;
    const pages = fringePages(wide, fringe);
    expect(pages).toHaveLength(1);
    const words = textsOf(pages);
    const times = Number(/scale of 1 : (\d+(?:\.\d+)?)/.exec(words)![1]);
    const lengths = fringeMm(wide, fringe);
    for (const cord of [1, 5, 200, 395, 400]) {
      expect(words).toContain(`cord ${cord} ${formatLength(lengths[cord - 1]!, 'metric')}`);
    }
    const longest = Math.max(...uprights(paths(pages)).map(({ from, to }) => to - from));
    expect(longest * times).toBeCloseTo(Math.max(...lengths), 3);
  });

  it('is a strip as wide as the page where all cords are alike, and words where it is too long', () => {
    const strip = fringePages(400, { shape: 'straight', longMm: 120, shortMm: 120 });
    expect(strip).toHaveLength(1);
    expect(textsOf(strip)).toContain('The strip is in true size on A4');
    expect(textsOf(strip)).not.toContain('cord 5');
    const cords = uprights(paths(strip)).filter(({ from, to }) => to - from > 5);
    for (const { from, to } of cords) expect(to - from).toBeCloseTo(120, 6);
    const long = fringePages(400, { shape: 'straight', longMm: 600, shortMm: 600 });
    expect(textsOf(long)).toContain('every cord hangs 60 cm below the last row');
    expect(textsOf(long)).not.toContain('true size');
    expect(paths(long).filter(({ stroke }) => stroke !== undefined)).toEqual([]);
  });

  it('is no page where nothing hangs', () => {
    expect(fringePages(4, { shape: 'straight', longMm: 0, shortMm: 0 })).toEqual([]);
  });
});

describe('a window of the template', () => {
  const template = { lengthsMm: [30, 20, 10], pitchMm: 10 };

  it('draws what lies inside it and nothing else', () => {
    const window = { x: 8, y: 5, width: 10, height: 16 };
    const items = drawTemplate(template, {
      window,
      x: 100,
      y: 50,
      scale: 2,
      accent: '#9e3329',
      numberMm: 2.6,
    });
    const points = items
      .filter((item) => item.kind === 'path')
      .flatMap(({ steps }) => steps.flatMap((step) => (step[0] === 'M' || step[0] === 'L' ? [step] : [])));
    expect(points.length).toBeGreaterThan(2);
    for (const [, x, y] of points) {
      expect(x).toBeGreaterThanOrEqual(100);
      expect(x).toBeLessThanOrEqual(120);
      expect(y).toBeGreaterThanOrEqual(50);
      expect(y).toBeLessThanOrEqual(82);
    }
    expect(items.some((item) => item.kind === 'text')).toBe(false);
  });

  it('numbers the first cord, each fifth and the last', () => {
    expect([0, 1, 3, 4, 9, 11].map((column) => isTold(column, 12))).toEqual([
      true,
      false,
      false,
      true,
      true,
      true,
    ]);
  });
});
