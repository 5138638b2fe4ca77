/** A chart whose rows repeat: the first cords of each come again and again. */
import { flatten } from '../../shared/chart/chart.ts';
import type { ChartCase } from './arbitrary-chart.ts';

/** `cords`: of one repeat; the last one may be cut off. */
export function tiled({ design }: ChartCase, cords: number): ChartCase {
  const layers = design.layers.map((layer) => ({
    ...layer,
    rows: layer.rows.map((row) => row.map((_, column) => row[column % cords]!)),
  }));
  const repeating = { ...design, layers };
  return { design: repeating, chart: flatten(repeating) };
}
