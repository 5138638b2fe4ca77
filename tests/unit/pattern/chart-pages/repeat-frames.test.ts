import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { repeatsOf } from '../../../../shared/chart/repeats.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { frameLines, spansOf } from '../../../../shared/pattern/chart-pages/frame-lines.ts';
import { framedRepeats } from '../../../../shared/pattern/chart-pages/framed-repeats.ts';
import { printScales } from '../../../../shared/pattern/chart-pages/print-scale.ts';
import { repeatFrames } from '../../../../shared/pattern/chart-pages/repeat-frames.ts';
import type { Stretch } from '../../../../shared/pattern/chart-pages/split-chart.ts';
import { type Copy, copyOf } from '../../../../shared/pattern/copy.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import type { CellsItem, Item, Page, PathStep } from '../../../../shared/pattern/page/page.ts';
import { plainItems } from '../../../../shared/pattern/page/plain-items.ts';
import { inks } from '../../../../shared/pattern/page/style.ts';
import type { PatternInput } from '../../../../shared/pattern/pattern-input.ts';
import { chartWords } from '../../../../shared/pattern/words/chart-words.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../../notation.ts';
import { outside, printedOver } from '../../../page-laws.ts';

/** Four cords by two rows, three times and three cords over, below a row that nothing repeats. */
const border = ['abaaaaaaaaaaaaa', 'aabbaabbaabbaab', 'bbaabbaabbaabba', 'aaaaaaaaaaaaaaa'];

function repeatsIn(letters: string[], startCorner: 'top-left' | 'top-right' = 'top-left') {
  return repeatsOf({ ...flatten(designFromLetters(letters)), startCorner });
}

/** The lines of the frames as 'x,y x,y', a line each, on cells of 1 mm by 1 mm; 'closed' where they run round. */
function linesOn(
  across: Pick<Stretch, 'first' | 'end'>,
  down: Pick<Stretch, 'first' | 'end'>,
  repeats = repeatsIn(border),
): string[] {
  const [dark] = repeatFrames({ x: 0, y: 0, cellWidth: 1, cellHeight: 1, across, down, repeats });
  const text = (dark?.steps ?? []).map((step) => `${step[0] === 'M' ? '\n' : ' '}${pointOf(step)}`).join('');
  return text.split('\n').slice(1);
}

function pointOf(step: PathStep): string {
  return step[0] === 'Z' ? 'closed' : `${step[1]},${step[2]}`;
}

function pagesOf(design: Design, copy: Partial<Copy> = {}, paper: PatternInput['paper'] = 'a4'): Page[] {
  const chart = flatten(design);
  const plan = planStrands(design, chart, { effort: 'quick' });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  const input = { design, chart, plan: plan.value, materials, paper, units: 'metric' as const };
  return layOutPattern({ ...input, copy: { ...copyOf(design), ...copy } }).pages;
}

function runningOf(pages: readonly Page[]): string {
  return plainItems(pages.flatMap(({ items }) => items))
    .flatMap((item) => (item.kind === 'text' ? [item.text] : []))
    .join(' ');
}

function partOf(pages: readonly Page[], part: Page['part']): Page[] {
  return pages.filter((page) => page.part === part);
}

