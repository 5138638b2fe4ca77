import type { Design } from '../../../shared/design/design.ts';
import type { Size } from '../../../shared/design/size-edits.ts';
import { gaugeOf, sizeOf } from '../../../shared/gauge/gauge.ts';
import { counted } from '../../../shared/units/counted.ts';
import { formatLength } from '../../../shared/units/length.ts';
import type { Units } from '../../../shared/units/units.ts';

/** How large the hanging would come out: '44 cords and 48 rows: about 22 cm wide, 23 cm knotted.' */
export function finishedSize(design: Design, { columns, rows }: Size, units: Units): string {
  const gauge = gaugeOf(design);
  const { widthMm, knottedHeightMm } = sizeOf({ ...design, columns, rows }, gauge);
  const about = gauge.source === 'estimate' ? 'about ' : '';
  const counts = `${counted(columns, 'cord')} and ${counted(rows, 'row')}`;
  return `${counts}: ${about}${formatLength(widthMm, units)} wide, ${formatLength(knottedHeightMm, units)} knotted.`;
}
