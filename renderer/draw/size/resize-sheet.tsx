/**
 * Another size for the chart, told in cords and rows or as it comes out finished: either pair of figures follows the
 * other. The picture keeps its cells, or is stretched.
 */
import { useState } from 'react';
import type { Design } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import type { Anchor, Size } from '../../../shared/design/size-edits.ts';
import { cordsForWidth, gaugeOf, rowsForHeight, sizeOf } from '../../../shared/gauge/gauge.ts';
import { counted } from '../../../shared/units/counted.ts';
import { lengthIn, lengthUnit, mmFrom } from '../../new-design/length-field.ts';
import { Choices, NumberField } from '../../shell/fields.tsx';
import { studio } from '../../store/studio.ts';
import { AnchorChooser } from './anchor-chooser.tsx';
import { SizeSheet } from './size-sheet.tsx';

export interface NewSize extends Size {
  readonly picture: 'kept' | 'stretched';
  /** Where the picture stays, if it is kept. */
  readonly anchor: Anchor;
}

interface ResizeSheetProps {
  readonly design: Design;
  /** The size that it begins with. */
  readonly wish: Size;
  readonly answer: (size: NewSize) => void;
}

export function ResizeSheet({ design, wish, answer }: ResizeSheetProps) {
  const { units } = studio.getState().settings;
  const [wanted, setWanted] = useState<NewSize>({
    columns: wish.columns,
    rows: wish.rows,
    picture: 'kept',
    anchor: { across: 'middle', down: 'middle' },
  });
  const [keepsProportions, keepProportions] = useState(false);
  const want = (change: Partial<NewSize>) => setWanted((before) => ({ ...before, ...change }));
  const wantColumns = (columns: number) =>
    want(
      keepsProportions ? { columns, rows: inProportion(columns, design.columns, design.rows) } : { columns },
    );
  const wantRows = (rows: number) =>
    want(keepsProportions ? { rows, columns: inProportion(rows, design.rows, design.columns) } : { rows });

  const gauge = gaugeOf(design);
  const { widthMm, knottedHeightMm } = sizeOf({ ...design, ...wanted }, gauge);
  const unit = lengthUnit(units);
  const isSame = wanted.columns === design.columns && wanted.rows === design.rows;
  return (
    <SizeSheet
      title="Resize"
      design={design}
      size={wanted}
      note={
        isSame
          ? 'This is the size that the chart has now.'
          : `Now it has ${counted(design.columns, 'cord')} and ${counted(design.rows, 'row')}.`
      }
      isSame={isSame}
      deed="Resize"
      done={() => answer(wanted)}
    >
      <NumberField
        label="Cords"
        value={wanted.columns}
        min={1}
        max={limits.columns}
        whole
        first
        onChange={wantColumns}
      />
      <NumberField label="Rows" value={wanted.rows} min={1} max={limits.rows} whole onChange={wantRows} />
      <NumberField
        label={`Width in ${unit}`}
        value={lengthIn(widthMm, units)}
        min={0}
        max={lengthIn(limits.columns * gauge.pitchMm, units)}
        hint="to the nearest cord"
        onChange={(width) => wantColumns(cordsForWidth(mmFrom(width, units), gauge))}
      />
      <NumberField
        label={`Knotted height in ${unit}`}
        value={lengthIn(knottedHeightMm, units)}
        min={0}
        max={lengthIn(limits.rows * gauge.rowHeightMm, units)}
        hint="to the nearest row"
        onChange={(height) => wantRows(rowsForHeight(mmFrom(height, units), gauge))}
      />
      <label className="choice whole">
        <input
          type="checkbox"
          checked={keepsProportions}
          onChange={(event) => {
            keepProportions(event.target.checked);
            if (event.target.checked)
              want({ rows: inProportion(wanted.columns, design.columns, design.rows) });
          }}
        />
        Keep the proportions
      </label>
      <Choices
        label="The picture"
        value={wanted.picture}
        options={[
          { value: 'kept', label: 'keeps its knots: cords and rows come or go around it' },
          { value: 'stretched', label: 'is stretched to the new size' },
        ]}
        onChange={(picture) => want({ picture })}
      />
      {wanted.picture === 'kept' && (
        <AnchorChooser value={wanted.anchor} onChange={(anchor) => want({ anchor })} />
      )}
    </SizeSheet>
  );
}

/**
 * The other number that keeps the picture's proportions in mm too, since each cord is as wide and each row as high as
 * before.
 */
function inProportion(count: number, old: number, otherOld: number): number {
  return Math.max(1, Math.round((count * otherOld) / old));
}
