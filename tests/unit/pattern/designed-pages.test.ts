/** Cover, welcome, finishing, care and the designer's page: what they say, and that their figures are the plan's. */
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { type PatternPart, patternLanguages, patternParts } from '../../../shared/design/pattern-schema.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { copyOf } from '../../../shared/pattern/copy.ts';
import { emptyImprint, type Imprint } from '../../../shared/pattern/imprint.ts';
import { layOutPattern } from '../../../shared/pattern/lay-out-pattern.ts';
import type { Page, PatternDocument, TextItem } from '../../../shared/pattern/page/page.ts';
import { margins } from '../../../shared/pattern/page/papers.ts';
import { plainItems } from '../../../shared/pattern/page/plain-items.ts';
import type { PatternInput } from '../../../shared/pattern/pattern-input.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { formatLength } from '../../../shared/units/length.ts';
import { formatMass } from '../../../shared/units/mass.ts';
import { formatTime } from '../../../shared/units/time.ts';
import { contrastRatio } from '../../../shared/yarn/colour-contrast.ts';
import { textBounds } from '../../item-bounds.ts';
import { designFromLetters } from '../../notation.ts';
import { outside, printedOver } from '../../page-laws.ts';

const moth = designFromLetters(['aabbaa', 'abccba', 'abccba', 'aabbaa'], {
  title: 'Moth',
  designer: 'Ines Marlow',
  fringe: { shape: 'v', longMm: 120, shortMm: 60 },
});
const imprint: Imprint = {
  ...emptyImprint,
  name: 'I. Marlow',
  workshop: 'Workshop at the Weir',
  contact: ['hello@weir.example', 'Weir Lane 4'],
  about: 'Ines ties pictures.\nShe lives by the water.',
};

function inputOf(design: Design, rest: Partial<PatternInput> = {}): PatternInput {
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  return { design, chart, plan: plan.value, materials, paper: 'a4', units: 'metric', imprint, ...rest };
}

function laidOut(design: Design, rest: Partial<PatternInput> = {}): PatternDocument {
  return layOutPattern(inputOf(design, rest));
}

function pagesOf({ pages }: PatternDocument, part: PatternPart): Page[] {
  return pages.filter((page) => page.part === part);
}

function textItems(pages: readonly Page[]): TextItem[] {
  return pages.flatMap(({ items }) => plainItems(items)).filter((item) => item.kind === 'text');
}

function running(pages: readonly Page[]): string {
  return textItems(pages)
    .map(({ text }) => text)
    .join(' ');
}

