import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import type { Pin } from '../../../../shared/design/schema.ts';
import { planCarefully } from '../../../../shared/tying/careful-person/plan-carefully.ts';
import { planFaults } from '../../../../shared/tying/laws/check-plan.ts';
import { pinFaults } from '../../../../shared/tying/pins/pin-faults.ts';
import type { Plan } from '../../../../shared/tying/plan.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import type { PlanWishes } from '../../../../shared/tying/plan-wishes.ts';
import { designFromLetters } from '../../../notation.ts';

const cut = (row: number, cord: number): Pin => ({ kind: 'cut', row, cord });
const noCarry = (row: number, cord: number): Pin => ({ kind: 'no-carry', row, cord });
const carry = (row: number, cord: number, toRow: number, toCord: number): Pin => ({
  kind: 'carry',
  row,
  cord,
  toRow,
  toCord,
});

function pinned(rows: readonly string[], pins: readonly Pin[], tying: Partial<Design['tying']> = {}): Design {
  const design = designFromLetters(rows);
  return { ...design, pins: [...pins], tying: { ...design.tying, ...tying } };
}

function planOf(design: Design, wishes?: PlanWishes): Plan {
  const plan = planStrands(design, flatten(design), wishes);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  expect(planFaults(plan.value, flatten(design))).toEqual([]);
  return plan.value;
}

/** 'y1 1:1-2 3:4-3|3:2-1': the yarn, then row, first and last cord of each stretch, with a bar where a piece is joined. */
function strandsOf({ strands }: Plan): string[] {
  return strands.map(({ yarn, pieces }) => {
    const words = pieces.map(({ stretches }) =>
      stretches.map(({ row, from, to }) => `${row}:${from}-${to}`).join(' '),
    );
    return `${yarn} ${words.join('|')}`;
  });
}

function sentences(design: Design, wishes?: Omit<PlanWishes, 'effort'>): string[] {
  return pinFaults(design, flatten(design), wishes).map(({ sentence }) => sentence);
}

describe('a pin to cut', () => {
  it('ends the strand where it would have been carried on', () => {
    expect(strandsOf(planOf(pinned(['aba'], [])))).toEqual(['y1 1:1-1 1:3-3', 'y2 1:2-2']);
    const plan = planOf(pinned(['aba'], [cut(1, 1)]));
    expect(strandsOf(plan)).toEqual(['y1 1:1-1', 'y2 1:2-2', 'y1 1:3-3']);
    expect(plan.pins).toEqual([cut(1, 1)]);
  });

  it('cuts a turn too', () => {
    expect(strandsOf(planOf(pinned(['a', 'a'], [cut(1, 1)])))).toEqual(['y1 1:1-1', 'y1 2:1-1']);
  });

  it('is reported where no run ends, as after a change of the chart', () => {
    const design = pinned(['aab'], [cut(1, 1), cut(1, 2)]);
    expect(sentences(design)).toEqual([
      'Row 1, cord 1: no run ends there now, so nothing can be cut. Remove the pin, or set it anew.',
    ]);
    expect(planOf(design).pins).toEqual([cut(1, 2)]);
  });
});

describe('a pin against carries', () => {
  it('lets none pass behind that cell of the row it arrives in', () => {
    expect(strandsOf(planOf(pinned(['aba'], [noCarry(1, 2)])))).toEqual(['y1 1:1-1', 'y2 1:2-2', 'y1 1:3-3']);
  });

  it('lets none hang there between the rows that it leaves and reaches', () => {
    const rows = ['ab', 'bb', 'ab'];
    expect(strandsOf(planOf(pinned(rows, [])))[0]).toBe('y1 1:1-1 3:1-1');
    expect(strandsOf(planOf(pinned(rows, [noCarry(2, 1)])))).toContain('y1 3:1-1');
  });

  it('does not keep a strand from beginning, ending or turning there', () => {
    const pins = [noCarry(1, 1), noCarry(1, 3), noCarry(2, 3)];
    expect(strandsOf(planOf(pinned(['aba', 'bba'], pins)))[0]).toBe('y1 1:1-1 1:3-3 2:3-3');
  });

  it('is reported where the chart does not reach', () => {
    expect(sentences(pinned(['ab'], [noCarry(2, 1)]))).toEqual([
      'Row 2, cord 1: the chart does not reach so far. Remove the pin, or set it anew.',
    ]);
  });
});