describe('the frame of a repeat', () => {
  it('runs round its first repeat', () => {
    expect(linesOn({ first: 0, end: 15 }, { first: 0, end: 4 })).toEqual(['0,1 4,1 4,3 0,3 closed']);
  });

  it('lies at the right where row 1 starts there', () => {
    const repeats = repeatsIn(border, 'top-right');
    expect(linesOn({ first: 0, end: 15 }, { first: 0, end: 4 }, repeats)).toEqual([
      '11,1 15,1 15,3 11,3 closed',
    ]);
  });

  it('is open where a page ends within it, and goes on on the next', () => {
    expect(linesOn({ first: 0, end: 3 }, { first: 0, end: 4 })).toEqual(['3,3 0,3 0,1 3,1']);
    expect(linesOn({ first: 1, end: 15 }, { first: 0, end: 4 })).toEqual(['0,1 3,1 3,3 0,3']);
    expect(linesOn({ first: 0, end: 15 }, { first: 0, end: 2 })).toEqual(['0,2 0,1 4,1 4,2']);
    expect(linesOn({ first: 0, end: 15 }, { first: 2, end: 4 })).toEqual(['4,0 4,1 0,1 0,0']);
    expect(linesOn({ first: 0, end: 3 }, { first: 0, end: 2 })).toEqual(['0,2 0,1 3,1']);
    expect(linesOn({ first: 1, end: 3 }, { first: 0, end: 4 })).toEqual(['2,3 0,3', '0,1 2,1']);
  });

  it('is not drawn on a page that shows none of its cords or rows', () => {
    expect(linesOn({ first: 4, end: 15 }, { first: 0, end: 4 })).toEqual([]);
    expect(linesOn({ first: 0, end: 15 }, { first: 3, end: 4 })).toEqual([]);
  });

  it('is a double line, dark with white in its middle: seen in one ink and on any yarn', () => {
    const place = { x: 0, y: 0, cellWidth: 4, cellHeight: 4, repeats: repeatsIn(border) };
    const all = { across: { first: 0, end: 15 }, down: { first: 0, end: 4 } };
    const [dark, white, ...more] = repeatFrames({ ...place, ...all });
    expect(more).toEqual([]);
    expect([dark!.stroke, white!.stroke]).toEqual([inks.text, inks.paper]);
    // Each of the three lines is as wide at least as the thinnest rule.
    expect(white!.strokeMm!).toBeGreaterThan(0.36);
    expect((dark!.strokeMm! - white!.strokeMm!) / 2).toBeGreaterThan(0.36);
    expect([dark!.opacity, white!.opacity]).toEqual([undefined, undefined]);
  });

  it('lies on the chart’s page around the cells themselves, below the lift marks', () => {
    const [page] = partOf(pagesOf(designFromLetters(border)), 'chart');
    const items = plainItems(page!.items);
    const isCells = (item: Item): item is CellsItem => item.kind === 'cells';
    const block = items.find((item): item is CellsItem => isCells(item) && item.alt !== undefined)!;
    const frame = items.findIndex(
      (item) =>
        item.kind === 'path' &&
        item.steps.length === 5 &&
        pointOf(item.steps[0]!) === `${block.x},${block.y + block.cellHeight}`,
    );
    const lifts = items.findIndex((item) => isCells(item) && item !== block && item.rows === block.rows);
    expect(frame).toBeGreaterThan(items.indexOf(block));
    expect(lifts).toBeGreaterThan(frame);
    expect(block.alt).toContain('Framed: cords 1–4 of rows 2–3, 3 times across, then cords 1–3 once more.');
  });
});

