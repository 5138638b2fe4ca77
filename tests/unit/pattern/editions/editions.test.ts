import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { apply } from '../../../../shared/design/edits.ts';
import { limits } from '../../../../shared/design/limits.ts';
import { changesSince } from '../../../../shared/pattern/editions/changes-since.ts';
import {
  addErratum,
  editionAgain,
  madeOf,
  publishEdition,
} from '../../../../shared/pattern/editions/edition.ts';
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
