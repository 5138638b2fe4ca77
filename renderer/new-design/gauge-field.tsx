/** Knots or rows in a stretch that a maker counts them over: 10 cm, or 4 inches. */
import { gaugeOver } from '../plan/leaves/gauge-over.ts';
import { NumberField } from '../shell/fields.tsx';
import { useStudio } from '../store/use-studio.ts';

interface GaugeFieldProps {
  readonly of: 'knots' | 'rows';
  readonly per10Cm: number;
  readonly onChange: (per10Cm: number) => void;
}

export function GaugeField({ of, per10Cm, onChange }: GaugeFieldProps) {
  const { mm, words } = gaugeOver(useStudio((state) => state.settings.units));
  return (
    <NumberField
      label={of === 'knots' ? `Knots per ${words} across` : `Rows per ${words} down`}
      value={(per10Cm * mm) / 100}
      min={1}
      max={200}
      onChange={(counted) => onChange((counted * 100) / mm)}
    />
  );
}
