import { describe, expect, it } from 'vitest';
import { goesRight } from '../../../shared/chart/chart.ts';
import { defaults } from '../../../shared/design/defaults.ts';
import type { Design } from '../../../shared/design/design.ts';
import { apply, type Edit, inverse } from '../../../shared/design/edits.ts';
import { limits } from '../../../shared/design/limits.ts';
import { newDesign } from '../../../shared/design/new-design.ts';
import type { Reference } from '../../../shared/design/schema.ts';
import { cropTo, deleteLines, insertLines, resizeTo, scaleTo } from '../../../shared/design/size-edits.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { fringeByHand } from '../../../shared/gauge/fringe.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import type { Result } from '../../../shared/result.ts';
import { designFromLetters, lettersOf } from '../../notation.ts';

const done = (design: Design, edit: Result<Edit>): Design => {
  if (!edit.ok) throw new Error(edit.problem.sentence);
  const after = apply(design, edit.value);
  expect(writeDesign(apply(after, inverse(design, edit.value)))).toBe(writeDesign(design));
  return after;
};
const refused = (edit: Result<Edit>) =>
  edit.ok ? 'not refused' : [edit.problem.code, edit.problem.sentence];

/** Ground with a bare corner and an empty one; a picture above it. */
const two = designFromLetters([
  ['-ab', 'aa.'],
  ['c..', '.dc'],
]);

describe('cords that are put in', () => {
  it('are ground beside knots on the lowest layer, and empty on those above', () => {
    const design = done(two, insertLines(two, 'cords', 1, 2));
    expect([design.columns, design.rows]).toEqual([5, 2]);
    expect(lettersOf(design, 0)).toEqual(['-aaab', 'aaaa.']);
    expect(lettersOf(design, 1)).toEqual(['c....', '...dc']);
  });

  it('are bare beside bare cells and empty beside empty ones', () => {
    expect(lettersOf(done(two, insertLines(two, 'cords', 0, 1)), 0)).toEqual(['--ab', 'aaa.']);
    expect(lettersOf(done(two, insertLines(two, 'cords', 3, 1)), 0)).toEqual(['-aba', 'aa..']);
  });

  it('and taken out again leave the same bytes', () => {
    for (const way of ['cords', 'rows'] as const) {
      for (const at of [0, 1, 2]) {
        const longer = done(two, insertLines(two, way, at, 3));
        expect(writeDesign(done(longer, deleteLines(longer, way, at, 3)))).toBe(writeDesign(two));
      }
    }
  });

  it('are too many above the limits, before memory is taken', () => {
    expect(insertLines(two, 'cords', 0, limits.columns - 3).ok).toBe(true);
    expect(refused(insertLines(two, 'cords', 0, limits.columns - 2))).toEqual([
      'too-large',
      '1001 cords are more than the 1000 of the widest chart. Choose a smaller size.',
    ]);
    expect(refused(insertLines(two, 'rows', 0, 1e15))).toContain('too-large');
  });
});

describe('rows that are put in', () => {
  it('let the rows below keep their cells, which are then tied the other way', () => {
    const design = done(two, insertLines(two, 'rows', 1, 1));
    expect(lettersOf(design, 0)).toEqual(['-ab', 'aaa', 'aa.']);
    expect(lettersOf(design, 1)).toEqual(['c..', '...', '.dc']);
    expect(goesRight(two.startCorner, 1)).toBe(false);
    expect(goesRight(design.startCorner, 2)).toBe(true);
  });

  it('share the rows that were there', () => {
    const design = done(two, insertLines(two, 'rows', 1, 1));
    expect(design.layers[1]!.rows[2]).toBe(two.layers[1]!.rows[1]);
  });
});

describe('cords and rows that are taken out', () => {
  it('are gone from every layer, locked ones too', () => {
    const locked = { ...two, layers: two.layers.map((layer) => ({ ...layer, locked: true })) };
    const design = done(locked, deleteLines(locked, 'cords', 1, 1));
    expect(lettersOf(design, 0)).toEqual(['-b', 'a.']);
    expect(lettersOf(design, 1)).toEqual(['c.', '.c']);
    expect(lettersOf(done(two, deleteLines(two, 'rows', 0, 1)), 1)).toEqual(['.dc']);
  });

  it('are those there are, where more are asked for', () => {
    expect(lettersOf(done(two, deleteLines(two, 'cords', 1, 99)), 0)).toEqual(['-', 'a']);
  });

  it('are never all of them', () => {
    expect(refused(deleteLines(two, 'cords', 0, 3))).toEqual([
      'nothing-left',
      'A hanging needs at least one cord. Leave one.',
    ]);
    expect(refused(deleteLines(two, 'rows', 0, 2))).toEqual([
      'nothing-left',
      'A hanging needs at least one row. Leave one.',
    ]);
  });
});

