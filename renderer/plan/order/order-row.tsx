/** A row of the tying order: its own step as a heading, and its other steps once they are known. */
import { memo, useEffect, useRef } from 'react';
import type { YarnId } from '../../../shared/design/codes.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import type { Step } from '../../../shared/tying/steps/step.ts';
import type { StepForm } from '../../../shared/tying/steps/step-language.ts';
import { stepWords } from '../../../shared/tying/steps/step-words.ts';
import type { Units } from '../../../shared/units/units.ts';
import { showCell, tieTo } from '../plan-deeds.ts';
import { nextOf } from '../steps/step-blocks.ts';

/** By the slider. */
export type Place = 'done' | 'now' | 'ahead';

/** About how much room a step takes, in px, of a list that shows so many side by side: what a row takes that was never seen. */
const about = { head: 34, compact: { stepPx: 24, beside: 3 }, long: { stepPx: 40, beside: 1 } } as const;

interface OrderRowProps {
  readonly row: number;
  readonly count: number;
  /** Null while it is far. */
  readonly steps: readonly Step[] | null;
  readonly form: StepForm;
  readonly units: Units;
  readonly yarnsById: ReadonlyMap<YarnId, Yarn>;
  readonly place: Place;
  /** Knots that are tied, in the row at the slider; null in others. */
  readonly tied: number | null;
  readonly isStop: boolean;
  /** Knots of the hanging that are tied before it. */
  readonly knotsBefore: number;
  /** Where it begins, from 0. */
  readonly startColumn: number;
}

export const OrderRow = memo(function OrderRow(props: OrderRowProps) {
  const { row, count, steps, form, units, yarnsById, place, tied, isStop, knotsBefore, startColumn } = props;
  const element = useRef<HTMLLIElement>(null);
  const heightPx = useRef(0);
  // The room it took when it was seen last.
  useEffect(() => {
    if (steps && element.current) heightPx.current = element.current.offsetHeight;
  });
  const { stepPx, beside } = about[form];
  const guessedPx = about.head + Math.ceil(count / beside) * stepPx;
  const words = (step: Step) => stepWords(step, { yarnsById, units, form });
  const next = steps && tied !== null ? nextOf(steps, tied) : null;
  return (
    <li
      ref={element}
      data-row={row}
      className={place}
      aria-current={place === 'now' ? 'true' : undefined}
      style={steps ? undefined : { minHeight: heightPx.current || guessedPx }}
    >
      <div className="order-row-head">
        <h3 tabIndex={-1}>{steps?.[0] ? words(steps[0]) : `Row ${row}`}</h3>
        {steps && (
          <button
            type="button"
            className="plain"
            tabIndex={isStop ? 0 : -1}
            aria-label={`Row ${row} on the chart`}
            onClick={() => {
              tieTo(knotsBefore);
              showCell({ row: row - 1, column: startColumn });
            }}
          >
            On the chart
          </button>
        )}
      </div>
      {steps && steps.length > 1 && (
        <ol className={`order-steps ${form}`}>
          {steps.slice(1).map((step, i) => (
            <li
              key={step.index}
              className={next !== null && i + 1 < next ? 'done' : ''}
              aria-current={next === i + 1 ? 'step' : undefined}
            >
              {words(step)}
            </li>
          ))}
        </ol>
      )}
    </li>
  );
});