describe('the welcome', () => {
  it('has the contents, each with the page where it begins', () => {
    const document = laidOut(moth);
    const leading = textItems(pagesOf(document, 'welcome')).filter(({ link }) => link !== undefined);
    const names = leading.filter((_, i) => i % 2 === 0).map(({ text, link }) => ({ text, link }));
    const begins = (part: PatternPart) => document.pages.findIndex((page) => page.part === part) + 1;
    expect(names).toEqual(
      expect.arrayContaining([
        { text: 'Materials', link: begins('materials') },
        { text: 'Chart', link: begins('chart') },
        { text: 'Finishing', link: begins('finishing') },
        { text: 'Cautions and care', link: begins('care') },
      ]),
    );
    expect(leading.filter((_, i) => i % 2 === 1).map(({ text }) => Number(text))).toEqual(
      names.map(({ link }) => link),
    );
  });

  it('leads to the right pages whatever is printed and however large its type is, and so do all links', () => {
    const ofText: PatternPart[] = [
      'cover',
      'welcome',
      'materials',
      'knots',
      'finishing',
      'fringe',
      'care',
      'designer',
    ];
    for (const parts of [[...patternParts], ofText]) {
      const input = inputOf({ ...moth, pattern: { parts } }, { units: 'both', imprint: emptyImprint });
      for (const language of patternLanguages)
        for (const cells of ['standard', 'large'] as const)
          for (const paper of ['a4', 'letter'] as const) {
            const document = layOutPattern({ ...input, paper, copy: { ...copyOf(moth), language, cells } });
            const first = (part: PatternPart) => document.pages.findIndex((page) => page.part === part) + 1;
            const linksOf = (part: PatternPart) =>
              textItems(pagesOf(document, part)).flatMap(({ link }) => (link === undefined ? [] : [link]));
            const begins = parts
              .slice(2)
              .map(first)
              .filter((page) => page > 0);
            expect([...new Set(linksOf('welcome'))]).toEqual(begins);
            expect(linksOf('materials')).toEqual([first('care')]);
            expect(linksOf('finishing')).toEqual([first('knots') + pagesOf(document, 'knots').length - 1]);
          }
    }
  });

  it('tells the figures of the materials at a glance', () => {
    const { materials } = inputOf(moth);
    const words = running(pagesOf(laidOut(moth), 'welcome'));
    const width = formatLength(materials.finished.widthMm, 'metric');
    expect(words).toContain(
      `Picture ${width} × ${formatLength(materials.finished.knottedHeightMm, 'metric')}`,
    );
    expect(words).toContain(
      `With fringe ${width} × ${formatLength(materials.finished.heightWithFringeMm, 'metric')}`,
    );
    expect(words).toContain('Cords 6 Rows 4 Knots 24 Yarns 3');
    expect(words).toContain(`about ${formatTime(materials.totals.seconds)}`);
  });

  it('says what the designer has written, a paragraph each line, in place of the first version', () => {
    const texts = { welcome: 'Hello from the weir.\n\nIt was a cold night.', skill: '' };
    const pages = pagesOf(laidOut({ ...moth, pattern: { texts } }), 'welcome');
    const paragraphs = textItems(pages).filter(({ role }) => role === 'paragraph');
    expect(paragraphs.map(({ text }) => text)).toEqual(
      expect.arrayContaining(['Hello from the weir.', 'It was a cold night.']),
    );
    const words = running(pages);
    expect(words).not.toContain('There is only one knot to learn');
    expect(words).not.toContain('What you should know');
    expect(words).toContain('Terms of use');
  });

  it('goes on over pages where a text is long', () => {
    const texts = { welcome: 'A long letter from the weir. '.repeat(300) };
    expect(pagesOf(laidOut({ ...moth, pattern: { texts } }), 'welcome').length).toBeGreaterThan(1);
  });
});

