/** The fringe's shape and lengths, beside the chart that shows it live. Its handles are on the chart itself. */
import { useEffect } from 'react';
import type { Fringe } from '../../../shared/design/schema.ts';
import { formatLength } from '../../../shared/units/length.ts';
import { lengthIn, lengthUnit, mmFrom } from '../../new-design/length-field.ts';
import { Choices, NumberField } from '../../shell/fields.tsx';
import { useStudio } from '../../store/use-studio.ts';
import { PanelOverChart } from '../panel-over-chart.tsx';
import { chooseShape, keepFringe, shownFringe, tryFringe } from './fringe-deeds.ts';
import { longestFringeMm, soundLength } from './fringe-ends.ts';
import './fringe.css';

const shapes: readonly { value: Fringe['shape']; label: string }[] = [
  { value: 'straight', label: 'straight' },
  { value: 'v', label: 'V' },
  { value: 'inverted-v', label: 'inverted V' },
  { value: 'curve', label: 'curve' },
  { value: 'by-hand', label: 'by hand' },
];

export function FringePanel() {
  const fringe = useStudio(shownFringe);
  const units = useStudio((state) => state.settings.units);
  useEffect(() => keepFringe, []);
  if (!fringe) return null;
  const { longMm, shortMm, shape } = fringe;
  const length = (label: string, mm: number, min: number, max: number, onChange: (mm: number) => void) => (
    <NumberField
      label={`${label} in ${lengthUnit(units)}`}
      value={lengthIn(mm, units)}
      min={lengthIn(min, units)}
      max={lengthIn(max, units)}
      onChange={(value) => onChange(soundLength(mmFrom(value, units)))}
    />
  );
  return (
    <PanelOverChart title="Fringe" onLeaveField={keepFringe}>
      <div className="fringe-fields">
        <Choices label="Shape" value={shape} options={shapes} onChange={chooseShape} />
        {shape === 'by-hand' ? (
          <p>
            Longest {formatLength(longMm, units)}, shortest {formatLength(shortMm, units)}.{' '}
            <span className="quiet">Drag over the cord ends.</span>
          </p>
        ) : (
          <div className="fields">
            {shape === 'straight'
              ? length('Length', longMm, 0, longestFringeMm, (mm) =>
                  tryFringe({ ...fringe, longMm: mm, shortMm: mm }),
                )
              : length('Longest', longMm, shortMm, longestFringeMm, (mm) =>
                  tryFringe({ ...fringe, longMm: mm }),
                )}
            {shape !== 'straight' &&
              length('Shortest', shortMm, 0, longMm, (mm) => tryFringe({ ...fringe, shortMm: mm }))}
          </div>
        )}
      </div>
    </PanelOverChart>
  );
}
