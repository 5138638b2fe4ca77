/** Handles on the fringe: in its middle and at both edges, where the shape has a length there. */
import { formatLength } from '../../../shared/units/length.ts';
import { studio } from '../../store/studio.ts';
import { useStudio } from '../../store/use-studio.ts';
import type { Surface } from '../../surface/surface.ts';
import { Handle } from '../handle.tsx';
import { useViewOf } from '../use-view-of.ts';
import { ByHand } from './by-hand.tsx';
import { keepFringe, setFringe, shownFringe, tryFringe } from './fringe-deeds.ts';
import { type FringeEnd, lengthAt, longestFringeMm, withLengthAt } from './fringe-ends.ts';
import { keyStepMm } from './key-step.ts';

const places: readonly { readonly end: FringeEnd; readonly across: number; readonly label: string }[] = [
  { end: 'edge', across: 0, label: 'Fringe at the left edge' },
  { end: 'middle', across: 0.5, label: 'Fringe in the middle' },
  { end: 'edge', across: 1, label: 'Fringe at the right edge' },
];

export function FringeHandles({ surface }: { surface: Surface }) {
  const fringe = useStudio(shownFringe);
  const units = useStudio((state) => state.settings.units);
  useViewOf(surface);
  if (!fringe) return null;
  if (fringe.shape === 'by-hand') return <ByHand surface={surface} />;
  const { widthMm, heightMm } = surface.geometry;
  return places.map(({ end, across, label }) => {
    const mm = lengthAt(fringe, end);
    if (mm === null) return null;
    return (
      <Handle
        key={across}
        label={label}
        isUpright
        at={surface.pointOf({ x: widthMm * across, y: heightMm + mm })}
        value={Math.round(mm)}
        min={0}
        max={longestFringeMm}
        valueText={formatLength(mm, units)}
        onStep={(steps) => setFringe(withLengthAt(fringe, end, mm + steps * keyStepMm(units)))}
        onDrag={(to) => {
          const now = shownFringe(studio.getState());
          if (now) tryFringe(withLengthAt(now, end, surface.mmAt(to).y - heightMm));
        }}
        onDrop={keepFringe}
      />
    );
  });
}
