/** How thick a cord, a yarn or a dowel is, in the maker's units. Below it stands what a label or a ruler calls that. */
import { formatThickness } from '../../shared/units/thickness.ts';
import type { Units } from '../../shared/units/units.ts';
import { NumberField } from '../shell/fields.tsx';
import { useStudio } from '../store/use-studio.ts';
import { mmFromThickness, thicknessIn, thicknessUnit } from './length-field.ts';

interface ThicknessFieldProps {
  /** Without the unit. */
  readonly label: string;
  readonly mm: number;
  readonly minMm: number;
  readonly maxMm: number;
  readonly onChange: (mm: number) => void;
}

export function ThicknessField({ label, mm, minMm, maxMm, onChange }: ThicknessFieldProps) {
  const units = useStudio((state) => state.settings.units);
  return (
    <NumberField
      label={`${label} in ${thicknessUnit(units)}`}
      value={thicknessIn(mm, units)}
      min={thicknessIn(minMm, units)}
      max={thicknessIn(maxMm, units)}
      hint={alsoCalled[units](mm)}
      onChange={(written) => onChange(mmFromThickness(written, units))}
    />
  );
}

/** Cord and yarn are sold by the millimetre in inch countries too. */
const alsoCalled: Readonly<Record<Units, (mm: number) => string>> = {
  metric: () => '',
  us: (mm) => `${formatThickness(mm, 'us')}, ${formatThickness(mm, 'metric')}`,
  both: (mm) => formatThickness(mm, 'us'),
};
