/**
 * The symmetry's centre, moved by two handles beside the chart: one below it for the way across, one at its right for
 * the way down. On the centre itself a handle would cover the very cells that are drawn there.
 */

import type { PointKind } from '../../../shared/chart/symmetry/symmetry.ts';
import { useStudio } from '../../store/use-studio.ts';
import type { Surface } from '../../surface/surface.ts';
import { Handle } from '../handle.tsx';
import { changeSymmetry } from '../symmetry/symmetry-deeds.ts';
import { useViewOf } from '../use-view-of.ts';
import { placeInHalves } from './place-in-halves.ts';

/** The kinds of which only one number of the centre matters. */
const oneWay: Partial<Record<PointKind, 'across' | 'down'>> = {
  'mirror-left-right': 'across',
  'mirror-top-bottom': 'down',
};

/** From the chart's edge to a handle's middle, in CSS pixels: beyond the numbers of rows at the right. */
const below = 18;
const beside = 58;

export function CentreHandles({ surface }: { surface: Surface }) {
  const { point, repeat, centre } = useStudio((state) => state.drawing.symmetry);
  useViewOf(surface);
  if (point === 'none' && repeat === 'none') return null;
  const { geometry, screen } = surface;
  const { pitchMm, rowHeightMm, columns, rows, widthMm, heightMm } = geometry;
  const { acrossHalves, downHalves } = centre;
  const middle = surface.pointOf({ x: (acrossHalves * pitchMm) / 2, y: (downHalves * rowHeightMm) / 2 });
  const corner = surface.pointOf({ x: widthMm, y: heightMm });
  const way = repeat === 'none' ? oneWay[point] : undefined;
  const moveAcross = (halves: number) => changeSymmetry({ centre: { acrossHalves: halves, downHalves } });
  const moveDown = (halves: number) => changeSymmetry({ centre: { acrossHalves, downHalves: halves } });
  return (
    <>
      {way !== 'down' && (
        <Handle
          label="Centre across"
          isUpright={false}
          at={{ x: middle.x, y: Math.min(corner.y + below, screen.height - 16) }}
          value={acrossHalves}
          min={0}
          max={2 * columns}
          valueText={placeInHalves(acrossHalves, 'cord')}
          onStep={(steps) => moveAcross(acrossHalves + steps)}
          onDrag={(to) => moveAcross(Math.round((surface.mmAt(to).x * 2) / pitchMm))}
        />
      )}
      {way !== 'across' && (
        <Handle
          label="Centre down"
          isUpright
          at={{ x: Math.min(corner.x + beside, screen.width - 16), y: middle.y }}
          value={downHalves}
          min={0}
          max={2 * rows}
          valueText={placeInHalves(downHalves, 'row')}
          onStep={(steps) => moveDown(downHalves + steps)}
          onDrag={(to) => moveDown(Math.round((surface.mmAt(to).y * 2) / rowHeightMm))}
        />
      )}
    </>
  );
}
