/** Which plan is shown, how far the full one is, and the button that stops it or makes it again. */
import { runCommand } from '../../shell/command-bus.ts';
import { usePlans } from '../plans/plans.ts';

export function PlanProgress() {
  const progress = usePlans((state) => state.progress);
  const hasFull = usePlans((state) => state.full !== null);
  const problem = usePlans((state) => state.problem);
  if (problem) return <p className="fault">{problem}</p>;
  return (
    <div className="plan-progress">
      <p role="status">{wordsOf(progress !== null, hasFull)}</p>
      {progress !== null && <progress value={progress} max={1} aria-label="Full plan" />}
      {progress !== null && (
        <button type="button" onClick={() => runCommand('stop-plan')}>
          Stop
        </button>
      )}
      {progress === null && !hasFull && (
        <button type="button" onClick={() => runCommand('full-plan')}>
          Make the full plan
        </button>
      )}
    </div>
  );
}

function wordsOf(isMaking: boolean, hasFull: boolean): string {
  if (isMaking) return 'A quick plan; the full one is being made…';
  return hasFull ? 'The full plan.' : 'A quick plan: a full one takes a few per cent fewer pieces.';
}
