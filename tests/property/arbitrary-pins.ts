/**
 * Random pins for a chart: mostly where runs end and begin, so that most can be obeyed, some beside them or beyond the
 * chart, and some that contradict others.
 */
import fc from 'fast-check';
import type { Chart } from '../../shared/chart/chart.ts';
import type { Pin } from '../../shared/design/schema.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { runsOf } from '../../shared/tying/runs.ts';

export function arbitraryPins(chart: Chart, maxLength = 12): fc.Arbitrary<Pin[]> {
  const runs = runsOf(chart);
  const anywhere = fc.record({
    row: fc.integer({ min: 1, max: chart.rows + 1 }),
    cord: fc.integer({ min: 1, max: chart.columns + 1 }),
  });
  const noCarry = anywhere.map((cell): Pin => ({ kind: 'no-carry', ...cell }));
  if (runs.count === 0) return fc.array(noCarry, { maxLength });
  const endOf = (run: number) => ({ row: runs.row[run]! + 1, cord: runs.last[run]! + 1 });
  const run = fc.nat(runs.count - 1);
  const cut = fc.oneof(run.map(endOf), anywhere).map((cell): Pin => ({ kind: 'cut', ...cell }));
  const carry = fc.tuple(run, fc.nat(12), fc.boolean()).map(([from, further, same]): Pin => {
    // The next run of the yarn after some others, or any run.
    let to = (from + 1 + further) % runs.count;
    if (same) while (runs.yarn[to] !== runs.yarn[from]) to = (to + 1) % runs.count;
    return { kind: 'carry', ...endOf(from), toRow: runs.row[to]! + 1, toCord: runs.first[to]! + 1 };
  });
  return fc.array(
    fc.oneof(
      { weight: 3, arbitrary: carry },
      { weight: 1, arbitrary: cut },
      { weight: 1, arbitrary: noCarry },
    ),
    { maxLength },
  );
}

/** All that a plan decides, as pins: its carries, the ends of its strands, and the cells that no carry passes. */
export function pinsOf({ strands, columns, rows }: Plan): Pin[] {
  const passed = new Set<string>();
  const pins: Pin[] = [];
  for (const { pieces } of strands) {
    for (const { stretches } of pieces) {
      for (const [i, to] of stretches.slice(1).entries()) {
        const from = stretches[i]!;
        pins.push({ kind: 'carry', row: from.row, cord: from.to, toRow: to.row, toCord: to.from });
        for (let row = from.row + 1; row < to.row; row++) passed.add(`${row} ${from.to}`);
        for (let cord = Math.min(from.to, to.from); cord <= Math.max(from.to, to.from); cord++)
          if (cord !== to.from) passed.add(`${to.row} ${cord}`);
      }
    }
    const end = pieces.at(-1)!.stretches.at(-1)!;
    pins.push({ kind: 'cut', row: end.row, cord: end.to });
  }
  for (let row = 1; row <= rows; row++)
    for (let cord = 1; cord <= columns; cord++)
      if (!passed.has(`${row} ${cord}`)) pins.push({ kind: 'no-carry', row, cord });
  return pins;
}
