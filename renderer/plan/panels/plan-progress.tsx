/**
 * Which plan is shown, what it makes of the wish for few live strands, how far the full one is, and the button that
 * stops it or makes it again.
 */
import { liveWarning } from '../../../shared/tying/live-warning.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { useStudio } from '../../store/use-studio.ts';
import { nothingTied } from '../plan-words.ts';
import { shownPlan, usePlans } from '../plans/plans.ts';

export function PlanProgress() {
  const progress = usePlans((state) => state.progress);
  const hasFull = usePlans((state) => state.full !== null);
  const problem = usePlans((state) => state.problem);
  const isEmpty = usePlans((state) => shownPlan(state)?.figures.pieces === 0);
  if (problem) return <p className="fault">{problem}</p>;
  if (isEmpty)
    return (
      <div className="plan-progress">
        <p role="status">{nothingTied('plan')}</p>
      </div>
    );
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
      <WishWords />
    </div>
  );
}

/** What the wish takes, once the full plan is there. */
function WishWords() {
  const full = usePlans((state) => state.full);
  const quick = usePlans((state) => state.quick);
  const tried = usePlans((state) => state.draft?.tying ?? null);
  const kept = useStudio((state) => state.open?.design.tying);
  const units = useStudio((state) => state.settings.units);
  const wish = (tried ?? kept)?.liveWish;
  const words = full
    ? full.wished && liveWarning(full.wished, units)
    : quick && wish !== undefined && quick.figures.liveMax > wish
      ? `The quick plan leaves your wish for at most ${wish} hanging at once aside.`
      : null;
  return words ? (
    <p role="status" className="wish-words">
      {words}
    </p>
  ) : null;
}

function wordsOf(isMaking: boolean, hasFull: boolean): string {
  if (isMaking) return 'A quick plan; the full one is being made…';
  return hasFull ? 'The full plan.' : 'A quick plan: a full one takes a few per cent fewer pieces.';
}
