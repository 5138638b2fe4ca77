/** From the size that is wished for to cords and rows. */
import { useState } from 'react';
import type { Design } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import { cordsForWidth, gaugeOf, rowsForHeight, sizeOf } from '../../../shared/gauge/gauge.ts';
import { finishedSize } from '../../draw/size/finished-size.ts';
import { askToResize } from '../../draw/size/size-deeds.tsx';
import { lengthIn, lengthUnit, mmFrom } from '../../new-design/length-field.ts';
import { NumberField } from '../../shell/fields.tsx';
import { useStudio } from '../../store/use-studio.ts';

export function FinishedSize({ design }: { design: Design }) {
  const units = useStudio((state) => state.settings.units);
  const gauge = gaugeOf(design);
  const { widthMm, knottedHeightMm } = sizeOf(design, gauge);
  /** Null: as large as it is. */
  const [wishMm, setWishMm] = useState<{ readonly width: number; readonly height: number } | null>(null);
  const wish = wishMm ?? { width: widthMm, height: knottedHeightMm };
  const size = {
    columns: Math.min(limits.columns, cordsForWidth(wish.width, gauge)),
    rows: Math.min(limits.rows, rowsForHeight(wish.height, gauge)),
  };
  const isSame = size.columns === design.columns && size.rows === design.rows;
  const unit = lengthUnit(units);
  const field = (label: string, key: 'width' | 'height', mostMm: number) => (
    <NumberField
      label={`${label} in ${unit}`}
      value={Math.round(lengthIn(wish[key], units) * 10) / 10}
      min={lengthIn(1, units)}
      max={lengthIn(mostMm, units)}
      onChange={(length) => setWishMm({ ...wish, [key]: mmFrom(length, units) })}
    />
  );
  return (
    <section aria-label="Finished size">
      <h3>A finished size</h3>
      <form
        className="size-form"
        onSubmit={(event) => {
          event.preventDefault();
          if (!isSame) askToResize(size);
        }}
      >
        <div className="figure-fields">
          {field('Width', 'width', limits.columns * gauge.pitchMm)}
          {field('Knotted height', 'height', limits.rows * gauge.rowHeightMm)}
        </div>
        <p role="status">{finishedSize(design, size, units)}</p>
        <div>
          <button type="submit" disabled={isSame}>
            Resize…
          </button>
        </div>
      </form>
    </section>
  );
}
