/** Over the chart while a carry is being pinned: from where, what is asked for, and the way out of it. */
import { useEffect } from 'react';
import { plans, usePlans } from '../plans/plans.ts';
import { dropCarry } from './pin-deeds.ts';

export function CarryAsks() {
  const from = usePlans((state) => state.carryFrom);
  const isAsking = from !== null;
  // Escape gives it up wherever the focus is.
  useEffect(() => {
    if (!isAsking) return;
    const onKey = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && !event.defaultPrevented && plans.getState().carryFrom) dropCarry();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [isAsking]);
  return (
    <div role="status" className="carry-asks-room">
      {from && (
        <div className="carry-asks">
          <p>
            <strong>
              Carry from row {from.row + 1}, cord {from.column + 1}.
            </strong>{' '}
            Now choose the knot that the strand goes on to; a knot of the same run means the next run of its
            yarn.
          </p>
          <button type="button" onClick={dropCarry}>
            Give up (Esc)
          </button>
        </div>
      )}
    </div>
  );
}
