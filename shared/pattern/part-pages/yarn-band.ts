/** The yarns of a hanging side by side, each as wide as its share of the knots. */
import type { Materials } from '../../materials/materials.ts';
import type { PlainItem } from '../page/page.ts';
import type { Area } from '../page/papers.ts';
import { inks } from '../page/style.ts';

export function yarnBand({ yarns, totals }: Pick<Materials, 'yarns' | 'totals'>, band: Area): PlainItem[] {
  let x = band.x;
  const shares = yarns.map(({ color, knots }): PlainItem => {
    const width = (band.width * knots) / Math.max(totals.knots, 1);
    const item: PlainItem = { kind: 'box', x, y: band.y, width, height: band.height, fill: color };
    x += width;
    return item;
  });
  // A hairline keeps a white yarn in sight.
  return [...shares, { kind: 'box', ...band, stroke: inks.hair, strokeMm: 0.1 }];
}