describe('a chart that is cropped', () => {
  it('is the part alone', () => {
    const design = done(two, cropTo(two, { top: 0, left: 1, bottom: 0, right: 2 }));
    expect([lettersOf(design, 0), lettersOf(design, 1)]).toEqual([['ab'], ['..']]);
  });

  it('passes over what of the part lies outside', () => {
    const design = done(two, cropTo(two, { top: 1, left: -4, bottom: 9, right: 1 }));
    expect(lettersOf(design, 1)).toEqual(['.d']);
  });

  it('is not the whole chart, nor nothing of it', () => {
    expect(refused(cropTo(two, { top: 0, left: 0, bottom: 1, right: 2 }))).toEqual([
      'same-size',
      'That is the whole chart: nothing is left to cut away. Choose a part of it.',
    ]);
    expect(refused(cropTo(two, { top: 7, left: 0, bottom: 9, right: 2 }))).toContain('nothing-left');
  });
});

describe('another size without stretching', () => {
  const one = designFromLetters([
    ['ab', 'cd'],
    ['e.', '.f'],
  ]);
  const sized = (
    columns: number,
    rows: number,
    across: 'left' | 'middle' | 'right',
    down: 'top' | 'middle' | 'bottom',
  ) => lettersOf(done(one, resizeTo(one, { columns, rows }, { across, down })), 1);

  it('grows on the sides away from where the picture is held', () => {
    expect(sized(4, 3, 'left', 'top')).toEqual(['e...', '.f..', '....']);
    expect(sized(4, 3, 'right', 'bottom')).toEqual(['....', '..e.', '...f']);
    expect(sized(4, 4, 'middle', 'middle')).toEqual(['....', '.e..', '..f.', '....']);
  });

  it('fills what comes in on the lowest layer with ground', () => {
    const grown = done(one, resizeTo(one, { columns: 3, rows: 3 }, { across: 'right', down: 'top' }));
    expect(lettersOf(grown, 0)).toEqual(['aab', 'acd', 'aaa']);
  });

  it('cuts on the sides away from where the picture is held', () => {
    expect(sized(1, 2, 'left', 'top')).toEqual(['e', '.']);
    expect(sized(1, 1, 'right', 'bottom')).toEqual(['f']);
  });

  it('may grow one way and shrink the other', () => {
    expect(sized(3, 1, 'left', 'bottom')).toEqual(['.f.']);
  });

  it('is refused where there can be no such chart', () => {
    const middle = { across: 'middle', down: 'middle' } as const;
    expect(refused(resizeTo(one, { columns: 0, rows: 2 }, middle))).toEqual([
      'too-large',
      'A design has at least one cord and one row.',
    ]);
    expect(refused(resizeTo(one, { columns: 2, rows: limits.rows + 1 }, middle))).toContain('too-large');
    expect(refused(resizeTo(one, { columns: 2, rows: 2 }, middle))).toContain('same-size');
  });

  it('counts the cells of all layers', () => {
    const eight = newDesign({ title: 'Eight', columns: 999, rows: limits.rows });
    const layers = Array.from({ length: 8 }, (_, i) => ({ ...eight.layers[1]!, id: `layer-${i}` }));
    const full = { ...eight, layers };
    const held = { across: 'left', down: 'top' } as const;
    expect(resizeTo(full, { columns: 1000, rows: limits.rows }, held).ok).toBe(true);
    const nine = { ...eight, layers: [...layers, { ...layers[0]!, id: 'layer-9' }] };
    expect(refused(resizeTo(nine, { columns: 1000, rows: limits.rows }, held))).toEqual([
      'too-large',
      '9 layers of 1000 cords and 2000 rows have more than the 16000000 cells of one design. Choose a smaller size.',
    ]);
  });
});

describe('another size with the picture stretched to it', () => {
  const one = designFromLetters(['ab.', 'c-d']);

  it('shows in each cell the old one that its middle falls in', () => {
    expect(lettersOf(done(one, scaleTo(one, { columns: 6, rows: 2 })))).toEqual(['aabb..', 'cc--dd']);
    expect(lettersOf(done(one, scaleTo(one, { columns: 3, rows: 3 })))).toEqual(['ab.', 'c-d', 'c-d']);
    expect(lettersOf(done(one, scaleTo(one, { columns: 1, rows: 1 })))).toEqual(['-']);
    expect(lettersOf(done(one, scaleTo(one, { columns: 4, rows: 2 })))).toEqual(['abb.', 'c--d']);
  });

  it('twice as large and then half as large is the same chart', () => {
    const large = done(one, scaleTo(one, { columns: 6, rows: 4 }));
    expect(writeDesign(done(large, scaleTo(large, { columns: 3, rows: 2 })))).toBe(writeDesign(one));
  });
});