describe('the page on finishing', () => {
  it('counts the loose ends and tells the mass as the materials do, never less', () => {
    const { materials } = inputOf(moth);
    const words = running(pagesOf(laidOut(moth), 'finishing'));
    expect(words).toContain(`${materials.totals.looseEnds} loose ends`);
    expect(words).toContain(formatMass(materials.totals.massG, 'metric', { enough: true }));
    expect(words).toContain('from 6 cm to 12 cm below the last row');
  });

  it('shows how ends are tied off only where there are any, and only where the knots don’t', () => {
    const alone = laidOut({ ...moth, pattern: { parts: ['finishing'] } });
    expect(running(pagesOf(alone, 'finishing'))).toContain('Tying off, seen from the back');
    const all = laidOut(moth);
    const drawn = all.pages.flatMap(({ items }) =>
      items.filter((item) => item.kind === 'figure' && item.alt.startsWith('The flat knot drawn up')),
    );
    expect(drawn).toHaveLength(1);
    const page = all.pages.findIndex(({ items }) => items.includes(drawn[0]!)) + 1;
    const finishing = pagesOf(all, 'finishing');
    expect(running(finishing)).toContain(`How ends are tied off is drawn on page ${page}.`);
    expect(textItems(finishing).find(({ text }) => text.startsWith('How ends'))!.link).toBe(page);
    const bare = running(pagesOf(laidOut(designFromLetters(['--', '--'])), 'finishing'));
    expect(bare).not.toContain('Tying off');
  });

  it('tells in the copy’s units how long loose ends are left, and nothing of what there is not', () => {
    const told = (design: Design, units: PatternInput['units'] = 'metric') =>
      running(pagesOf(laidOut(design, { units }), 'finishing'));
    expect(told(moth)).toContain('trim them to about 2.5 cm.');
    expect(told(moth, 'us')).toContain('trim them to about 1 in.');
    const short = { ...moth, tying: { ...moth.tying, tailMm: 20 } };
    expect(told(short)).toContain('trim them to about 2 cm.');
    const bare = designFromLetters(['--', '--'], { fringe: { shape: 'straight', longMm: 0, shortMm: 0 } });
    expect(told(bare)).not.toMatch(/loose ends|fringe|knotted together/i);
    const straight = { ...moth, fringe: { shape: 'straight' as const, longMm: 90, shortMm: 90 } };
    expect(told(straight)).toContain('Trim the fringe last: all cords alike, 9 cm below the last row.');
    const without = { ...moth, pattern: { parts: ['finishing' as const] } };
    expect(told(moth)).toContain('against its template');
    expect(told(without)).not.toContain('template');
  });

  it('takes over from the order of work, which tells of the ends only where it is left out', () => {
    const reading = (parts: PatternPart[]) =>
      running(pagesOf(laidOut({ ...moth, pattern: { parts } }), 'reading'));
    expect(reading(['reading', 'finishing'])).toContain('go on with the page on finishing');
    expect(reading(['reading', 'finishing'])).not.toContain('loose ends');
    expect(reading(['reading'])).toContain('knot neighbouring loose ends together twice');
    expect(reading(['reading', 'knots'])).not.toContain('vertical double half hitch');
    expect(reading(['reading'])).toContain('vertical double half hitch');
  });

  it('numbers the designer’s own steps', () => {
    const pattern = { texts: { finishing: 'Trim it.\nHang it.' } };
    const words = running(pagesOf(laidOut({ ...moth, pattern }), 'finishing'));
    expect(words).toContain('1 Trim it. 2 Hang it.');
  });
});

describe('the designer’s page', () => {
  it('tells who publishes the pattern where that is somebody else', () => {
    const imprint = { ...emptyImprint, name: 'Seven Knots' };
    const words = running(pagesOf(laidOut(moth, { imprint }), 'designer'));
    expect(words).toContain('Ines Marlow published by Seven Knots');
    const same = { ...emptyImprint, name: 'Ines Marlow' };
    expect(pagesOf(laidOut(moth, { imprint: same }), 'designer')).toEqual([]);
  });

  it('names designer, workshop and contact, and says where to write about a mistake', () => {
    const words = running(pagesOf(laidOut(moth), 'designer'));
    for (const each of [
      'Ines Marlow',
      'Workshop at the Weir',
      'hello@weir.example',
      'She lives by the water.',
    ])
      expect(words).toContain(each);
    expect(words).toContain('Please write, and name the page and the row.');
  });

  it('tells the errata of the edition', () => {
    const edition = {
      number: 2,
      date: '2031-05-08',
      errata: [{ date: '2031-06-01', text: 'Row 3 begins with 2 Dusk.' }],
    };
    const words = running(pagesOf(laidOut(moth, { edition }), 'designer'));
    expect(words).toContain('This is Edition 2, 2031-05-08.');
    expect(words).toContain('Row 3 begins with 2 Dusk.');
  });

  it('is not printed where nobody is named, or nothing but a name, which stands on the cover', () => {
    for (const designer of ['', 'Ines Marlow']) {
      const document = laidOut({ ...moth, designer }, { imprint: emptyImprint });
      expect(pagesOf(document, 'designer')).toEqual([]);
    }
  });

  it('shows the knotted picture beside its words, in its proportions', () => {
    const [page] = pagesOf(laidOut(moth), 'designer');
    const [picture, ...others] = plainItems(page!.items).filter((item) => item.kind === 'cells');
    expect(others).toEqual([]);
    const { gauge } = inputOf(moth).materials;
    expect(picture!.cellWidth / picture!.cellHeight).toBeCloseTo(gauge.pitchMm / gauge.rowHeightMm, 6);
    expect(picture).toMatchObject({ columns: 6, rows: 4, alt: 'The picture of “Moth” as it is knotted.' });
  });
});

