/** The maker's settings for tying, and how far the plan is. */
import type { TyingSettings } from '../../../shared/design/schema.ts';
import { useStudio } from '../../store/use-studio.ts';
import { changeTying, tryTying } from '../plan-deeds.ts';
import { PlanProgress } from './plan-progress.tsx';
import { SettingField } from './setting-field.tsx';
import { tyingFields } from './tying-fields.ts';

export function TyingPart() {
  const tying = useStudio((state) => state.open?.design.tying);
  const units = useStudio((state) => state.settings.units);
  if (!tying) return null;
  return (
    <div className="tying">
      <PlanProgress />
      {tyingFields.map(({ key, label, step, explained, unit, shown, kept, min, max, whole, press }) => {
        const withValue = (written: number): TyingSettings => ({ ...tying, [key]: kept(written, units) });
        return (
          <SettingField
            key={`${key}-${units}`}
            label={label}
            unit={unit(units)}
            explained={explained}
            value={shown(tying[key], units)}
            min={shown(min, units)}
            max={shown(max, units)}
            whole={whole}
            press={press(units)}
            onTry={(written) => tryTying(written === null ? null : withValue(written))}
            onKeep={(written) => changeTying(step, withValue(written))}
          />
        );
      })}
    </div>
  );
}
