/** Carries longer than the maker likes: how many, and the longest of them to go to. */
import { useMemo, useState } from 'react';
import { counted } from '../../../shared/units/counted.ts';
import { formatLength } from '../../../shared/units/length.ts';
import { goToCell } from '../../draw/go-to-cell.ts';
import { lengthIn, lengthUnit, mmFrom } from '../../new-design/length-field.ts';
import { useStudio } from '../../store/use-studio.ts';
import { chooseStrandAt } from '../plan-deeds.ts';
import { reachWords } from '../plan-words.ts';
import { longCarries } from '../plans/long-carries.ts';
import type { PlanTables } from '../plans/plan-tables.ts';
import { plans, usePlans } from '../plans/plans.ts';
import { carryTo } from '../plans/strand-facts.ts';
import { SettingField } from './setting-field.tsx';

/** As many as can be looked through. */
const mostListed = 20;

export function LongCarriesPart({ tables }: { tables: PlanTables }) {
  const overMm = usePlans((state) => state.overMm);
  const units = useStudio((state) => state.settings.units);
  const [keptMm, setKeptMm] = useState(overMm);
  const found = useMemo(() => longCarries(tables, overMm), [tables, overMm]);
  const show = (mm: number) => plans.setState({ overMm: mm });
  return (
    <div className="tying">
      <SettingField
        name="long-carries"
        label="Longer than"
        unit={lengthUnit(units)}
        explained="About an inch is the limit on things that are worn; behind a hanging more is practical."
        value={Math.round(lengthIn(keptMm, units) * 100) / 100}
        min={0}
        max={1000}
        whole={false}
        press={0.5}
        onTry={(written) => show(written?.figure == null ? keptMm : mmFrom(written.figure, units))}
        onKeep={(figure) => {
          if (figure === null) return;
          setKeptMm(mmFrom(figure, units));
          show(mmFrom(figure, units));
        }}
      />
      <p role="status">
        {found.length === 0
          ? 'No carry is longer.'
          : `${counted(found.length, 'carry is', 'carries are')} longer.`}
      </p>
      {found.length > 0 && (
        <ol className="go-list" aria-label="The longest carries">
          {found.slice(0, mostListed).map(({ stretch, mm }) => {
            const { row, from } = tables.stretches;
            const cell = { row: row[stretch]!, column: from[stretch]! };
            const { cords, rows } = carryTo(tables, stretch);
            return (
              <li key={stretch}>
                <button
                  type="button"
                  className="plain"
                  onClick={() => {
                    chooseStrandAt(cell);
                    goToCell(cell);
                  }}
                >
                  {formatLength(mm, units)}, {reachWords(cords, rows)}: to row {cell.row + 1}, cord{' '}
                  {cell.column + 1}
                </button>
              </li>
            );
          })}
        </ol>
      )}
    </div>
  );
}
