import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { mothAtTheWindow } from '../../../../shared/demos/moth-at-the-window.ts';
import { patternLanguages } from '../../../../shared/design/pattern-schema.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { copyOf } from '../../../../shared/pattern/copy.ts';
import { copiesForSale } from '../../../../shared/pattern/parcel/copies-for-sale.ts';
import { listingText } from '../../../../shared/pattern/parcel/listing.ts';
import { shopPictures, shopSizesPx } from '../../../../shared/pattern/parcel/shop-pictures.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';

const design = mothAtTheWindow();
const chart = flatten(design);
const plan = planStrands(design, chart);
if (!plan.ok) throw new Error(plan.problem.sentence);
const materials = materialsOf(design, chart, plan.value);

describe('the copies for sale', () => {
  const copies = copiesForSale({ copy: copyOf(design), languages: ['en', 'de'], bothHands: true });

  it('are two papers, two inks and two sizes, for each hand in each language', () => {
    expect(copies).toHaveLength(2 * 2 * 2 * 2 * 2);
    expect(new Set(copies.map(({ copy, paper }) => JSON.stringify([copy, paper]))).size).toBe(copies.length);
  });

  it('are told apart by their words within each language', () => {
    for (const language of patternLanguages) {
      const words = copies.filter(({ copy }) => copy.language === language).map((each) => each.words);
      expect(new Set(words).size).toBe(words.length);
    }
  });

  it('begin with the hand of the design, and name the hand only where there are two or it is the left', () => {
    const [right] = copiesForSale({ copy: copyOf(design), languages: ['en'], bothHands: false });
    const [left] = copiesForSale({
      copy: { ...copyOf(design), leftHanded: true },
      languages: ['en'],
      bothHands: false,
    });
    expect(right!.words).toBe('A4 colour');
    expect(left!.words).toBe('A4 colour, left-handed');
    expect(copies[0]!.copy.leftHanded).toBe(false);
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