describe('the key of a chart with repeats', () => {
  const told = (letters: string[], language: 'en' | 'de' = 'en', startCorner?: 'top-right') =>
    repeatsIn(letters, startCorner).map((repeat) => chartWords[language].framed(spansOf(repeat)));

  it('says what is framed, how often it comes, and what comes once more at the end', () => {
    expect(told(border)).toEqual(['Framed: cords 1–4 of rows 2–3, 3 times across, then cords 1–3 once more']);
    expect(told(border, 'en', 'top-right')).toEqual([
      'Framed: cords 12–15 of rows 2–3, 3 times across, then cords 13–15 once more',
    ]);
    expect(told(['abababa', 'bababab'])).toEqual([
      'Framed: cords 1–2 of rows 1–2, 3 times across, then cord 1 once more',
    ]);
    expect(told(['cabcabcabcabcac', 'cbcabcabcabcabc'])).toEqual([
      'Framed: cords 2–4 of rows 1–2, 4 times across, then cord 2 once more',
    ]);
    expect(told(['cabcabcabcabcac', 'cbcabcabcabcabc'], 'en', 'top-right')).toEqual([
      'Framed: cords 12–14 of rows 1–2, 4 times across, then cord 14 once more',
    ]);
    expect(told(['ababab', 'bababa'])).toEqual(['Framed: cords 1–2 of rows 1–2, 3 times across']);
    expect(told(border, 'de')).toEqual([
      'Umrahmt: Schnüre 1–4 der Reihen 2–3, 3-mal nebeneinander, dann noch einmal Schnüre 1–3',
    ]);
  });

  it('is read once, and seen on every page of the chart', () => {
    const wide = Array.from({ length: 4 }, (_, row) => border[row]!.slice(0, 12).repeat(9));
    const pages = partOf(pagesOf(designFromLetters(wide)), 'chart');
    expect(pages.length).toBeGreaterThan(1);
    const texts = pages.map(({ items }) =>
      plainItems(items).flatMap((item) =>
        item.kind === 'text' && item.text.startsWith('Framed') ? [item.role] : [],
      ),
    );
    expect(texts).toEqual(pages.map((_, i) => [i === 0 ? 'paragraph' : 'again']));
  });

  it('gives each of its lines the room that it takes', () => {
    const repeats = repeatsIn(border);
    const { key } = printScales.standard;
    const { height, draw } = frameLines(repeats, 40, key, chartWords.en);
    const lines = plainItems(draw(10, 20)).flatMap((item) => (item.kind === 'text' ? [item] : []));
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.map(({ text }) => text).join(' ')).toBe(chartWords.en.framed(spansOf(repeats[0]!)));
    expect(Math.max(...lines.map(({ y }) => y))).toBeLessThan(20 + height);
  });

  it('tells the four bands of the most rows, from the top down, where a chart has more', () => {
    const odd = 'abaaaaaaa';
    const bands = [2, 4, 3, 5, 6].map((rows) => [...Array<string>(rows).fill('aabaabaab'), odd]);
    const chart = flatten(designFromLetters(bands.flat()));
    expect(framedRepeats(chart).map(({ fromRow, toRow }) => toRow - fromRow + 1)).toEqual([4, 3, 5, 6]);
  });

  it.each([
    ['standard', 'a4', 'en'],
    ['large', 'a4', 'de'],
    ['standard', 'letter', 'de'],
    ['large', 'letter', 'en'],
  ] as const)('keeps to the margins and clear of all else: %s cells on %s, %s', (cells, paper, language) => {
    for (const times of [1, 3, 8]) {
      const letters = [...border, ...border.map((row) => row.replaceAll('b', 'd'))];
      const design = designFromLetters(letters.map((row) => row.slice(0, 12).repeat(times)));
      const pages = pagesOf(design, { cells, language }, paper);
      expect(runningOf(partOf(pages, 'chart'))).toContain(language === 'en' ? 'Framed' : 'Umrahmt');
      expect(pages.flatMap(outside)).toEqual([]);
      expect(pages.flatMap(printedOver)).toEqual([]);
    }
  });

  it('keeps its yarns large in large print, and tells many frames large on a page before the chart', () => {
    const rows = ['aab', 'aba', 'abb'].flatMap((unit) => [
      ...Array<string>(3).fill(unit.repeat(15)),
      'ab'.padEnd(45, 'a'),
    ]);
    const pages = partOf(pagesOf(designFromLetters(rows), { cells: 'large', language: 'de' }), 'chart');
    const sizesOf = (text: string) =>
      pages.map(({ items }) =>
        plainItems(items).flatMap((item) =>
          item.kind === 'text' && item.text.startsWith(text) ? [item.sizeMm] : [],
        ),
      );
    const large = printScales.large.key.nameMm;
    const small = printScales.standard.key.nameMm;
    expect(pages.length).toBeGreaterThan(2);
    expect(sizesOf('Linen')).toEqual(pages.map(() => [large]));
    expect(sizesOf('Umrahmt')).toEqual(pages.map((_, i) => Array(3).fill(i === 0 ? large : small)));
  });

  it('says nothing of frames where nothing repeats', () => {
    expect(runningOf(pagesOf(designFromLetters(['abaaaa', 'aabaaa'])))).not.toContain('Framed');
  });
});

describe('the page on reading the chart', () => {
  it.each([
    ['en', 'A double line frames'],
    ['de', 'umrahmt eine doppelte Linie'],
  ] as const)('explains frames only where the chart has one: %s', (language, words) => {
    const running = (letters: string[]) =>
      runningOf(partOf(pagesOf(designFromLetters(letters), { language }), 'reading'));
    expect(running(border)).toContain(words);
    const only = (part: 'chart-symbols' | 'rows') => ({
      ...designFromLetters(border),
      pattern: { parts: ['reading' as const, part] },
    });
    expect(runningOf(pagesOf(only('chart-symbols'), { language }))).toContain(words);
    expect(runningOf(pagesOf(only('rows'), { language }))).not.toContain(words);
    expect(running(['abaaaa', 'aabaaa'])).not.toContain(words);
  });
});
