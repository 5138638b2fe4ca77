/** The rows that take the most: by strands that hang below, changes of the strand in hand, or pieces that begin. */
import { goesRight } from '../../../shared/chart/chart.ts';
import { goToCell } from '../../draw/go-to-cell.ts';
import { studio } from '../../store/studio.ts';
import { plans, usePlans } from '../plans/plans.ts';
import { type RowFacts, type RowMeasure, worstRows } from '../plans/row-facts.ts';

const measures: readonly (readonly [RowMeasure, label: string, says: string])[] = [
  ['live', 'Hang', 'strands that hang below the row'],
  ['changes', 'Changes', 'changes of the strand in hand'],
  ['pieces', 'Pieces', 'pieces that begin in the row'],
];

export function WorstRowsPart({ rows }: { rows: readonly RowFacts[] }) {
  const by = usePlans((state) => state.rowsBy);
  const worst = worstRows(rows, by);
  return (
    <table className="figures">
      <caption className="unseen">The rows that take the most</caption>
      <thead>
        <tr>
          <th scope="col">Row</th>
          {measures.map(([measure, label, says]) => (
            <th key={measure} scope="col" aria-sort={by === measure ? 'descending' : 'none'}>
              <button
                type="button"
                className="plain"
                title={`Most ${says} first`}
                onClick={() => plans.setState({ rowsBy: measure })}
              >
                {label}
                {by === measure && <span aria-hidden="true"> ▾</span>}
              </button>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {worst.map((row) => (
          <tr key={row.row}>
            <th scope="row">
              <button type="button" className="plain row-name" onClick={() => goToRow(row.row - 1)}>
                Row {row.row}
              </button>
            </th>
            {measures.map(([measure]) => (
              <td key={measure}>{row[measure]}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** To where the row begins. */
function goToRow(row: number): void {
  const { open } = studio.getState();
  if (!open) return;
  const { startCorner, columns } = open.design;
  goToCell({ row, column: goesRight(startCorner, row) ? 0 : columns - 1 });
}