describe('a fringe drawn by hand', () => {
  const fringed = { ...two, fringe: fringeByHand([100, 200, 80]) };
  const lengths = (edit: Result<Edit>) => done(fringed, edit).fringe.byHandMm;

  it('keeps the length of each cord that stays', () => {
    expect(lengths(deleteLines(fringed, 'cords', 1, 1))).toEqual([100, 80]);
    expect(lengths(cropTo(fringed, { top: 0, left: 1, bottom: 1, right: 2 }))).toEqual([200, 80]);
  });

  it('goes on from neighbour to neighbour where cords are put in', () => {
    expect(lengths(insertLines(fringed, 'cords', 1, 1))).toEqual([100, 150, 200, 80]);
    expect(lengths(insertLines(fringed, 'cords', 0, 2))).toEqual([100, 100, 100, 200, 80]);
  });

  it('tells its longest and shortest cord anew', () => {
    const { fringe } = done(fringed, deleteLines(fringed, 'cords', 1, 1));
    expect([fringe.longMm, fringe.shortMm]).toEqual([100, 80]);
  });

  it('stays as it is where rows change, and is spread over the cords where the chart is stretched', () => {
    expect(done(fringed, insertLines(fringed, 'rows', 0, 1)).fringe).toBe(fringed.fringe);
    expect(done(fringed, scaleTo(fringed, { columns: 6, rows: 2 })).fringe).toBe(fringed.fringe);
  });

  it('of another shape follows by itself', () => {
    const straight = { ...two, fringe: defaults.fringe };
    expect(done(straight, insertLines(straight, 'cords', 0, 1)).fringe).toBe(defaults.fringe);
  });
});

describe('pins', () => {
  const pinned: Design = {
    ...two,
    pins: [
      { kind: 'cut', row: 1, cord: 2 },
      { kind: 'carry', row: 1, cord: 3, toRow: 2, toCord: 3 },
    ],
  };

  it('stay on their knots where cords and rows come and go before them', () => {
    const wider = done(pinned, insertLines(pinned, 'cords', 1, 2));
    expect(wider.pins).toEqual([
      { kind: 'cut', row: 1, cord: 4 },
      { kind: 'carry', row: 1, cord: 5, toRow: 2, toCord: 5 },
    ]);
    expect(done(pinned, insertLines(pinned, 'rows', 1, 1)).pins![1]).toMatchObject({ row: 1, toRow: 3 });
  });

  it('go with the knots that are taken out', () => {
    expect(done(pinned, deleteLines(pinned, 'rows', 1, 1)).pins).toEqual([pinned.pins![0]]);
    expect(done(pinned, deleteLines(pinned, 'cords', 1, 1)).pins).toEqual([
      { kind: 'carry', row: 1, cord: 2, toRow: 2, toCord: 2 },
    ]);
  });

  it('are left alone where nothing changes before them, and where the picture is stretched', () => {
    expect(done(pinned, insertLines(pinned, 'cords', 3, 1)).pins).toBe(pinned.pins);
    expect(done(pinned, scaleTo(pinned, { columns: 6, rows: 4 })).pins).toBe(pinned.pins);
  });
});

describe('the picture under the chart', () => {
  const reference: Reference = {
    name: 'Sketch',
    mediaType: 'image/png',
    picture: ['AAAA'],
    opacity: 0.5,
    leftMm: 2,
    topMm: -3,
    widthMm: 10,
    heightMm: 20,
    visible: true,
  };
  const traced = { ...two, reference };
  const { pitchMm, rowHeightMm } = gaugeOf(traced);
  const placeAfter = (edit: Result<Edit>) => {
    const { leftMm, topMm, widthMm, heightMm } = done(traced, edit).reference!;
    return [leftMm, topMm, widthMm, heightMm];
  };

  it('stays under the cells that it lay under', () => {
    expect(placeAfter(insertLines(traced, 'cords', 0, 2))).toEqual([2 + 2 * pitchMm, -3, 10, 20]);
    expect(placeAfter(deleteLines(traced, 'rows', 0, 1))).toEqual([2, -3 - rowHeightMm, 10, 20]);
    expect(placeAfter(cropTo(traced, { top: 1, left: 1, bottom: 1, right: 2 }))).toEqual([
      2 - pitchMm,
      -3 - rowHeightMm,
      10,
      20,
    ]);
  });

  it('is left alone where cords come or go to its right, and rows below', () => {
    expect(done(traced, insertLines(traced, 'cords', 3, 2)).reference).toBe(reference);
    expect(done(traced, deleteLines(traced, 'rows', 1, 1)).reference).toBe(reference);
  });

  it('is stretched with the chart', () => {
    expect(placeAfter(scaleTo(traced, { columns: 6, rows: 1 }))).toEqual([4, -1.5, 20, 10]);
  });
});
