/** While tidying is looked at: what it changes, and whether it is kept. Enter keeps it, Escape drops it. */
import { useEffect, useRef } from 'react';
import type { PictureCost } from '../../../shared/chart/cost/picture-cost.ts';
import { formatTime } from '../../../shared/units/time.ts';
import { useFindings } from '../../planning/findings.ts';
import { isAsking } from '../../shell/dialogs.tsx';
import { useStudio } from '../../store/use-studio.ts';
import { dropTidied, keepTidied, type Tidying, useTidying } from './tidy.ts';

export function TidyBar() {
  const tidying = useTidying();
  return tidying && <Bar tidying={tidying} />;
}

function Bar({ tidying }: { tidying: Tidying }) {
  const keep = useRef<HTMLButtonElement>(null);
  const cost = useFindings((found) => found.cost);
  const isSettled = useStudio((state) => state.facts?.settled ?? false);
  useEffect(() => {
    const before = document.activeElement;
    keep.current?.focus();
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || event.defaultPrevented || isAsking()) return;
      event.preventDefault();
      dropTidied();
    };
    window.addEventListener('keydown', onKey);
    return () => {
      window.removeEventListener('keydown', onKey);
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  const { changed, left, before } = tidying;
  return (
    <section className="tidy-bar" aria-label="Tidying">
      <div role="status">
        <p>
          <b>{changed === 1 ? '1 knot changes.' : `${changed.toLocaleString('en')} knots change.`}</b>{' '}
          {left > 0 &&
            `${left === 1 ? '1 lone knot stays' : `${left.toLocaleString('en')} lone knots stay`}, on locked layers. `}
          Thin slanting lines are lone knots too, and go with them.
        </p>
        {before && cost && (
          <ul aria-busy={!isSettled}>
            {savings(before, cost).map(({ name, from, to }) => (
              <li key={name}>
                {name} {from} → {isSettled ? to : '…'}
              </li>
            ))}
          </ul>
        )}
      </div>
      <span className="answers">
        <button type="button" onClick={dropTidied}>
          Drop
        </button>
        <button ref={keep} type="button" className="main" onClick={keepTidied}>
          Keep
        </button>
      </span>
    </section>
  );
}

function savings(before: PictureCost, after: PictureCost): { name: string; from: string; to: string }[] {
  const count = (name: string, of: (cost: PictureCost) => number) => ({
    name,
    from: of(before).toLocaleString('en'),
    to: of(after).toLocaleString('en'),
  });
  return [
    count('Lone knots', ({ loneKnots }) => loneKnots),
    count('Strands', ({ strands }) => strands),
    count('Loose ends', ({ looseEnds }) => looseEnds),
    { name: 'Hours', from: formatTime(before.seconds), to: formatTime(after.seconds) },
  ];
}
