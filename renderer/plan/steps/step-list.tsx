/**
 * A row's steps as a list. A row may have thousands: they stand in blocks, and a block has its steps only while it is
 * near the part that is seen. Where one is pressed, the hanging is tied up to it.
 */
import { memo, useEffect, useMemo, useRef, useState } from 'react';
import type { YarnId } from '../../../shared/design/codes.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import type { Step } from '../../../shared/tying/steps/step.ts';
import type { StepForm } from '../../../shared/tying/steps/step-language.ts';
import { stepWords } from '../../../shared/tying/steps/step-words.ts';
import type { Units } from '../../../shared/units/units.ts';
import { useStudio } from '../../store/use-studio.ts';
import { tieTo } from '../plan-deeds.ts';
import { blocksOf, nextOf } from './step-blocks.ts';

/** About how high a step is, in px: what a block takes that was never seen. */
const aboutPx: Readonly<Record<StepForm, number>> = { compact: 28, long: 64 };

/** One stop for Tab; within the list the arrows go from step to step. */
const arrows: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1 };

interface StepListProps {
  readonly told: { readonly row: number; readonly steps: readonly Step[] };
  readonly form: StepForm;
  /** Knots of the hanging that are tied. */
  readonly tied: number;
}

export function StepList({ told: { row, steps }, form, tied }: StepListProps) {
  const room = useRef<HTMLElement>(null);
  const yarns = useStudio((state) => state.open?.design.yarns);
  const units = useStudio((state) => state.settings.units);
  const yarnsById = useMemo(() => new Map((yarns ?? []).map((yarn) => [yarn.id, yarn])), [yarns]);
  const blocks = useMemo(() => blocksOf(steps), [steps]);
  const next = nextOf(steps, tied);
  const place = `${row} ${form} ${next}`;
  const shown = useRef('');
  // The step that comes next is brought into sight whenever it is another one.
  useEffect(() => {
    const list = room.current;
    const mark = list?.querySelector<HTMLElement>('[aria-current]');
    if (list && mark && shown.current !== place) list.scrollTop = mark.offsetTop - list.clientHeight / 3;
    shown.current = place;
  });
  return (
    <section
      ref={room}
      className="step-room"
      aria-label={`Steps of row ${row}`}
      onKeyDown={(event) => {
        const by = arrows[event.key];
        if (!by) return;
        event.preventDefault();
        const all = [...event.currentTarget.querySelectorAll('button')];
        const at = all.indexOf(document.activeElement as HTMLButtonElement);
        all[Math.min(all.length - 1, Math.max(0, at + by))]?.focus();
      }}
    >
      {blocks.map((block) => (
        <Block
          key={`${row}-${form}-${block.first}`}
          {...{ block, form, units, yarnsById }}
          next={next >= block.first && next < block.first + block.steps.length ? next - block.first : -1}
          isLast={block.first + block.steps.length === steps.length}
          isTied={next >= block.first + block.steps.length}
        />
      ))}
    </section>
  );
}

interface BlockProps {
  readonly block: { readonly first: number; readonly steps: readonly Step[] };
  readonly form: StepForm;
  readonly units: Units;
  readonly yarnsById: ReadonlyMap<YarnId, Yarn>;
  /** The step that is done next, from 0 in the block; -1 where it is in another. */
  readonly next: number;
  readonly isTied: boolean;
  /** True for the row's last block. */
  readonly isLast: boolean;
}

const Block = memo(function Block({
  block: { first, steps },
  form,
  units,
  yarnsById,
  next,
  isTied,
  isLast,
}: BlockProps) {
  const list = useRef<HTMLOListElement>(null);
  const [isNear, setNear] = useState(first === 0);
  const heightPx = useRef(aboutPx[form] * steps.length);
  useEffect(() => {
    const element = list.current!;
    const watcher = new IntersectionObserver(
      ([entry]) => {
        if (entry!.boundingClientRect.height > 0) heightPx.current = entry!.boundingClientRect.height;
        setNear(entry!.isIntersecting);
      },
      { root: element.parentElement, rootMargin: '200px' },
    );
    watcher.observe(element);
    return () => watcher.disconnect();
  }, []);
  const isShown = isNear || next !== -1;
  // The step that comes next; where the row is done, its last.
  const tabStop = next !== -1 ? next : isLast && isTied ? steps.length - 1 : -1;
  return (
    <ol ref={list} start={first + 1} style={isShown ? undefined : { height: heightPx.current }}>
      {isShown &&
        steps.map((step, i) => {
          const isDone = isTied || (next !== -1 && i < next);
          return (
            <li
              key={step.index}
              aria-current={i === next ? 'step' : undefined}
              className={isDone ? 'done' : ''}
            >
              <button
                type="button"
                className="plain"
                tabIndex={i === tabStop ? 0 : -1}
                onClick={() => tieTo(step.knotsBefore)}
              >
                {stepWords(step, { yarnsById, units, form })}
              </button>
            </li>
          );
        })}
    </ol>
  );
});
