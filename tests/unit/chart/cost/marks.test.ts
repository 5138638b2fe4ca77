import { describe, expect, it } from 'vitest';
import { type Chart, flatten } from '../../../../shared/chart/chart.ts';
import { loneKnots } from '../../../../shared/chart/cost/lone-knots.ts';
import { looseEndCells } from '../../../../shared/chart/cost/loose-end-cells.ts';
import { pictureCost } from '../../../../shared/chart/cost/picture-cost.ts';
import { shortRuns } from '../../../../shared/chart/cost/short-runs.ts';
import { defaults } from '../../../../shared/design/defaults.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../../notation.ts';

/** A mask as rows: `.` for 0, else the number. */
function marks({ columns, rows }: Chart, mask: Uint8Array): string[] {
  return Array.from({ length: rows }, (_, row) =>
    Array.from(mask.subarray(row * columns, (row + 1) * columns), (each) => each || '.').join(''),
  );
}

function planOf(design: Design) {
  const plan = planStrands(design, flatten(design));
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}

describe('a lone knot', () => {
  const lone = (rows: string[]) => {
    const chart = flatten(designFromLetters(rows));
    return marks(chart, loneKnots(chart));
  };

  it('has none of its yarn beside it, above it or below it', () => {
    expect(lone(['aaaa', 'abac', 'aaac'])).toEqual(['....', '.1..', '....']);
  });

  it('is alone though another of its yarn meets it at a corner', () => {
    expect(lone(['baa', 'aba', 'aab'])).toEqual(['1..', '.1.', '..1']);
  });

  it('may stand at the edge, whose other side is no neighbour of the next row', () => {
    expect(lone(['aab', 'baa'])).toEqual(['..1', '1..']);
    expect(lone(['a'])).toEqual(['1']);
  });

  it('is a knot: a bare cell is none, however alone', () => {
    expect(lone(['aaa', 'a-a', 'aaa'])).toEqual(['...', '...', '...']);
    expect(lone(['---', '-a-', '---'])).toEqual(['...', '.1.', '...']);
  });
});

describe('a run shorter than two', () => {
  it('is a knot with another yarn, a bare cell or the edge on either side', () => {
    const chart = flatten(designFromLetters(['abaacd', 'abb-b-', 'aaaaaa']));
    expect(marks(chart, shortRuns(chart))).toEqual(['11..11', '1...1.', '......']);
  });
});

describe('loose ends', () => {
  it('hang where a piece begins and where it ends, two at a knot that is a piece by itself', () => {
    const design = designFromLetters(['aaaa', 'abba', 'aaac']);
    const chart = flatten(design);
    const plan = planOf(design);
    // Row 2 goes left: b from cord 3 to cord 2. Row 3 goes right: a ends at cord 3, c ties one knot.
    expect(marks(chart, looseEndCells(plan))).toEqual(['1...', '.11.', '..12']);
    expect(plan.totals.looseEnds).toBe(6);
  });

  it('hang on both sides of a join', () => {
    const tying = { ...defaults.tying, workingLengthMm: 2 * 65 + 100 };
    const design = designFromLetters(['aaaaa'], { tying });
    const plan = planOf(design);
    expect(plan.totals).toMatchObject({ strands: 1, pieces: 3 });
    expect(marks(flatten(design), looseEndCells(plan))).toEqual(['11112']);
  });
});

describe("the picture's cost", () => {
  it('counts lone knots and short runs of the chart, and takes the rest from its materials', () => {
    const design = designFromLetters(['aaaa', 'abaa', 'aaac', 'aaac']);
    const chart = flatten(design);
    const materials = materialsOf(design, chart, planOf(design));
    const { strands, pieces, looseEnds, seconds } = materials.totals;
    expect(pictureCost({ loneKnots: loneKnots(chart), shortRuns: shortRuns(chart) }, materials)).toEqual({
      loneKnots: 1,
      shortRuns: 4,
      strands,
      pieces,
      looseEnds,
      seconds,
    });
    expect(looseEnds).toBe(2 * pieces);
  });
});
