/**
 * The tying order as a slider: what is tied so far shows on the chart, and what is done next stands beside it in words.
 * On the slider the arrows go on or back by a run, by a knot with Shift; Page Up and Page Down by a row.
 */
import type { CSSProperties } from 'react';
import type { CommandId } from '../../../shared/commands.ts';
import type { Step } from '../../../shared/tying/steps/step.ts';
import { stepWords } from '../../../shared/tying/steps/step-words.ts';
import { counted } from '../../../shared/units/counted.ts';
import type { Units } from '../../../shared/units/units.ts';
import { goToCell } from '../../draw/go-to-cell.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { commandById } from '../../shell/keys.ts';
import { studio } from '../../store/studio.ts';
import { useStudio } from '../../store/use-studio.ts';
import { afterLastRowWords } from '../order/after-last-row-words.ts';
import { stepTying, tieTo } from '../plan-deeds.ts';
import { plans, shownPlan, usePlans } from '../plans/plans.ts';
import { type TyingStep, tyingPlace } from '../plans/tying-place.ts';
import { placeWords } from './place-words.ts';

export function OrderBar() {
  const planned = usePlans(shownPlan);
  const tied = usePlans((state) => state.tied);
  if (!planned || planned.tables.strands.count === 0)
    return (
      <section className="order-bar" aria-label="Place in the tying order">
        <p className="quiet">{planned ? 'Nothing is tied.' : 'The tying order comes with the plan.'}</p>
      </section>
    );
  const { tables } = planned;
  const all = tables.stretches.knotsBefore[tables.stretches.count]!;
  const place = tyingPlace(tables, tied ?? all);
  const words = placeWords(tables, place, all);
  return (
    <section className="order-bar" aria-label="Place in the tying order">
      <div className="order-keys">
        <StepButton command="row-before" sign="⇤" />
        <StepButton command="run-before" sign="←" />
        <input
          type="range"
          min={0}
          max={all}
          value={place.knots}
          aria-label="Tying order"
          aria-valuetext={words}
          style={tiedShare(place.knots / all)}
          onChange={({ target }) => tieTo(Number(target.value))}
          onKeyDown={(event) => {
            const key = keySteps[event.key];
            if (!key) return;
            event.preventDefault();
            if (event.shiftKey && key.knots !== 0) tieTo(place.knots + key.knots);
            else stepTying(key.step);
            reveal();
          }}
        />
        <StepButton command="next-run" sign="→" />
        <StepButton command="next-row" sign="⇥" />
        <button type="button" aria-disabled={tied === null} onClick={() => runCommand('all-tied')}>
          All tied
        </button>
      </div>
      <p className="order-place">{words}</p>
      <NextSteps />
    </section>
  );
}

/** The track is filled up to the thumb. */
function tiedShare(share: number): CSSProperties {
  return { '--tied': `${(share * 100).toFixed(2)}%` } as CSSProperties;
}

const keySteps: Readonly<Record<string, { readonly step: TyingStep; readonly knots: number }>> = {
  ArrowRight: { step: 'next-run', knots: 1 },
  ArrowUp: { step: 'next-run', knots: 1 },
  ArrowLeft: { step: 'run-before', knots: -1 },
  ArrowDown: { step: 'run-before', knots: -1 },
  PageUp: { step: 'next-row', knots: 0 },
  PageDown: { step: 'row-before', knots: 0 },
};

function StepButton({ command, sign }: { command: CommandId; sign: string }) {
  const { label } = commandById(command);
  return (
    <button
      type="button"
      className="step-button"
      aria-label={label}
      title={label}
      onClick={() => {
        runCommand(command);
        reveal();
      }}
    >
      <span aria-hidden="true">{sign}</span>
    </button>
  );
}

/** Brings the next knot into sight. */
function reveal(): void {
  const state = plans.getState();
  const tables = shownPlan(state)?.tables;
  if (!tables || state.tied === null) return;
  const { row, column } = tyingPlace(tables, state.tied);
  if (column !== null) goToCell({ row, column });
}

function NextSteps() {
  const tied = usePlans((state) => state.tied);
  const told = usePlans((state) => state.steps);
  const looseEnds = usePlans((state) => shownPlan(state)?.figures.looseEnds ?? 0);
  const units = useStudio((state) => state.settings.units);
  const words = wordsNow();
  return (
    <p className="order-next quiet" title={words}>
      {words}
    </p>
  );

  function wordsNow(): string {
    if (tied === null)
      return `${afterLastRowWords(looseEnds)[0]!} Move the slider back to follow the tying order.`;
    if (!told) return '…';
    const steps = told.steps.flatMap((step) => wordsOf(step, tied, units));
    return `Next: ${steps.join('; ')}.`;
  }
}

function wordsOf(step: Step, tied: number, units: Units): string | [] {
  // Which row it is stands above already.
  if (step.kind === 'row' && step.knotsBefore === tied)
    return step.lifts.length > 0 ? liftWords(step.lifts) : [];
  const yarns = studio.getState().open?.design.yarns ?? [];
  const yarnsById = new Map(yarns.map((yarn) => [yarn.id, yarn]));
  const done = step.kind === 'knots' ? Math.max(0, tied - step.knotsBefore) : 0;
  if (step.kind !== 'knots' || done === 0) return stepWords(step, { yarnsById, units, form: 'compact' });
  const from = step.from + Math.sign(step.to - step.from) * done;
  const rest = { ...step, count: step.count - done, from };
  return stepWords(rest, { yarnsById, units, form: 'compact' });
}

/** Lift marks named in one line; the written rows have them all. */
const mostLifts = 8;

function liftWords(lifts: readonly number[]): string {
  if (lifts.length <= mostLifts) return `lift ${lifts.join(', ')}`;
  return `lift ${counted(lifts.length, 'cord')}: ${lifts.slice(0, mostLifts).join(', ')} …`;
}
