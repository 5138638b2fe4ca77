import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { mothAtTheWindow } from '../../../../shared/demos/moth-at-the-window.ts';
import { type PatternPart, patternLanguages } from '../../../../shared/design/pattern-schema.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { copyOf } from '../../../../shared/pattern/copy.ts';
import { figuresIn } from '../../../../shared/pattern/flow/figures.ts';
import { listingText } from '../../../../shared/pattern/parcel/listing.ts';
import { packsForSale } from '../../../../shared/pattern/parcel/packs-for-sale.ts';
import { shopPictures, shopSizesPx } from '../../../../shared/pattern/parcel/shop-pictures.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';

const design = mothAtTheWindow();
const chart = flatten(design);
const plan = planStrands(design, chart);
if (!plan.ok) throw new Error(plan.problem.sentence);
const materials = materialsOf(design, chart, plan.value);

describe('the packs for sale', () => {
  const packs = packsForSale({ copy: copyOf(design), languages: ['en', 'de'], bothHands: true });

  it('are one for each hand in each language, each with two papers, two inks and two sizes', () => {
    expect(packs).toHaveLength(2 * 2);
    const copies = packs.flatMap((pack) => pack.copies);
    expect(copies).toHaveLength(packs.length * 2 * 2 * 2);
    expect(new Set(copies.map(({ copy, paper }) => JSON.stringify([copy, paper]))).size).toBe(copies.length);
    for (const { language, leftHanded, copies } of packs) {
      expect(copies.every(({ copy }) => copy.language === language && copy.leftHanded === leftHanded)).toBe(
        true,
      );
    }
  });

  it('have folders of their own, and names by which a copy is told even outside of its folder', () => {
    expect(packs.map(({ folder }) => folder)).toEqual([
      'English, right-handed',
      'Deutsch, rechtshändig',
      'English, left-handed',
      'Deutsch, linkshändig',
    ]);
    const words = packs.flatMap(({ copies }) => copies.map((each) => each.words));
    expect(new Set(words).size).toBe(words.length);
  });

  it('begin with the hand of the design, and name the hand only where there are two or it is the left', () => {
    const alone = { languages: ['en'], bothHands: false } as const;
    const [right] = packsForSale({ copy: copyOf(design), ...alone });
    const [left] = packsForSale({ copy: { ...copyOf(design), leftHanded: true }, ...alone });
    expect([right!.folder, left!.folder]).toEqual(['', '']);
    expect(right!.copies[0]!.words).toBe('A4 colour');
    expect(left!.copies[0]!.words).toBe('A4 colour, left-handed');
    expect(packs[0]!.leftHanded).toBe(false);
  });
});

describe('the listing', () => {
  const listing = (changes: Partial<Parameters<typeof listingText>[0]> = {}) =>
    listingText({ design, materials, units: 'metric', language: 'en', files: ['Moth.pdf'], ...changes });

  it('holds the figures of the materials, and every yarn', () => {
    const text = listing();
    expect(text).toContain(materials.totals.knots.toLocaleString('en'));
    for (const { name } of materials.yarns) expect(text).toContain(`- ${name}: `);
  });

  it('asks for the same yarn as the materials page, in whole skeins, and says what they hold to spare', () => {
    const figures = figuresIn('metric', 'en');
    for (const { name, cutMm, massG, skeins } of materials.yarns) {
      const line = listing()
        .split('\n')
        .find((each) => each.startsWith(`- ${name}: `))!;
      expect(line).toContain(`${figures.enough.yarnLength(cutMm)}, ${figures.enough.mass(massG)}: `);
      expect(line).toContain(skeins === 1 ? 'one skein of' : `${skeins} skeins of`);
    }
    expect(listing()).toContain(`with ${design.yarnMargin * 100} % more for mistakes`);
  });

  it('promises only what is in the pattern', () => {
    const promises = (parts: PatternPart[]) => listing({ design: { ...design, pattern: { parts } } });
    expect(promises(['chart'])).toContain('- The chart');
    expect(promises(['chart'])).not.toContain('Every row in words');
    expect(promises(['rows', 'knots'])).not.toContain('- The chart');
  });

  it('takes the designer’s own terms, and leaves out terms that are empty', () => {
    const own = listing({ design: { ...design, pattern: { texts: { terms: 'Only for friends.' } } } });
    expect(own).toContain('Terms\nOnly for friends.');
    expect(listing({ design: { ...design, pattern: { texts: { terms: '' } } } })).not.toContain('Terms');
  });

  it('writes figures as its language does', () => {
    const knots = materials.totals.knots;
    expect(listing({ language: 'de' })).toContain(`${knots.toLocaleString('de')} Knoten`);
    expect(listing({ language: 'de' })).toMatch(/\d,\d cm/);
    expect(listing({ language: 'de' })).not.toMatch(/\d\.\d (cm|m|g|kg)\b/);
    expect(listing({ language: 'de', units: 'us' })).toContain(' Zoll');
  });

  it('says which figures are estimates', () => {
    expect(listing()).toContain('estimates');
  });

  it('has at most 13 tags of at most 20 characters, none twice', () => {
    for (const language of patternLanguages) {
      const tags = listing({ language }).trimEnd().split('\n').at(-1)!.split(', ');
      expect(tags.length).toBeLessThanOrEqual(13);
      for (const tag of tags) expect(tag.length).toBeLessThanOrEqual(20);
      expect(new Set(tags.map((tag) => tag.toLowerCase())).size).toBe(tags.length);
    }
  });
});

describe('the pictures for the shop', () => {
  it('have the proportions of their sizes, and keep a title of 200 letters within the picture', () => {
    const long = { ...design, title: 'Wetterleuchten über dem Moor '.repeat(7).slice(0, 200) };
    const pages = shopPictures({ design: long, chart, materials, units: 'both', language: 'de' });
    for (const [name, { widthPx, heightPx }] of Object.entries(shopSizesPx)) {
      const { widthMm, heightMm, items } = pages[name as keyof typeof pages];
      expect(widthMm / heightMm).toBeCloseTo(widthPx / heightPx, 6);
      for (const item of items) {
        if (item.kind !== 'text') continue;
        expect(item.y).toBeLessThan(heightMm - 2);
        expect(item.x).toBeGreaterThan(2);
      }
    }
  });
});
