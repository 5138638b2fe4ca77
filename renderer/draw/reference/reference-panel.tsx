/** The picture under the chart: chosen, made to shine through more or less, laid where it belongs, hidden, removed. */
import { useEffect, useState } from 'react';
import type { Reference } from '../../../shared/design/schema.ts';
import { lengthIn, lengthUnit, mmFrom } from '../../new-design/length-field.ts';
import { NumberField } from '../../shell/fields.tsx';
import { studio } from '../../store/studio.ts';
import { useStudio } from '../../store/use-studio.ts';
import { canDecode } from '../../surface/reference-image.ts';
import { PanelOverChart } from '../panel-over-chart.tsx';
import {
  chooseReference,
  fittedOver,
  keepReference,
  setReference,
  shownReference,
  tryReference,
} from './reference-deeds.ts';
import './reference.css';

export function ReferencePanel() {
  const reference = useStudio(shownReference);
  useEffect(() => keepReference, []);
  return (
    <PanelOverChart title="Reference picture" onLeaveField={keepReference}>
      {reference ? (
        <Laid reference={reference} />
      ) : (
        <>
          <p className="quiet">
            A picture under the chart, to draw after. It is seen here only, never in a pattern.
          </p>
          <button type="button" className="main" onClick={chooseReference}>
            Choose a picture…
          </button>
        </>
      )}
    </PanelOverChart>
  );
}

function Laid({ reference }: { reference: Reference }) {
  const units = useStudio((state) => state.settings.units);
  const isShowable = useShowable(reference);
  const length = (label: string, field: 'leftMm' | 'topMm' | 'widthMm' | 'heightMm', min: number) => (
    <NumberField
      label={`${label} in ${lengthUnit(units)}`}
      value={lengthIn(reference[field], units)}
      min={lengthIn(min, units)}
      max={lengthIn(10_000, units)}
      onChange={(value) => tryReference(resized(reference, field, mmFrom(value, units)))}
    />
  );
  return (
    <>
      <p className="one-line" title={reference.name}>
        {reference.name}
      </p>
      {!isShowable && <p className="fault">This picture can’t be shown. Choose it again, or another one.</p>}
      <label className="opacity">
        Shines through
        <input
          type="range"
          min={0}
          max={100}
          value={Math.round(reference.opacity * 100)}
          aria-valuetext={`${Math.round(reference.opacity * 100)} %`}
          onChange={(event) => tryReference({ ...reference, opacity: event.target.valueAsNumber / 100 })}
          onPointerUp={keepReference}
          onKeyUp={keepReference}
        />
        <span className="quiet">{Math.round(reference.opacity * 100)} %</span>
      </label>
      <div className="fields">
        {length('Left', 'leftMm', -10_000)}
        {length('Top', 'topMm', -10_000)}
        {length('Width', 'widthMm', 1)}
        {length('Height', 'heightMm', 1)}
      </div>
      <div className="row">
        <button type="button" onClick={() => layOver(reference)}>
          Fit to the chart
        </button>
        <button
          type="button"
          aria-pressed={!reference.visible}
          onClick={() => setReference({ ...reference, visible: !reference.visible })}
        >
          Hide
        </button>
        <button type="button" onClick={chooseReference}>
          Choose another…
        </button>
        <button type="button" onClick={() => setReference(null)}>
          Remove
        </button>
      </div>
    </>
  );
}

/** Width and height keep the picture's shape. */
function resized(
  reference: Reference,
  field: 'leftMm' | 'topMm' | 'widthMm' | 'heightMm',
  mm: number,
): Reference {
  const { widthMm, heightMm } = reference;
  if (field === 'widthMm') return { ...reference, widthMm: mm, heightMm: (mm * heightMm) / widthMm };
  if (field === 'heightMm') return { ...reference, heightMm: mm, widthMm: (mm * widthMm) / heightMm };
  return { ...reference, [field]: mm };
}

function layOver(reference: Reference): void {
  const { open } = studio.getState();
  if (open)
    setReference({ ...reference, ...fittedOver(open.design, reference.widthMm / reference.heightMm) });
}

/** False where the design holds something that is no picture. */
function useShowable({ picture, mediaType }: Reference): boolean {
  const [isShowable, setShowable] = useState(true);
  useEffect(() => {
    let isMeant = true;
    canDecode({ picture, mediaType }).then((can) => isMeant && setShowable(can));
    return () => {
      isMeant = false;
    };
  }, [picture, mediaType]);
  return isShowable;
}