describe('the cover', () => {
  /** A PNG of one pixel. */
  const png =
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==';

  it('is the maker’s own photograph where there is one, in its proportions', () => {
    const cover = { mediaType: 'image/png' as const, widthPx: 1, heightPx: 1, picture: [png] };
    const [page] = pagesOf(laidOut({ ...moth, pattern: { cover } }), 'cover');
    const [image, ...others] = plainItems(page!.items).filter((item) => item.kind === 'image');
    expect(others).toEqual([]);
    expect(image).toMatchObject({ alt: 'Photograph of the hanging “Moth”.' });
    expect(image!.width).toBeCloseTo(image!.height, 9);
    expect(plainItems(page!.items).some((item) => item.kind === 'cells')).toBe(false);
  });

  /** A PNG whose header says how large it is. */
  function photograph(widthPx: number, heightPx: number) {
    const bytes = Buffer.from(png, 'base64');
    bytes.writeUInt32BE(widthPx, 16);
    bytes.writeUInt32BE(heightPx, 20);
    return { mediaType: 'image/png' as const, widthPx, heightPx, picture: [bytes.toString('base64')] };
  }

  it('is filled from edge to edge by a photograph that lies, with the title right above it', () => {
    const [page] = pagesOf(laidOut({ ...moth, pattern: { cover: photograph(300, 200) } }), 'cover');
    const items = plainItems(page!.items);
    const image = items.find((item) => item.kind === 'image')!;
    expect(image.width).toBeCloseTo(page!.widthMm - margins.left - margins.right, 6);
    expect(items.some((item) => item.kind === 'box' && item.height > 100)).toBe(false);
    const title = textItems([page!]).find(({ text }) => text === 'Moth')!;
    expect(image.y - title.y).toBeGreaterThan(6);
    expect(image.y - title.y).toBeLessThan(20);
    const upright = pagesOf(laidOut({ ...moth, pattern: { cover: photograph(200, 300) } }), 'cover');
    expect(textItems(upright).find(({ text }) => text === 'Moth')!.y).toBeLessThan(title.y - 20);
  });

  it('has room between its figures in all units and sizes of type', () => {
    for (const units of ['metric', 'us', 'both'] as const)
      for (const language of patternLanguages)
        for (const cells of ['standard', 'large'] as const) {
          const copy = { ...copyOf(moth), language, cells };
          const [page] = pagesOf(laidOut(moth, { units, copy }), 'cover');
          expect(printedOver(page!)).toEqual([]);
          expect(outside(page!)).toEqual([]);
          const figures = textItems([page!]).filter(({ face, y }) => face === 'serif-bold' && y > 200);
          expect(figures).toHaveLength(4);
          for (const line of new Set(figures.map(({ y }) => y))) {
            const placed = figures.filter(({ y }) => y === line).map(textBounds);
            placed.slice(1).forEach(({ left }, i) => {
              expect(left - placed[i]!.right).toBeGreaterThan(3);
            });
          }
        }
  });

  it('is the drawn hanging where the photograph can’t be read', () => {
    const cover = { mediaType: 'image/jpeg' as const, widthPx: 1, heightPx: 1, picture: [png] };
    const [page] = pagesOf(laidOut({ ...moth, pattern: { cover } }), 'cover');
    expect(plainItems(page!.items).some((item) => item.kind === 'cells')).toBe(true);
  });

  it('carries the mark, the same bytes as the designer’s page', () => {
    const mark = { mediaType: 'image/png' as const, base64: png };
    const document = laidOut(moth, { imprint: { ...imprint, mark } });
    const images = (part: PatternPart) =>
      pagesOf(document, part)
        .flatMap(({ items }) => plainItems(items))
        .filter((item) => item.kind === 'image');
    expect(images('cover')).toHaveLength(1);
    expect(images('designer')[0]!.bytes).toBe(images('cover')[0]!.bytes);
  });

  it('has a title of 200 letters whole, in lines within its margins', () => {
    const title = 'The long shore at Harrow Point '.repeat(7).slice(0, 200).trim();
    expect(running(pagesOf(laidOut({ ...moth, title }), 'cover'))).toContain(title);
  });
});

