/** How long it takes, at the maker's own rates. */
import type { Design } from '../../../shared/design/design.ts';
import type { Materials } from '../../../shared/materials/materials.ts';
import { counted } from '../../../shared/units/counted.ts';
import { formatTime } from '../../../shared/units/time.ts';
import { useStudio } from '../../store/use-studio.ts';
import { FigureField } from '../leaves/figure-field.tsx';
import { changeRate } from './money-deeds.ts';
import { rateFields } from './money-fields.ts';

export function Hours({ materials: { totals, cords }, design }: { materials: Materials; design: Design }) {
  const units = useStudio((state) => state.settings.units);
  const mounted = counted(cords.cutCords, 'cut cord');
  const forWhat =
    totals.knots === 0
      ? `to mount ${mounted}, begin each row and finish, since no knot is tied yet`
      : `for ${counted(totals.knots, 'knot')}, ${counted(totals.pieces, 'piece')}, ${mounted} and ${counted(totals.looseEnds, 'loose end')}`;
  return (
    <section aria-label="Time">
      <h3>Time</h3>
      <p>
        About <strong>{formatTime(totals.seconds)}</strong> {forWhat}, at these rates. Until you have timed
        yourself they are values from memory.
      </p>
      <div className="figure-fields">
        {rateFields.map(({ key, label, step, unit, times, max }) => (
          <FigureField
            key={key}
            label={label}
            unit={unit(units)}
            value={design.rates[key] * times(units)}
            min={0}
            max={max * times(units)}
            onKeep={(written) => written !== undefined && changeRate(step, key, written / times(units))}
          />
        ))}
      </div>
    </section>
  );
}
