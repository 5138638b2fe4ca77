/**
 * The whole tying order: every step from the first knot to the last, by rows, and what is done after the last row. It is
 * looked through by row, by yarn and by strand; where the slider stands is marked.
 */
import { useEffect, useState } from 'react';
import type { StepForm } from '../../../shared/tying/steps/step-language.ts';
import { counted } from '../../../shared/units/counted.ts';
import { LeafPage } from '../leaves/leaf.tsx';
import { type OrderWish, wholeOrder } from '../plans/listed-steps.ts';
import { plans, shownPlan, usePlans } from '../plans/plans.ts';
import { tyingPlace } from '../plans/tying-place.ts';
import { stepForms } from '../steps/step-forms.ts';
import { AfterLastRow } from './after-last-row.tsx';
import { OrderFilter } from './order-filter.tsx';
import { OrderRows } from './order-rows.tsx';
import { RowJump } from './row-jump.tsx';
import { showRow } from './show-row.ts';
import './order.css';

export function OrderLeaf() {
  const planned = usePlans(shownPlan);
  const problem = usePlans((state) => state.problem);
  const order = usePlans((state) => state.order);
  const [wish, setWish] = useState<OrderWish>(wholeOrder);
  const [form, setForm] = useState<StepForm>('compact');
  const row = useRowNow();
  useEffect(() => {
    plans.setState({ orderWish: wish });
    return () => plans.setState({ orderWish: null, rowsNear: [], order: null });
  }, [wish]);
  const isEmpty = planned?.tables.strands.count === 0;
  return (
    <LeafPage
      title="Tying order"
      about="Every step, row by row: pieces attached and joined, knots, carries and turns, strands left hanging and ended. A printed pattern tells the knots in its rows, and the rest on its page of the strands."
    >
      {problem && <p className="fault">{problem}</p>}
      {!problem && !planned && <p className="quiet">Planning…</p>}
      {isEmpty && <p className="quiet">Every cell is bare: there is nothing to tie yet.</p>}
      {planned && !isEmpty && (
        <>
          <div className="order-tools">
            <RowJump rows={planned.tables.rows} />
            <OrderFilter tables={planned.tables} wish={wish} onWish={setWish} />
            <fieldset className="step-forms" aria-label="Steps in words">
              {stepForms.map(([each, label]) => (
                <button type="button" key={each} aria-pressed={each === form} onClick={() => setForm(each)}>
                  {label}
                </button>
              ))}
            </fieldset>
            {row !== null && (
              <button type="button" onClick={() => showRow(row)}>
                To row {row}, where the slider is
              </button>
            )}
          </div>
          <p role="status" className="quiet">
            {order ? listedWords(order.counts) : '…'}
          </p>
          {order && <OrderRows order={order} form={form} rowNow={row} tables={planned.tables} />}
          <section aria-label="After the last row" className="order-end">
            <h3>After the last row</h3>
            <AfterLastRow looseEnds={planned.figures.looseEnds} />
          </section>
        </>
      )}
    </LeafPage>
  );
}

/** The row at the slider, from 1; null where all is tied. */
function useRowNow(): number | null {
  return usePlans((state) => {
    const tables = shownPlan(state)?.tables;
    return tables && state.tied !== null ? tyingPlace(tables, state.tied).row + 1 : null;
  });
}

function listedWords(counts: Int32Array): string {
  const listed = counts.filter((count) => count !== -1);
  if (listed.length === 0) return 'None of these is tied.';
  const steps = listed.reduce((sum, count) => sum + count, 0);
  return `${counted(steps, 'step')} in ${counted(listed.length, 'row')}.`;
}
