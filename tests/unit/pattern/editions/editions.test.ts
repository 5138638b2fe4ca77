import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { apply } from '../../../../shared/design/edits.ts';
import { limits } from '../../../../shared/design/limits.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { chosenParts } from '../../../../shared/pattern/chosen-parts.ts';
import { changesSince } from '../../../../shared/pattern/editions/changes-since.ts';
import {
  addErratum,
  changesSinceLast,
  designOfEdition,
  editionAgain,
  editionInForce,
  latestInForce,
  madeOf,
  publishEdition,
} from '../../../../shared/pattern/editions/edition.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import { editionWords } from '../../../../shared/pattern/words/edition-words.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../../notation.ts';

function planned(design: Design) {
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return { chart, plan: plan.value };
}

function published(design: Design, date = '2031-05-08'): Design {
  const { chart, plan } = planned(design);
  const edit = publishEdition(design, chart, plan, { date, note: '' });
  if (!edit.ok) throw new Error(edit.problem.sentence);
  return apply(design, edit.value);
}

function changes(before: Design, now: Design, language: 'en' | 'de' = 'en'): string[] {
  const made = (design: Design) => {
    const { chart, plan } = planned(design);
    return madeOf(design, chart, plan);
  };
  return changesSince(made(before), made(now)).map(editionWords[language].change);
}

const moth = designFromLetters(['aabb', 'abba', 'bbaa']);

describe('editions', () => {
  it('are numbered one after the other', () => {
    const twice = published(published(moth), '2032-01-02');
    expect(twice.editions!.map(({ number, date }) => [number, date])).toEqual([
      [1, '2031-05-08'],
      [2, '2032-01-02'],
    ]);
  });

  it(`are at most ${limits.editions}, and then it is said what to do`, () => {
    let design = moth;
    for (let n = 0; n < limits.editions; n++) design = published(design);
    const { chart, plan } = planned(design);
    const next = publishEdition(design, chart, plan, { date: '2031-05-08', note: '' });
    expect(next).toMatchObject({ ok: false, problem: { code: 'too-many' } });
  });

  it(`take at most ${limits.editionsChars} characters together, so that the design can still be saved`, () => {
    const { chart, plan } = planned(moth);
    const publish = (note: string) => publishEdition(moth, chart, plan, { date: '2031-05-08', note });
    const bare = publish('');
    const chars = bare.ok ? JSON.stringify(bare.value.value).length : 0;
    const note = 'x'.repeat(limits.editionsChars - chars);
    expect(publish(note).ok).toBe(true);
    expect(publish(`${note}x`)).toMatchObject({ ok: false, problem: { code: 'too-large' } });
  });

  it('get errata, and only the one that is named', () => {
    const twice = published(published(moth));
    const edit = addErratum(twice, 1, { date: '2031-06-01', text: 'Row 2, cord 3 is Rust.' });
    if (!edit.ok) throw new Error(edit.problem.sentence);
    expect(apply(twice, edit.value).editions!.map(({ errata }) => errata.length)).toEqual([1, 0]);
    expect(addErratum(twice, 9, { date: '2031-06-01', text: '' })).toMatchObject({ ok: false });
  });

  it('can’t be printed again where what is kept is damaged, and say so', () => {
    const [edition] = published(moth).editions!;
    const damage = [
      { chart: ['2y1 2y2', '1y1 2y2 1y1', '9y9'] },
      { plan: { ...edition!.made.plan, rows: ['- -', '1 2 3', '-'] } },
      { plan: { ...edition!.made.plan, rows: ['- -', '9 -', '- -'] } },
      { plan: { ...edition!.made.plan, rows: [] } },
      { plan: { ...edition!.made.plan, rows: ['- -+2', '1 1 -', '- -'] } },
      { plan: { ...edition!.made.plan, knots: [] } },
    ];
    for (const each of damage) {
      const made = { ...edition!.made, ...each };
      expect(editionAgain(moth, { ...edition!, made }), JSON.stringify(each)).toMatchObject({ ok: false });
    }
  });
});

/** With a text, a photograph and parts of its own. */
const composed: Design = {
  ...moth,
  pattern: {
    parts: ['cover', 'welcome', 'chart', 'rows'],
    texts: { welcome: 'Welcome to the moth.' },
    cover: { mediaType: 'image/png', widthPx: 900, heightPx: 1200, picture: ['iVBORw0KGgo='] },
    labels: { cordFibre: '100 % cotton' },
    copy: { rowsForm: 'compact' },
  },
};

/** The pages of a design as it stands, as data. */
function pagesOf(design: Design) {
  const chart = flatten(design);
  const inForce = editionInForce(design, chart);
  const plan = inForce?.plan ?? planned(design).plan;
  const materials = materialsOf(design, chart, plan);
  const edition = inForce?.edition ?? null;
  return layOutPattern({ design, chart, plan, materials, edition, paper: 'a4', units: 'metric' }).pages;
}