describe('a copy in greys', () => {
  it('has no colour on any page', () => {
    const design = { ...moth, pattern: { parts: [...patternParts] } };
    const colourOf = (item: object) => JSON.stringify(item).match(/#[0-9a-f]{6}/gi) ?? [];
    const printed = (ink: 'grey' | 'colour') =>
      laidOut(design, { copy: { ...copyOf(design), ink } }).pages.flatMap(({ items }) =>
        plainItems(items).flatMap(colourOf),
      );
    const isColour = (hex: string) => hex.slice(1, 3) !== hex.slice(3, 5) || hex.slice(3, 5) !== hex.slice(5);
    expect(printed('colour').some(isColour)).toBe(true);
    expect(printed('grey').filter(isColour)).toEqual([]);
  });
});

describe('a copy in large print', () => {
  const large = (language: 'en' | 'de', units: PatternInput['units']) => {
    const parts = patternParts.filter((part) => !charts.includes(part));
    const design = { ...moth, pattern: { parts } };
    return laidOut(design, { copy: { ...copyOf(design), language, cells: 'large' }, units });
  };
  /** Pages with tables of rows are tried with the charts. */
  const charts: readonly PatternPart[] = ['map', 'chart', 'chart-symbols', 'rows', 'ticks', 'strands'];
  /** 16 points, the least of large print: common practice, no source. */
  const LEAST_MM = (16 * 25.4) / 72;

  it.each(patternLanguages)('sets all that is read in 16 points at least, in %s', (language) => {
    for (const units of ['metric', 'both'] as const) {
      const read = textItems(large(language, units).pages).filter(
        ({ role, face }) => role !== 'foot' && role !== 'aside' && face !== 'symbols',
      );
      expect(read.length).toBeGreaterThan(100);
      expect(read.filter(({ sizeMm }) => sizeMm < LEAST_MM).map(({ text }) => text)).toEqual([]);
    }
  });

  it('keeps long names of yarns within its margins', () => {
    const yarns = moth.yarns.map((yarn, i) => ({
      ...yarn,
      name: `${'Linen of the long shore '.repeat(8)}${i}`,
    }));
    const design = { ...moth, yarns, pattern: { parts: ['materials' as const, 'cut-list' as const] } };
    const copy = { ...copyOf(design), cells: 'large' as const };
    expect(laidOut(design, { copy, units: 'both' }).pages.flatMap(outside)).toEqual([]);
  });

  it.each(patternLanguages)('keeps to its margins, and prints no text over another, in %s', (language) => {
    for (const page of large(language, 'both').pages) {
      expect(outside(page)).toEqual([]);
      expect(printedOver(page)).toEqual([]);
    }
  });
});

describe('a copy in standard print', () => {
  it('has no letter below 7.5 points, and grey notes of 4.5 to 1 at least', () => {
    // 7.5 points: common practice, no source. 4.5 to 1: WCAG 2.2, success criterion 1.4.3.
    const texts = textItems(laidOut(moth, { units: 'both' }).pages).filter(
      ({ role, face }) => role !== 'aside' && face !== 'symbols',
    );
    expect(texts.filter(({ sizeMm }) => sizeMm < (7.5 * 25.4) / 72).map(({ text }) => text)).toEqual([]);
    expect(texts.filter(({ color }) => contrastRatio(color, '#ffffff') < 4.5)).toEqual([]);
  });
});
