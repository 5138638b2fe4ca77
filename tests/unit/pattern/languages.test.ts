/** Everything that is printed or sold with a pattern speaks its language: all parts and papers, in every kind of copy. */
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { type Language, patternLanguages, patternParts } from '../../../shared/design/pattern-schema.ts';
import { bundlesOf } from '../../../shared/materials/bundles/bundles.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { type Copy, copyOf, designForCopy } from '../../../shared/pattern/copy.ts';
import { hangingPapers } from '../../../shared/pattern/hanging-papers/hanging-papers.ts';
import { layOutHangingPapers } from '../../../shared/pattern/hanging-papers/lay-out-hanging-papers.ts';
import { emptyImprint } from '../../../shared/pattern/imprint.ts';
import { layOutLabels } from '../../../shared/pattern/lay-out-labels.ts';
import { layOutPattern } from '../../../shared/pattern/lay-out-pattern.ts';
import { listingText } from '../../../shared/pattern/parcel/listing.ts';
import { packsForSale } from '../../../shared/pattern/parcel/packs-for-sale.ts';
import { shopPictures } from '../../../shared/pattern/parcel/shop-pictures.ts';
import type { PatternInput } from '../../../shared/pattern/pattern-input.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { tyingOrder } from '../../../shared/tying/steps/tying-order.ts';
import type { Units } from '../../../shared/units/units.ts';
import { designFromLetters } from '../../notation.ts';
import { printedTexts } from '../../printed-texts.ts';

/** Words that no language of a pattern has, so that they are told from its own. */
const names = ['Kormoran', 'Ylva Brandt', 'Werft 7', 'Lind', 'Skog', 'Näcken', 'Ahlquist'];
const [TITLE, DESIGNER, WORKSHOP, ...YARNS] = names as [string, string, string, ...string[]];
const BUYER = YARNS[3]!;
const CONTACT = 'post@werft-7.example';

/** More rows and cords than a page holds, so that there are a map, marks of joins and pages that go on. */
const block = ['aaabbbcccc', 'aab--bcccc', 'abbb--bbcc', 'cccbbbaaaa', '----------'];
const design = designFromLetters(
  Array.from({ length: 130 }, (_, row) => block[row % block.length]!.repeat(9)),
  { title: TITLE, designer: DESIGNER, fringe: { shape: 'v', longMm: 200, shortMm: 60 } },
);
const named = {
  ...design,
  cord: { ...design.cord, name: YARNS[0]! },
  yarns: design.yarns.map((yarn, i) => ({ ...yarn, name: YARNS[i % 3]! })),
  pattern: { parts: [...patternParts] },
};
/** One pixel. */
const PNG =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==';
const imprint = {
  ...emptyImprint,
  workshop: WORKSHOP,
  contact: [CONTACT],
  about: DESIGNER,
  mark: { mediaType: 'image/png' as const, base64: PNG },
};
const edition = { number: 2, date: '2026-03-01', errata: [{ date: '2026-03-08', text: TITLE }] };

/** Kinds of copies; `photograph` stands on the cover in place of the drawn hanging. */
const copies: readonly (Partial<Copy> & { units: Units; photograph?: true })[] = [
  { units: 'metric', photograph: true },
  { units: 'us', ink: 'grey', rowsForm: 'compact', leftHanded: true },
  { units: 'both', ink: 'symbols', cells: 'large', rowsBeside: true },
];

