/** What of a hanging is shown when all of it is asked for: of a fringe far longer than the picture only its upper part. */
import type { HangingGeometry } from '../../shared/chart/hanging/geometry.ts';
import type { Box } from './view.ts';

/** With more fringe than twice the picture's longer side the knots would be too small to work on (ours). */
const mostFringe = 2;

/** In mm, as the geometry has it. */
export function boxInSight({
  bounds,
  widthMm,
  heightMm,
}: Pick<HangingGeometry, 'bounds' | 'widthMm' | 'heightMm'>): Box {
  const bottom = heightMm + mostFringe * Math.max(widthMm, heightMm);
  return { ...bounds, bottom: Math.min(bounds.bottom, bottom) };
}