describe('an edition that is printed again', () => {
  const first = published(composed);
  const pages = pagesOf(first);
  const goneOn: Record<string, Design> = {
    'the texts': { ...first, pattern: { ...first.pattern, texts: { welcome: 'Hello.', terms: '' } } },
    'the parts': { ...first, pattern: { ...first.pattern, parts: ['chart'] } },
    'the cover': { ...first, pattern: {} },
    'how it is printed': { ...first, pattern: { ...first.pattern, copy: { ink: 'grey' } } },
    'the hours': { ...first, rates: { ...first.rates, secondsPerKnot: 99 } },
    'how pieces are cut': { ...first, bundles: { fitted: true } },
    'all its cells': { ...first, ...designFromLetters(['bb', 'aa']), editions: first.editions! },
  };

  it.each(Object.entries(goneOn))('is the same page by page, though %s changed since', (_, design) => {
    expect(pagesOf(design)).not.toEqual(pages);
    const again = designOfEdition(design, 1);
    if (!again.ok) throw new Error(again.problem.sentence);
    expect(pagesOf(again.value)).toEqual(pages);
  });

  it('is no longer the edition that is printed, where a text, a part or the cover changed since', () => {
    const inForce = (design: Design) => latestInForce(design, flatten(design))?.number ?? null;
    expect(inForce(first)).toBe(1);
    expect(inForce(goneOn['how it is printed']!)).toBe(1);
    for (const what of ['the texts', 'the parts', 'the cover', 'the hours', 'all its cells'])
      expect(inForce(goneOn[what]!), what).toBeNull();
  });

  it('keeps its photograph once, however many editions have it', () => {
    const cover = { ...composed.pattern!.cover!, picture: ['AAAA'] };
    const other = { ...first, pattern: { ...first.pattern, cover } };
    const fourth = published(published(published(published(composed)), '2032-01-02'));
    const fifth = published({ ...fourth, pattern: { ...fourth.pattern, cover } });
    const kept = fifth.editions!.map(({ made }) => made.pattern?.coverOf ?? made.pattern?.cover?.picture[0]);
    expect(kept).toEqual(['iVBORw0KGgo=', 1, 1, 1, 'AAAA']);
    expect(changesSinceLast(fourth, flatten(fourth))).toEqual([]);
    expect(changesSinceLast(other, flatten(other))).toEqual([{ kind: 'cover' }]);
    const third = designOfEdition(fifth, 3);
    expect(third.ok && third.value.pattern).toEqual(composed.pattern);
    const lost = { ...fifth, editions: fifth.editions!.slice(1) };
    expect(designOfEdition(lost, 2)).toMatchObject({ ok: false, problem: { code: 'damaged' } });
  });

  it('is asked for by its number', () => {
    expect(designOfEdition(first, 2)).toMatchObject({ ok: false, problem: { code: 'not-there' } });
  });

  it('says nothing of texts where it was published before they were kept', () => {
    const { pattern: _, rates: _rates, fitted: _fitted, ...made } = first.editions![0]!.made;
    const old = { ...goneOn['the texts']!, editions: [{ ...first.editions![0]!, made }] };
    expect(changesSinceLast(old, flatten(old))).toEqual([]);
    const again = designOfEdition(old, 1);
    expect(again.ok && again.value.pattern).toEqual(old.pattern);
  });
});

describe('what changed since the last edition', () => {
  it('is nothing where nothing did', () => {
    expect(changes(moth, moth)).toEqual([]);
  });

  it('names the cells by their rows', () => {
    const next = designFromLetters(['aabb', 'aaaa', 'bbab']);
    expect(changes(moth, next)).toEqual(['3 cells of the chart are tied otherwise, in rows 2–3.']);
    expect(changes(moth, next, 'de')).toEqual([
      '3 Kästchen des Zählmusters werden anders geknüpft, in den Reihen 2–3.',
    ]);
    expect(changes(moth, designFromLetters(['aabb', 'abba', 'bbab']))).toEqual([
      '1 cell of the chart is tied otherwise, in row 3.',
    ]);
  });

  it('names the size instead where that is another', () => {
    expect(changes(moth, designFromLetters(['aabb', 'abba']))).toEqual([
      'The chart had 4 cords and 3 rows, and has 4 cords and 2 rows now.',
    ]);
  });

  it('names the parts, the texts, the cover and the usual copy', () => {
    const next: Design = {
      ...composed,
      designer: 'Wanda Reet',
      bundles: { fitted: true },
      rates: { ...moth.rates, secondsPerKnot: 40 },
      pattern: {
        parts: ['welcome', 'cover', 'chart', 'ticks'],
        texts: { terms: 'Tie one for yourself.' },
        copy: { rowsForm: 'long' },
      },
    };
    expect(changes(composed, next)).toEqual([
      'Another designer is named.',
      'Pieces are cut to measure where all were of one length, or the other way round.',
      'The hours are reckoned otherwise.',
      'Printed besides: Tick sheet.',
      'Printed no more: Written rows.',
      'The parts stand in another order.',
      'The welcome reads otherwise.',
      'The text of the terms reads otherwise.',
      'The cover shows another picture.',
      'How a copy is usually printed is set otherwise; copies of the edition can still be printed either way.',
    ]);
    expect(changes(composed, next, 'de')).toContain('Nicht mehr gedruckt: Ausgeschriebene Reihen.');
  });

  it('takes parts that are named for the usual ones where they are the same', () => {
    const named = { ...moth, pattern: { parts: [...chosenParts(moth)] } };
    expect(changes(moth, named)).toEqual([]);
  });

  it('names yarns and settings', () => {
    const yarns = moth.yarns.map((yarn, i) => (i === 1 ? { ...yarn, name: 'Soot', color: '#202020' } : yarn));
    const next = {
      ...moth,
      title: 'Owl',
      yarns,
      startCorner: 'top-right' as const,
      fringe: { ...moth.fringe, longMm: moth.fringe.longMm + 10 },
      tying: { ...moth.tying, tailMm: 80 },
    };
    expect(changes(moth, next)).toEqual([
      `The title was “${moth.title}” and is “Owl” now.`,
      `The yarn “${moth.yarns[1]!.name}” is called “Soot” now.`,
      'The yarn “Soot” has another colour.',
      'Row 1 begins at the other side.',
      'The fringe is cut otherwise.',
      'Working length, tails or carries are other ones, and so are the pieces to cut.',
    ]);
  });
});
