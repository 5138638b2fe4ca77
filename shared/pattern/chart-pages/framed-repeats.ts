/** The repeats that a chart's pages frame and its key tells. */
import type { Chart } from '../../chart/chart.ts';
import { type Repeat, repeatsOf } from '../../chart/repeats.ts';

/** More would fill the chart with frames, and the key with their lines. */
const MOST = 4;

/** Those that make up most of the chart, from the top down. */
export function framedRepeats(chart: Chart): Repeat[] {
  const repeats = repeatsOf(chart);
  const largest = repeats.toSorted((a, b) => rowsIn(b) - rowsIn(a)).slice(0, MOST);
  return repeats.filter((repeat) => largest.includes(repeat));
}

function rowsIn({ fromRow, toRow }: Repeat): number {
  return toRow - fromRow + 1;
}
