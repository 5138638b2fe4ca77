import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import type { Language } from '../../../../shared/design/pattern-schema.ts';
import { planCarefully } from '../../../../shared/tying/careful-person/plan-carefully.ts';
import type { StepForm } from '../../../../shared/tying/steps/step-language.ts';
import { stepWords } from '../../../../shared/tying/steps/step-words.ts';
import { stepsOf } from '../../../../shared/tying/steps/steps-of.ts';
import { tyingOrder } from '../../../../shared/tying/steps/tying-order.ts';
import type { Units } from '../../../../shared/units/units.ts';
import { designFromLetters } from '../../../notation.ts';

const names = ['Moss', 'Bark', 'Fern'];

interface Telling {
  form?: StepForm;
  units?: Units;
  language?: Language;
  startCorner?: Design['startCorner'];
  tying?: Partial<Design['tying']>;
}

/** The steps in words, a list for each row. */
function told(
  letters: string[],
  { form = 'compact', units = 'metric', language = 'en', ...rest }: Telling = {},
): string[][] {
  const base = designFromLetters(letters);
  const design = {
    ...base,
    startCorner: rest.startCorner ?? base.startCorner,
    tying: { ...base.tying, ...rest.tying },
  };
  const chart = flatten(design);
  const plan = planCarefully(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const yarnsById = new Map(
    design.yarns.map((yarn, i) => [yarn.id, { name: names[i] ?? yarn.name }] as const),
  );
  const rows = stepsOf(tyingOrder(chart, plan.value));
  return rows.map((row) => row.map((step) => stepWords(step, { yarnsById, units, form, language })));
}

describe('the steps of a row', () => {
  it('keep the yarn in hand at the edge, and leave what is tied again further down', () => {
    expect(told(['aab', 'aab'])).toEqual([
      [
        'Row 1, left to right; lift 3',
        'attach Moss, piece 1, at 1',
        '2 Moss (1-2)',
        'leave Moss until row 2',
        'attach Bark, piece 1, at 3',
        '1 Bark (3)',
      ],
      [
        'Row 2, right to left; lift 2',
        'turn Bark at 3',
        '1 Bark (3)',
        'end Bark, piece 1, at 3',
        'turn Moss at 2',
        '2 Moss (2-1)',
        'end Moss, piece 1, at 1',
      ],
    ]);
  });

  it('carry a strand behind the run between', () => {
    expect(told(['aabba'])[0]).toEqual([
      'Row 1, left to right; lift 3, 5',
      'attach Moss, piece 1, at 1',
      '2 Moss (1-2)',
      'leave Moss until cord 5',
      'attach Bark, piece 1, at 3',
      '2 Bark (3-4)',
      'end Bark, piece 1, at 4',
      'carry Moss from cord 2 to 5',
      '1 Moss (5)',
      'end Moss, piece 1, at 5',
    ]);
  });

  it.each([
    ['en', 'carry Moss down from row 1 at 1'],
    ['de', 'Moss aus Reihe 1 an 1 nach unten mitführen'],
  ] as const)('tell a carry straight down by its one cord (%s)', (language, carried) => {
    expect(told(['ab', 'cc', 'ab'], { language })[2]).toContain(carried);
  });

  it('carry a strand on from hand where nothing else is tied between', () => {
    expect(told(['aa', '--', 'aa'])).toEqual([
      ['Row 1, left to right', 'attach Moss, piece 1, at 1', '2 Moss (1-2)'],
      ['Row 2, right to left: all bare, nothing to tie'],
      ['Row 3, left to right', 'carry Moss on to 1', '2 Moss (1-2)', 'end Moss, piece 1, at 2'],
    ]);
  });

  it('join a fresh piece where one runs out, between two knots', () => {
    // Three knots of 36.8 mm and two tails of 65 mm.
    expect(told(['aaaaa'], { tying: { workingLengthMm: 245 } })[0]).toEqual([
      'Row 1, left to right',
      'attach Moss, piece 1, at 1',
      '3 Moss (1-3)',
      'join Moss, piece 2, at 4',
      '2 Moss (4-5)',
      'end Moss, piece 2, at 5',
    ]);
  });

  it('begin at the right where the maker starts top right', () => {
    expect(told(['aab'], { startCorner: 'top-right' })[0]).toEqual([
      'Row 1, right to left; lift 2',
      'attach Bark, piece 1, at 3',
      '1 Bark (3)',
      'end Bark, piece 1, at 3',
      'attach Moss, piece 1, at 2',
      '2 Moss (2-1)',
      'end Moss, piece 1, at 1',
    ]);
  });
});

describe('a step in full', () => {
  it('says where tails point, in the units of the maker', () => {
    expect(told(['ab'], { form: 'long' })[0]).toEqual([
      'Row 1 goes from left to right. Before you tie it, lift cord 2.',
      'Attach piece 1 of Moss at cord 1. Let a tail of 6.5 cm point back to the left, behind the work.',
      'Tie 1 knot with Moss, at cord 1.',
      'Piece 1 of Moss ends after cord 1. Let a tail of 6.5 cm point on to the right, behind the work.',
      'Attach piece 1 of Bark at cord 2. Let a tail of 6.5 cm point back to the left, behind the work.',
      'Tie 1 knot with Bark, at cord 2.',
      'Piece 1 of Bark ends after cord 2. Let a tail of 6.5 cm point on to the right, behind the work.',
    ]);
    // 65 mm are 2.56 in: never less than it must be.
    expect(told(['a'], { form: 'long', units: 'us' })[0]![1]).toContain('a tail of 2 3/4 in point back');
    expect(told(['a'], { form: 'long', tying: { tailMm: 0 } })[0]![1]).toBe(
      'Attach piece 1 of Moss at cord 1.',
    );
  });

  it('says how a strand is carried, and behind what', () => {
    const [, second] = told(['aaabbc', 'abcbba'], { form: 'long', startCorner: 'top-right' });
    expect(second).toContain(
      'Take up the Moss that hangs at cord 1 of this row, and carry it behind the work, 5 cords to the right, to cord 6. It passes behind 1 Bark (2), 1 Fern (3) and 2 Bark (4-5), and takes about 2.6 cm of yarn.',
    );
  });

  it('says what will be tied in front of a strand that comes back', () => {
    const [first, second] = told(['aaabbaaa', 'aaaaaabb'], { form: 'long' });
    expect(first).toContain('Leave Bark hanging behind cord 5 until row 2, where it goes on at cord 8.');
    expect(second![1]).toBe(
      'Take up the Bark that hangs at cord 5 of row 1, and carry it behind the work, 1 row down and 3 cords to the right, to cord 8. It will lie behind 2 Moss (5-6) and 1 Bark (7), still to be tied, and takes about 2.1 cm of yarn.',
    );
  });

  it('says which piece ends at a join and which begins', () => {
    expect(told(['aaaaa'], { form: 'long', tying: { workingLengthMm: 245 } })[0]![3]).toBe(
      'Piece 1 of Moss ends after cord 3: join piece 2 at cord 4. Leave tails of 6.5 cm behind the work: the old one points on to the right, the new one back to the left.',
    );
  });
});

describe('the steps of a row in German', () => {
  it('are told in short', () => {
    expect(told(['aabba'], { language: 'de' })[0]).toEqual([
      'Reihe 1, von links nach rechts; anheben 3, 5',
      'Moss, Stück 1, an 1 ansetzen',
      '2 Moss (1-2)',
      'Moss bis Schnur 5 hängen lassen',
      'Bark, Stück 1, an 3 ansetzen',
      '2 Bark (3-4)',
      'Bark, Stück 1, an 4 beenden',
      'Moss von Schnur 2 bis 5 mitführen',
      '1 Moss (5)',
      'Moss, Stück 1, an 5 beenden',
    ]);
  });

  it('are told in sentences, with figures as German writes them', () => {
    const metric = told(['aabba'], { language: 'de', form: 'long' })[0]!;
    expect(metric[0]).toBe('Reihe 1 geht von links nach rechts. Heben Sie vorher die Schnüre 3 und 5 an.');
    expect(metric[1]).toBe(
      'Setzen Sie Stück 1 von Moss an Schnur 1 an. Lassen Sie ein Fadenende von 6,5 cm hinter der Arbeit zurück nach links zeigen.',
    );
    // 65 mm are 2.56 in: enough is 2 3/4.
    const us = told(['aabba'], { language: 'de', form: 'long', units: 'us' })[0]!;
    expect(us[1]).toContain('ein Fadenende von 2 3/4 Zoll');
  });
});
