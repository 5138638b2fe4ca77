/** What a carried strand lies behind. */
import type { Chart } from '../../chart/chart.ts';
import { BARE, yarnIdOf } from '../../design/codes.ts';
import type { Passed, Place } from './step.ts';

/**
 * The knots of the row that the strand arrives in, from the cord where it comes down up to, but not including, the
 * one where it goes on. In its own row it begins beside its last knot, so that one is not among them. Bare cells are
 * left out: no strand is carried there unless the maker wants it, and there is nothing to lie behind.
 */
export function passedBehind({ cells, columns }: Chart, from: Place, to: Place): Passed[] {
  const step = to.cord < from.cord ? -1 : 1;
  const first = from.row === to.row ? from.cord + step : from.cord;
  const passed: { yarn: Passed['yarn']; count: number; from: number; to: number }[] = [];
  let before: number = BARE;
  for (let cord = first; (to.cord - cord) * step > 0; cord += step) {
    const code = cells[(to.row - 1) * columns + cord - 1]!;
    const last = passed.at(-1);
    if (code !== BARE && last && code === before) {
      last.count++;
      last.to = cord;
    } else if (code !== BARE) passed.push({ yarn: yarnIdOf(code), count: 1, from: cord, to: cord });
    before = code;
  }
  return passed;
}
