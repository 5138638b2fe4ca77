/** Whether the pages are those that will be printed; how far they are, and the button that stops or makes them. */
import { type ReactNode, type RefObject, useEffect, useLayoutEffect, useRef, useState } from 'react';
import type { PatternKeeper } from '../keep-pattern.ts';
import { type PatternView, usePattern } from '../pattern-view.ts';

export function PagesProgress({ keeper }: { keeper: PatternKeeper | null }) {
  const progress = usePattern((view) => view.progress);
  const effort = usePattern((view) => view.effort);
  const isThere = usePattern((view) => view.document !== null);
  const isEmpty = usePattern((view) => view.document?.pages.length === 0);
  const hasProblem = usePattern((view) => view.problem !== '');
  const isLate = useLate(usePattern((view) => view.isBehind));
  const words = useRef<HTMLParagraphElement>(null);
  if (hasProblem || isEmpty) return null;
  const isMaking = progress !== null;
  const percent = Math.floor((progress ?? 0) * 100);
  return (
    <div className="pages-progress">
      <p ref={words} role="status" tabIndex={-1}>
        {wordsOf({ effort, isThere, isMaking, isLate })}
      </p>
      {isMaking && isThere && (
        <p className="full-plan">
          <progress
            value={progress}
            max={1}
            aria-label="Full plan"
            aria-valuetext={`${percent} % of the full plan`}
          />
          <span aria-hidden="true">{percent} %</span>
        </p>
      )}
      {isThere && (isMaking || effort === 'quick') && (
        <PlanButton onGone={words} act={() => (isMaking ? keeper?.stop() : keeper?.again())}>
          {isMaking ? 'Stop' : 'Make the full plan'}
        </PlanButton>
      )}
    </div>
  );
}

interface PlanButtonProps {
  /** Takes the focus when the button goes with it. */
  readonly onGone: RefObject<HTMLElement | null>;
  readonly act: () => void;
  readonly children: ReactNode;
}

function PlanButton({ onGone, act, children }: PlanButtonProps) {
  const button = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => {
    const here = button.current;
    const next = onGone.current;
    return () => {
      if (here === document.activeElement) next?.focus();
    };
  }, [onGone]);
  return (
    <button ref={button} type="button" onClick={act}>
      {children}
    </button>
  );
}

interface Standing {
  readonly effort: PatternView['effort'];
  /** There are pages to be seen. */
  readonly isThere: boolean;
  readonly isMaking: boolean;
  readonly isLate: boolean;
}

function wordsOf({ effort, isThere, isMaking, isLate }: Standing): string {
  if (!isThere) return 'The first pages are being laid out…';
  if (isLate && !isMaking) return 'The pages are laid out anew…';
  if (effort === 'full') return 'The pages as they will be printed.';
  return isMaking
    ? 'Pages of a quick plan; the full plan, which is printed, is being made…'
    : 'Pages of a quick plan: the full one was stopped. What is saved is made with the full plan, and may take fewer pieces.';
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
