/** Chooses whose steps are listed: all, those of a yarn, or those of one of its strands. */
import { useId } from 'react';
import { codeOf, type YarnId, yarnIdOf } from '../../../shared/design/codes.ts';
import { OptionalNumberField } from '../../shell/fields.tsx';
import { useStudio } from '../../store/use-studio.ts';
import { chosenStrand } from '../plan-deeds.ts';
import { type OrderWish, wholeOrder } from '../plans/listed-steps.ts';
import type { PlanTables } from '../plans/plan-tables.ts';
import { usePlans } from '../plans/plans.ts';
import { strandNumbered, strandsOfYarn } from './strand-numbered.ts';

interface OrderFilterProps {
  readonly tables: PlanTables;
  readonly wish: OrderWish;
  readonly onWish: (wish: OrderWish) => void;
}

export function OrderFilter({ tables, wish, onWish }: OrderFilterProps) {
  const id = useId();
  const yarns = useStudio((state) => state.open?.design.yarns) ?? [];
  const chosen = usePlans(chosenStrand);
  const { strands } = tables;
  const used = yarns.filter((yarn) => strandsOfYarn(tables, codeOf(yarn.id)) > 0);
  const own = wish.yarn === null ? 0 : strandsOfYarn(tables, codeOf(wish.yarn));
  return (
    <>
      <div className="field">
        <label htmlFor={id}>Steps of</label>
        <select
          id={id}
          value={wish.yarn ?? ''}
          onChange={({ target }) =>
            onWish(target.value === '' ? wholeOrder : { yarn: target.value as YarnId, strand: null })
          }
        >
          <option value="">all yarns</option>
          {used.map(({ id: yarn, name }) => (
            <option key={yarn} value={yarn}>
              {name}
            </option>
          ))}
        </select>
      </div>
      {wish.yarn !== null && own > 0 && (
        <OptionalNumberField
          label={`Strand, 1 to ${own}`}
          value={wish.strand === null ? undefined : strands.number[wish.strand - 1]}
          min={1}
          max={own}
          whole
          onChange={(number) =>
            onWish({ ...wish, strand: strandNumbered(tables, codeOf(wish.yarn!), number) })
          }
        />
      )}
      {chosen !== null && wish.strand !== chosen + 1 && (
        <button
          type="button"
          onClick={() => onWish({ yarn: yarnIdOf(strands.yarn[chosen]!), strand: chosen + 1 })}
        >
          Only the chosen strand
        </button>
      )}
      {wish.yarn !== null && (
        <button type="button" onClick={() => onWish(wholeOrder)}>
          All steps
        </button>
      )}
    </>
  );
}
