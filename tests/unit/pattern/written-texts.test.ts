/** How to read the chart, the order of work, care and cautions, as first written and as the designer writes them. */
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { type PatternPart, patternLanguages } from '../../../shared/design/pattern-schema.ts';
import type { PatternSettings } from '../../../shared/design/schema.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { copyOf } from '../../../shared/pattern/copy.ts';
import { type PatternTextName, textOf } from '../../../shared/pattern/first-texts.ts';
import { layOutPattern } from '../../../shared/pattern/lay-out-pattern.ts';
import { plainItems } from '../../../shared/pattern/page/plain-items.ts';
import { careWords } from '../../../shared/pattern/words/care-words.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../notation.ts';

type Texts = NonNullable<PatternSettings['texts']>;

function printed(
  part: PatternPart,
  texts: Texts = {},
  rows = ['abba', 'ab-a', 'aaaa'],
  others: PatternPart[] = [],
) {
  const design = { ...designFromLetters(rows), pattern: { texts, parts: [part, ...others] } };
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  const input = { design, chart, plan: plan.value, materials, paper: 'a4', units: 'metric' } as const;
  const items = layOutPattern(input).pages.flatMap((page) => plainItems(page.items));
  const words = items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])).join(' ');
  return { words, first: (name: PatternTextName) => textOf({ ...input, copy: copyOf(design) }, name) };
}

describe('how to read the chart', () => {
  it('is first written from the design: which way row 1 goes, and bare cells where there are any', () => {
    const { first } = printed('reading');
    expect(first('reading')).toContain('Row 1 goes left to right');
    expect(first('reading')).toContain('is bare');
    expect(printed('reading', {}, ['ab', 'ba']).first('reading')).not.toContain('is bare');
  });

  it('is printed as the designer writes it, and the order of work stays', () => {
    const { words, first } = printed('reading', { reading: 'Cells are knots.\nBegin at the star.' });
    expect(words).toContain('1 Cells are knots. 2 Begin at the star.');
    expect(words).not.toContain('Row 1 goes');
    const [step] = first('order').split('\n');
    expect(words).toContain(step!.slice(0, 30));
  });

  it('still says over how many pages the chart goes', () => {
    const wide = Array.from({ length: 90 }, () => 'ab'.repeat(45));
    const design = { ...designFromLetters(wide), pattern: { texts: { reading: 'Cells are knots.' } } };
    const chart = flatten(design);
    const plan = planStrands(design, chart, { effort: 'quick' });
    if (!plan.ok) throw new Error(plan.problem.sentence);
    const materials = materialsOf(design, chart, plan.value);
    const { pages } = layOutPattern({
      design,
      chart,
      plan: plan.value,
      materials,
      paper: 'a4',
      units: 'metric',
    });
    const words = pages
      .filter(({ part }) => part === 'reading')
      .flatMap(({ items }) => plainItems(items))
      .flatMap((item) => (item.kind === 'text' ? [item.text] : []))
      .join(' ');
    const count = pages.filter(({ part }) => part === 'chart').length;
    expect(count).toBeGreaterThan(1);
    expect(words).toContain(`1 Cells are knots. 2 The chart goes on over ${count} pages`);
  });

  it('has no heading over what is left out', () => {
    expect(printed('reading', { order: '' }).words).not.toContain('Order of work');
    expect(printed('reading', { reading: '' }).words).not.toContain('The chart ');
    expect(printed('reading').words).toContain('Order of work');
  });
});

describe('cautions and care', () => {
  it('name each care by what stands before its first colon, also where a colon comes later', () => {
    const { words } = printed('care', { care: 'Moths: Lavender helps: a little.\nLove it.' });
    expect(words).toContain('Moths');
    expect(words).toContain('Lavender helps: a little.');
    expect(words).toContain('Love it.');
    expect(words).not.toContain('Shake it outdoors');
  });

  it('always hold the usual cautions, whatever the designer adds or leaves out', () => {
    for (const cautions of ['', 'Needles: Count them.']) {
      const { words } = printed('care', { cautions, care: '' });
      for (const { title, text } of careWords.en.cautions) {
        expect(words).toContain(title);
        expect(words).toContain(text.split(' ').slice(0, 4).join(' '));
      }
      expect(words.includes('Needles')).toBe(cautions !== '');
    }
  });

  it('are printed as first written where nothing is written', () => {
    const { words, first } = printed('care');
    expect(first('cautions')).toBe('');
    expect(first('care').split('\n')).toHaveLength(careWords.en.care.length);
    for (const { title, text } of careWords.en.care) {
      expect(words).toContain(title);
      expect(words).toContain(text.split(' ').slice(0, 4).join(' '));
      expect(words).not.toContain(`${title}:`);
    }
  });

  it('have titles, in every language, that are found again in the first version', () => {
    for (const language of patternLanguages)
      for (const { title } of careWords[language].care) expect(title).toMatch(/^[^:]{1,40}$/u);
  });
});

describe('the texts of a pattern', () => {
  it('point to materials and knots only where these are among its parts', () => {
    const alone = printed('welcome').words;
    expect(alone).toContain('Tie a swatch to find your own gauge');
    expect(alone).toContain('the designer’s own gauge');
    expect(alone).not.toMatch(/materials|step by step/);
    const together = printed('welcome', {}, ['abba'], ['materials', 'knots']).words;
    expect(together).toContain('Read the pages on materials and knots first');
    expect(together).toContain('the gauge on the materials page');
    expect(together).toContain('shown step by step');
  });

  it('say where the lengths of cords are told, if anywhere', () => {
    const mounting = (...others: PatternPart[]) =>
      printed('reading', {}, ['abba'], others).first('order').split('\n')[0]!;
    expect(mounting()).toMatch(/Mount them side by side\.$/);
    expect(mounting('materials', 'cut-list')).toContain('the list of cord in the materials says');
    expect(mounting('cut-list')).toContain('the cut list says');
  });
});