describe('a pin to carry', () => {
  /** Carried over 8 cords and 2 rows a strand costs 52 mm of yarn and 30 for two rows, a fresh piece its two tails. */
  const far = ['abbbbbbbb', 'bbbbbbbbb', 'bbbbbbbba'];

  it('carries a strand though a fresh piece would cost less', () => {
    const dear = { effortMm: 0, tailMm: 30 };
    expect(strandsOf(planOf(pinned(far, [], dear)))).toContain('y1 3:9-9');
    const plan = planOf(pinned(far, [carry(1, 1, 3, 9)], dear));
    expect(strandsOf(plan)[0]).toBe('y1 1:1-1 3:9-9');
    expect(plan.pins).toHaveLength(1);
  });

  it('joins a fresh piece before the last knot where the carry needs the room', () => {
    // Each piece holds three knots or a little more: after three there is no room for the carry and one more.
    const design = pinned(['aaabaaa'], [carry(1, 3, 1, 5)], {
      workingLengthMm: 130 + 3 * 37.7 + 5,
      tailMm: 65,
    });
    expect(strandsOf(planOf(design))[0]).toBe('y1 1:1-2|1:3-3 1:5-5|1:6-7');
  });

  it.each([
    [
      'two yarns',
      ['ab'],
      carry(1, 1, 1, 2),
      {},
      'these are two yarns, and a strand is of one. Remove the pin.',
    ],
    [
      'the wrong order',
      ['aba'],
      carry(1, 3, 1, 1),
      {},
      'the second is tied before the first. Remove the pin.',
    ],
    [
      'too many cords',
      ['abba'],
      carry(1, 1, 1, 4),
      { carryMaxCords: 2 },
      'that is 3 cords, and you carry over at most 2. Allow longer carries, or remove the pin.',
    ],
    [
      'too many rows',
      ['ab', 'bb', 'ab'],
      carry(1, 1, 3, 1),
      { carryMaxRows: 1 },
      'that is 2 rows, and you carry over at most 1. Allow longer carries, or remove the pin.',
    ],
    [
      'bare cells',
      ['a-a'],
      carry(1, 1, 1, 3),
      {},
      'it would lie behind bare cells of row 1, where it shows. Remove the pin.',
    ],
    [
      'a piece that is too short',
      ['abba'],
      carry(1, 1, 1, 4),
      { workingLengthMm: 130 + 2 * 37.7 },
      'no piece would hold this carry with a knot on either side. Make the working length longer, or remove the pin.',
    ],
    [
      'no run that ends with the first',
      ['aaba'],
      carry(1, 1, 1, 4),
      {},
      'no run ends with the first of these knots now. Remove the pin, or set it anew.',
    ],
    [
      'no run that begins with the second',
      ['abaa'],
      carry(1, 1, 1, 4),
      {},
      'no run begins with the second of these knots now. Remove the pin, or set it anew.',
    ],
  ])('is reported where it meets %s', (_, rows, pin, tying, why) => {
    const design = pinned(rows, [pin], tying);
    expect(sentences(design)).toEqual([
      `Row ${pin.row}, cord ${pin.cord} to row ${pin.toRow}, cord ${pin.toCord}: ${why}`,
    ]);
    const { pins: _pins, ...plain } = design;
    expect(planOf(design)).toEqual(planOf(plain));
  });

  it('is reported where more strands would hang at once than are wished for', () => {
    const design = pinned(['ab', 'ab'], [carry(1, 2, 2, 2), carry(1, 1, 2, 1)]);
    expect(sentences(design, { liveWish: 1 })).toEqual([
      'Row 1, cord 1 to row 2, cord 1: more strands would hang at once than you wish for. Wish for more, or remove the pin.',
    ]);
    expect(planOf(design, { liveWish: 1 }).totals.liveMax).toBe(1);
    expect(planOf(design).totals.liveMax).toBe(2);
  });
});