function inputOf(
  { units, photograph, ...settings }: (typeof copies)[number],
  language: Language,
): PatternInput {
  const cover = { mediaType: 'image/png' as const, widthPx: 1, heightPx: 1, picture: [PNG] };
  const pattern = { ...named.pattern, ...(photograph && { cover }) };
  const copy: Copy = { ...copyOf(named), ...settings, language, preparedFor: BUYER };
  const tied = designForCopy({ ...named, pattern }, copy);
  const chart = flatten(tied);
  const plan = planStrands(tied, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(tied, chart, plan.value);
  return { design: tied, chart, plan: plan.value, materials, paper: 'a4', units, copy, imprint, edition };
}

function printedIn(language: Language): Set<string> {
  const texts = copies.flatMap((each) => {
    const input = inputOf(each, language);
    const { chart, plan } = input;
    const spoken = { ...input.design, pattern: { copy: { language } } };
    const bundles = bundlesOf(tyingOrder(chart, plan));
    const patterns = layOutPattern(input);
    return [
      ...printedTexts(patterns.pages),
      ...printedTexts(layOutHangingPapers(input, hangingPapers).pages),
      ...printedTexts(layOutLabels({ design: spoken, bundles, paper: 'a4', units: each.units }).pages),
      ...printedTexts(Object.values(shopPictures({ ...input, language }))),
      ...listingText({ ...input, language, files: [] }).split('\n'),
    ];
  });
  const forSale = packsForSale({ copy: copyOf(named), languages: [language], bothHands: true }).flatMap(
    ({ copies }) => copies,
  );
  return new Set([...texts, ...forSale.map(({ words }) => words)]);
}

const printed = { en: printedIn('en'), de: printedIn('de') };

/** Letters that are no word of a language: names, units, and the letters by which symbols are told. */
function withoutNames(text: string): string {
  return [...names, CONTACT]
    .reduce((rest, name) => rest.replaceAll(name, ''), text)
    .replaceAll(/\b(mm|cm|m|g|kg|oz|lb|yd|ft|h|min|in|Letter|A4|[a-z])\b/gi, '');
}

/** Small words of one language that the other does not have: a sentence can hardly do without them. */
const telling: Readonly<Record<Language, RegExp>> = {
  en: /\b(the|and|of|with|row|rows|cord|cords|knot|knots|yarn|yarns|page|piece|pieces|fringe|chart|left|right|is|are)\b/i,
  de: /\b(der|und|mit|von|Reihe|Reihen|Schnur|Schnüre|Knoten|Garn|Garne|Seite|Stück|Fransen|links|rechts|ist|sind)\b/i,
};

describe('the languages of a pattern', () => {
  it('are told apart by what is looked for here', () => {
    for (const language of patternLanguages) {
      expect([...printed[language]].filter((text) => telling[language].test(text)).length).toBeGreaterThan(
        200,
      );
    }
  });

  it('are tried on every part', () => {
    const { pages } = layOutPattern(inputOf(copies[0]!, 'de'));
    expect(new Set(pages.map(({ part }) => part))).toEqual(new Set(patternParts));
  });

  it.each([
    ['en', 'de'],
    ['de', 'en'],
  ] as const)('leave nothing in %s where a pattern speaks %s', (other, language) => {
    const foreign = [...printed[language]].filter((text) => telling[other].test(withoutNames(text)));
    expect(foreign).toEqual([]);
  });

  it('have nothing in common but names, figures and units', () => {
    const common = [...printed.de].filter((text) => printed.en.has(text));
    expect(common.length).toBeGreaterThan(100);
    expect(common.filter((text) => /\p{L}/u.test(withoutNames(text)))).toEqual([]);
  });

  it('write figures each in its own way', () => {
    expect([...printed.en].join(' ')).toMatch(/\d\.\d cm/);
    expect([...printed.de].join(' ')).toMatch(/\d,\d cm/);
    expect([...printed.de].filter((text) => /\d\.\d\d? (cm|mm|m|g|kg)\b|\d in\b/.test(text))).toEqual([]);
    const knots = materialsOf(named, flatten(named), inputOf(copies[0]!, 'de').plan).totals.knots;
    expect([...printed.de].join(' ')).toContain(knots.toLocaleString('de'));
    expect([...printed.de].join(' ')).not.toContain(knots.toLocaleString('en'));
  });
});

describe('the catalogues of words', () => {
  const folder = new URL('../../../shared/pattern/words/', import.meta.url);
  const files = readdirSync(folder).filter((file) => file.endsWith('-words.ts'));

  it.each(files)('of %s have the same words in all languages, with the same figures', async (file) => {
    const exported: Record<string, unknown> = await import(new URL(file, folder).href);
    const catalogues = Object.values(exported).filter(isCatalogue);
    expect(catalogues.length).toBeGreaterThan(0);
    for (const catalogue of catalogues) {
      for (const language of patternLanguages) {
        expect(shapeOf(catalogue[language])).toEqual(shapeOf(catalogue.en));
      }
    }
  });
});

function isCatalogue(value: unknown): value is Record<Language, unknown> {
  return (
    typeof value === 'object' && value !== null && patternLanguages.every((language) => language in value)
  );
}

/** What an entry is made of: keys, lengths of lists, and how many figures its functions take. */
function shapeOf(value: unknown): unknown {
  if (typeof value === 'function') return `function of ${value.length}`;
  if (Array.isArray(value)) return value.map(shapeOf);
  if (typeof value !== 'object' || value === null) return typeof value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, shapeOf(each)]));
}
