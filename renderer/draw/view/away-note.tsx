/** In the distance view: from how far away the hanging looks as it is shown. Zooming goes nearer or farther. */
import { useEffect, useState } from 'react';
import type { Units } from '../../../shared/units/units.ts';
import { useStudio } from '../../store/use-studio.ts';
import type { Surface } from '../../surface/surface.ts';

export function AwayNote({ surface }: { surface: Surface }) {
  const units = useStudio((state) => state.settings.units);
  const isFar = useStudio((state) => state.views.distance);
  const [awayMm, setAwayMm] = useState(surface.awayMm);
  useEffect(() => surface.onView(() => setAwayMm(surface.awayMm)), [surface]);
  if (!isFar) return null;
  return (
    <p className="chart-note" role="status">
      As from {inWords(awayMm, units)} away, where the screen is an arm’s length from your eyes,{' '}
      {units === 'us' ? '2 ft' : '60 cm'}. Zoom to go nearer or farther.
    </p>
  );
}

/** To 10 cm or 6 in, as people judge a room. */
function inWords(mm: number, units: Units): string {
  const metres = `${(Math.round(mm / 100) / 10).toFixed(1)} m`;
  const feet = `${Math.round(mm / 152.4) / 2} ft`;
  if (units === 'both') return `${metres} (${feet})`;
  return units === 'us' ? feet : metres;
}
