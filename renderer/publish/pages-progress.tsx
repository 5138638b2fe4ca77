/** Whether the pages are those that will be printed; how far they are, and the button that stops or makes them. */
import { useEffect, useState } from 'react';
import type { PatternKeeper } from './keep-pattern.ts';
import { type PatternView, usePattern } from './pattern-view.ts';

export function PagesProgress({ keeper }: { keeper: PatternKeeper | null }) {
  const progress = usePattern((view) => view.progress);
  const effort = usePattern((view) => view.effort);
  const isLate = useLate(usePattern((view) => view.isBehind));
  return (
    <div className="pages-progress">
      <p role="status">{wordsOf(effort, progress !== null, isLate)}</p>
      {progress !== null && <progress value={progress} max={1} aria-label="Full plan" />}
      {progress !== null && (
        <button type="button" onClick={() => keeper?.stop()}>
          Stop
        </button>
      )}
      {progress === null && effort === 'quick' && (
        <button type="button" onClick={() => keeper?.again()}>
          Make the full plan
        </button>
      )}
    </div>
  );
}

function wordsOf(effort: PatternView['effort'], isMaking: boolean, isLate: boolean): string {
  if (isLate && !isMaking) return 'The pages are laid out anew…';
  if (effort === 'full') return 'The pages as they will be printed.';
  return isMaking
    ? 'Pages of a quick plan; the full plan, which is printed, is being made…'
    : 'Pages of a quick plan. What is saved is made with the full plan, and may take fewer pieces.';
}

/** True once it has been so for a while: what is over at a glance is not told. */
function useLate(isBehind: boolean): boolean {
  const [isLate, setIsLate] = useState(false);
  useEffect(() => {
    if (!isBehind) {
      setIsLate(false);
      return;
    }
    const timer = setTimeout(() => setIsLate(true), lateMs);
    return () => clearTimeout(timer);
  }, [isBehind]);
  return isLate;
}

const lateMs = 250;
