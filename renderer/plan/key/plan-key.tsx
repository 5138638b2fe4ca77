/** What the colours, lines and signs over the chart mean: those of the view that is shown, and of the pins. */
import { useStudio } from '../../store/use-studio.ts';
import { shownPins } from '../pins/shown-pins.ts';
import { chosenStrand } from '../plan-deeds.ts';
import { shownPlan, usePlans } from '../plans/plans.ts';
import { HeatScale } from './heat-scale.tsx';
import { keyEntries } from './key-entries.tsx';
import './key.css';

export function PlanKey() {
  const view = usePlans((state) => state.view);
  const hasStrand = usePlans(() => chosenStrand() !== null);
  const isTying = usePlans((state) => state.tied !== null);
  const rowsBy = usePlans((state) => state.rowsBy);
  const shown = shownPins(
    useStudio((state) => state.open?.design.pins),
    usePlans(shownPlan),
  );
  const entries = keyEntries({
    view,
    hasStrand,
    isTying,
    rowsBy,
    pins: new Set(shown.map(({ pin }) => pin.kind)),
    hasPinFault: shown.some(({ fault }) => fault !== ''),
  });
  return (
    <section className="plan-key" aria-label="Key">
      {view === 'live' && <HeatScale />}
      {entries.length > 0 && (
        <ul aria-label="Signs on the chart">
          {entries.map(([picture, words]) => (
            <li key={words}>
              <svg width="24" height="16" aria-hidden="true">
                {picture}
              </svg>
              {words}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
