/** How far the plans of the variants are, and the button that stops them or goes on. */
import type { Weighing } from './use-weighed.ts';

export function WeighProgress({ weighing }: { weighing: Weighing }) {
  const { weighed, progress, stop, again } = weighing;
  const isFull = Object.values(weighed).every(({ effort }) => effort === 'full');
  return (
    <div className="weigh-progress">
      <p role="status" className="quiet small">
        {progress !== null
          ? 'Quick plans; the full ones are being made…'
          : isFull
            ? 'Full plans.'
            : 'Some are quick plans: full ones take a few per cent fewer pieces.'}
      </p>
      {progress !== null && <progress value={progress} max={1} aria-label="Full plans" />}
      {progress !== null && (
        <button type="button" onClick={stop}>
          Stop
        </button>
      )}
      {progress === null && !isFull && (
        <button type="button" onClick={again}>
          Make the full plans
        </button>
      )}
    </div>
  );
}
