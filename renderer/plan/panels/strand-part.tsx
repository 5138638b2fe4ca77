/** The chosen strand in words, its pieces, and the way to its neighbours. */
import { yarnIdOf } from '../../../shared/design/codes.ts';
import { formatLength } from '../../../shared/units/length.ts';
import type { Units } from '../../../shared/units/units.ts';
import { goToCell } from '../../draw/go-to-cell.ts';
import { Ball } from '../../draw/yarns/ball.tsx';
import { runCommand } from '../../shell/command-bus.ts';
import { useStudio } from '../../store/use-studio.ts';
import { chosenStrand } from '../plan-deeds.ts';
import { nothingTied, strandWords } from '../plan-words.ts';
import type { PlanTables } from '../plans/plan-tables.ts';
import { shownPlan, usePlans } from '../plans/plans.ts';
import { strandFacts } from '../plans/strand-facts.ts';

export function StrandPart() {
  const planned = usePlans(shownPlan);
  const strand = usePlans(chosenStrand);
  const yarns = useStudio((state) => state.open?.design.yarns);
  const units = useStudio((state) => state.settings.units);
  const isEmpty = planned?.tables.strands.count === 0;
  if (!planned || strand === null || !yarns) {
    return (
      <div className="strand">
        <p className="quiet" role="status">
          {isEmpty
            ? nothingTied('tie')
            : 'Choose a knot on the chart to see the way of its strand; zoom in to see the lines of all.'}
        </p>
        {!isEmpty && <Neighbours hasStrand={false} />}
      </div>
    );
  }
  const facts = strandFacts(planned.tables, strand);
  const yarn = yarns.find(({ id }) => id === yarnIdOf(facts.yarn));
  const isEstimate = planned.materials.gauge.yarnFactorSource === 'estimate';
  return (
    <div className="strand">
      <div className="strand-head">
        {yarn && <Ball color={yarn.color} symbol={yarn.symbol} />}
        <p role="status">{strandWords(facts, yarn?.name ?? 'Yarn', units, isEstimate)}.</p>
      </div>
      <Neighbours hasStrand />
      <Pieces tables={planned.tables} strand={strand} units={units} />
    </div>
  );
}

function Pieces({ tables, strand, units }: { tables: PlanTables; strand: number; units: Units }) {
  const { stretches, pieces, strands } = tables;
  const first = strands.firstPiece[strand]!;
  const count = strands.firstPiece[strand + 1]! - first;
  return (
    <section className="figures-room" aria-label="Pieces of the strand">
      <table className="figures">
        <thead>
          <tr>
            <th scope="col">Piece</th>
            <th scope="col">Begins</th>
            <th scope="col">Knots</th>
            <th scope="col">Left over</th>
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: count }, (_, i) => first + i).map((piece) => {
            const begins = pieces.first[piece]!;
            const cell = { row: stretches.row[begins]!, column: stretches.from[begins]! };
            return (
              <tr key={piece}>
                <th scope="row">{pieces.number[piece]}</th>
                <td>
                  <button type="button" className="plain" onClick={() => goToCell(cell)}>
                    row {cell.row + 1}, cord {cell.column + 1}
                  </button>
                </td>
                <td>{pieces.knots[piece]}</td>
                <td>{formatLength(pieces.leftOverMm[piece]!, units, { spare: true })}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

function Neighbours({ hasStrand }: { hasStrand: boolean }) {
  return (
    <div className="strand-buttons">
      <button type="button" onClick={() => runCommand('previous-strand')} title="Previous strand (,)">
        Previous
      </button>
      <button type="button" onClick={() => runCommand('next-strand')} title="Next strand (.)">
        Next
      </button>
      {hasStrand && (
        <button type="button" onClick={() => runCommand('let-go-strand')}>
          Let go
        </button>
      )}
    </div>
  );
}
