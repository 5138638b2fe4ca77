/** Fields for prices of the design, by their table. */
import type { Design } from '../../../shared/design/design.ts';
import { useStudio } from '../../store/use-studio.ts';
import { FigureField } from '../leaves/figure-field.tsx';
import { changeMoney } from './money-deeds.ts';
import type { MoneyField } from './money-fields.ts';

interface MoneyFieldListProps {
  readonly fields: readonly MoneyField[];
  readonly design: Design;
}

export function MoneyFieldList({ fields, design }: MoneyFieldListProps) {
  const { units, currency } = useStudio((state) => state.settings);
  const money = design.money ?? {};
  const code = money.currency ?? currency;
  return (
    <div className="figure-fields">
      {fields.map(({ key, label, step, unit, times, max }) => {
        const value = money[key];
        const unitWords = unit(units);
        const isShare = key === 'overheadShare';
        return (
          <FigureField
            key={`${key} ${units}`}
            label={label}
            unit={isShare ? unitWords : [code, unitWords].filter(Boolean).join(' ')}
            value={value === undefined ? undefined : value * times(units)}
            mayBeEmpty
            min={0}
            max={max * times(units)}
            onKeep={(written) =>
              changeMoney(step, key, written === undefined ? undefined : written / times(units))
            }
          />
        );
      })}
    </div>
  );
}