describe('pins that contradict each other', () => {
  const ends = 'another pin cuts the strand there. Remove one of the two.';
  const on = 'another pin carries this strand on. Remove one of the two.';
  const across = 'another pin carries a strand across it. Remove one of the two.';
  const passes = 'another pin lets no carry pass on its way. Remove one of the two.';
  const to = 'another pin carries a strand to the second. Remove one of the two.';
  const from = 'another pin carries the strand of the first to other knots. Remove one of the two.';

  it.each([
    ['cut, then carried', [cut(1, 1), carry(1, 1, 1, 3)], ends],
    ['carried, then cut', [carry(1, 1, 1, 3), cut(1, 1)], on],
    ['carried across, then closed', [carry(1, 1, 1, 3), noCarry(1, 2)], across],
    ['closed, then carried across', [noCarry(1, 2), carry(1, 1, 1, 3)], passes],
    ['reached by two', [carry(1, 1, 1, 5), carry(1, 3, 1, 5)], to],
    ['gone on to two', [carry(1, 1, 1, 3), carry(1, 1, 1, 5)], from],
  ])('are obeyed as the list goes: %s', (_, pins, why) => {
    const design = pinned(['ababa'], pins);
    const faults = pinFaults(design, flatten(design));
    expect(faults.map(({ pin }) => pin)).toEqual(pins.slice(1));
    expect(faults[0]!.sentence).toContain(why);
    expect(planOf(design).pins).toEqual(pins.slice(0, 1));
  });
});

describe('pins and rows that are tied already', () => {
  const rows = ['aba', 'aba', 'aba'];
  const tied = { plan: planOf(pinned(rows, [])), rows: 2 };

  it('are reported where the rows were tied otherwise', () => {
    const pins = [cut(1, 1), noCarry(1, 2), carry(1, 1, 2, 1)];
    expect(sentences(pinned(rows, pins), { tied })).toEqual([
      'Row 1, cord 1: that is tied already, and its strand goes on. Remove the pin, or set it anew.',
      'Row 1, cord 2: a carry passes there in rows that are tied already. Remove the pin, or set it anew.',
      'Row 1, cord 1 to row 2, cord 1: that is tied already, and otherwise. Remove the pin, or set it anew.',
    ]);
  });

  it('end a strand that hangs below them', () => {
    const plan = planOf(pinned(rows, [cut(2, 1)]), { tied });
    expect(strandsOf(plan)).toEqual(['y1 1:1-1 1:3-3 2:3-3 2:1-1', 'y2 1:2-2 2:2-2 3:2-2', 'y1 3:1-1 3:3-3']);
  });
});

describe('a careful person', () => {
  it('knows of no pins', () => {
    const design = pinned(['aba'], [cut(1, 1)]);
    const plan = planCarefully(design, flatten(design));
    expect(plan.ok && strandsOf(plan.value)).toEqual(['y1 1:1-1 1:3-3', 'y2 1:2-2']);
    expect(plan.ok && plan.value.pins).toEqual([]);
  });
});

describe('the checker of plans', () => {
  it.each([cut(1, 1), noCarry(1, 2), carry(1, 1, 1, 5)])('finds that a pin is not obeyed: $kind', (pin) => {
    const design = pinned(['ababa'], []);
    const plan = { ...planOf(design), pins: [pin] };
    expect(planFaults(plan, flatten(design))).toEqual([
      `the pin '${pin.kind}' at row 1, cord ${pin.cord} is not obeyed`,
    ]);
  });
});
