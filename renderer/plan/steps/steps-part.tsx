/** The steps of the row at the slider, in tying order: in short, or in whole sentences. What is tied stands quiet. */
import { useState } from 'react';
import type { StepForm } from '../../../shared/tying/steps/step-language.ts';
import { SidePart } from '../../draw/side-part.tsx';
import { AfterLastRow } from '../order/after-last-row.tsx';
import { tieTo } from '../plan-deeds.ts';
import { shownPlan, usePlans } from '../plans/plans.ts';
import { stepForms } from './step-forms.ts';
import { StepList } from './step-list.tsx';
import './steps.css';

export function StepsPart() {
  const hasKnots = usePlans((state) => (shownPlan(state)?.tables.strands.count ?? 0) > 0);
  const looseEnds = usePlans((state) => shownPlan(state)?.figures.looseEnds ?? 0);
  const tied = usePlans((state) => state.tied);
  const told = usePlans((state) => state.rowSteps);
  const [form, setForm] = useState<StepForm>('compact');
  if (!hasKnots) return null;
  return (
    <SidePart title="Steps" note={told ? `of row ${told.row}` : ''} part="steps">
      {tied === null ? (
        <div className="steps">
          <p>Everything is tied. After the last row:</p>
          <AfterLastRow looseEnds={looseEnds} />
          <p className="quiet">
            Move the slider below to a row, to read its steps; the tying order has those of all rows.
          </p>
          <button type="button" onClick={() => tieTo(0)}>
            From the first row
          </button>
        </div>
      ) : (
        <div className="steps">
          <fieldset className="step-forms" aria-label="Steps in words">
            {stepForms.map(([each, label]) => (
              <button type="button" key={each} aria-pressed={each === form} onClick={() => setForm(each)}>
                {label}
              </button>
            ))}
          </fieldset>
          {told ? <StepList {...{ told, form, tied }} /> : <p className="quiet">…</p>}
        </div>
      )}
    </SidePart>
  );
}
