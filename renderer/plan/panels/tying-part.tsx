/** The maker's settings for tying, and how far the plan is. */
import { useMemo } from 'react';
import { useStudio } from '../../store/use-studio.ts';
import { changeTying, tryTying } from '../plan-deeds.ts';
import { shownPlan, usePlans } from '../plans/plans.ts';
import { ChangeLine } from './change-line.tsx';
import { PlanProgress } from './plan-progress.tsx';
import { SettingField } from './setting-field.tsx';
import { longestKnotMm, tyingFault } from './tying-fault.ts';
import { tyingFields } from './tying-fields.ts';
import { withTying, writtenTying } from './with-tying.ts';

export function TyingPart() {
  const open = useStudio((state) => state.open);
  const units = useStudio((state) => state.settings.units);
  const liveMax = usePlans((state) => shownPlan(state)?.figures.liveMax ?? 1);
  const knotMm = useMemo(() => (open ? longestKnotMm(open.design, open.chart) : 0), [open]);
  if (!open) return null;
  const { tying } = open.design;
  return (
    <div className="tying">
      <PlanProgress />
      <ChangeLine />
      {tyingFields.map((field) => {
        const { key, label, step, explained, unit, one, shown, min, max, whole, press, empty } = field;
        return (
          <SettingField
            key={`${key}-${units}`}
            name={key}
            label={label}
            unit={unit(units)}
            one={one}
            explained={explained}
            value={writtenTying(tying, field, units)}
            min={shown(min, units)}
            max={shown(max, units)}
            whole={whole}
            press={press(units)}
            empty={empty === undefined ? undefined : { means: empty, first: Math.max(1, liveMax - 1) }}
            against={(figure) => tyingFault(withTying(tying, field, figure, units), knotMm, units)}
            onTry={(written) =>
              tryTying(written === null ? null : withTying(tying, field, written.figure, units))
            }
            onKeep={(figure) => changeTying(step, withTying(tying, field, figure, units))}
          />
        );
      })}
    </div>
  );
}
